/**
 */
package org.coursewright.model.supply;

import org.coursewright.measure.Quantity;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Order Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of an order.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.OrderLine#getOffer <em>Offer</em>}</li>
 *   <li>{@link org.coursewright.model.supply.OrderLine#getQuantity <em>Quantity</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getOrderLine()
 * @model
 * @generated
 */
public interface OrderLine extends EObject {
	/**
	 * Returns the value of the '<em><b>Offer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * At which price.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offer</em>' reference.
	 * @see #setOffer(Offer)
	 * @see org.coursewright.model.supply.SupplyPackage#getOrderLine_Offer()
	 * @model
	 * @generated
	 */
	Offer getOffer();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.OrderLine#getOffer <em>Offer</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offer</em>' reference.
	 * @see #getOffer()
	 * @generated
	 */
	void setOffer(Offer value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getOrderLine_Quantity()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getQuantity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.OrderLine#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Quantity value);

} // OrderLine
