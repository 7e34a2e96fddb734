/**
 */
package org.coursewright.model.supply;

import java.time.LocalDate;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Delivery</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What arrived.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.Delivery#getOrder <em>Order</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Delivery#getArrivedOn <em>Arrived On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Delivery#getLines <em>Lines</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getDelivery()
 * @model
 * @generated
 */
public interface Delivery extends Marked {
	/**
	 * Returns the value of the '<em><b>Order</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Order</em>' reference.
	 * @see #setOrder(Order)
	 * @see org.coursewright.model.supply.SupplyPackage#getDelivery_Order()
	 * @model
	 * @generated
	 */
	Order getOrder();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Delivery#getOrder <em>Order</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Order</em>' reference.
	 * @see #getOrder()
	 * @generated
	 */
	void setOrder(Order value);

	/**
	 * Returns the value of the '<em><b>Arrived On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arrived On</em>' attribute.
	 * @see #setArrivedOn(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getDelivery_ArrivedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getArrivedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Delivery#getArrivedOn <em>Arrived On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arrived On</em>' attribute.
	 * @see #getArrivedOn()
	 * @generated
	 */
	void setArrivedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Lines</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.DeliveryLine}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lines</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getDelivery_Lines()
	 * @model containment="true"
	 * @generated
	 */
	EList<DeliveryLine> getLines();

} // Delivery
