/**
 */
package org.coursewright.model.supply;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Price Break</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The price from a quantity on.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.PriceBreak#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.supply.PriceBreak#getPrice <em>Price</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getPriceBreak()
 * @model
 * @generated
 */
public interface PriceBreak extends EObject {
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From this quantity on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getPriceBreak_From()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getFrom();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.PriceBreak#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Quantity value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For one of the unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Money)
	 * @see org.coursewright.model.supply.SupplyPackage#getPriceBreak_Price()
	 * @model dataType="org.coursewright.model.types.Money"
	 * @generated
	 */
	Money getPrice();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.PriceBreak#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Money value);

} // PriceBreak
