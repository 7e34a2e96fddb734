/**
 */
package org.coursewright.model.supply;

import org.coursewright.measure.Quantity;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Delivery Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of a delivery.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.DeliveryLine#getLine <em>Line</em>}</li>
 *   <li>{@link org.coursewright.model.supply.DeliveryLine#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.coursewright.model.supply.DeliveryLine#getRejected <em>Rejected</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getDeliveryLine()
 * @model
 * @generated
 */
public interface DeliveryLine extends EObject {
	/**
	 * Returns the value of the '<em><b>Line</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which order line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Line</em>' reference.
	 * @see #setLine(OrderLine)
	 * @see org.coursewright.model.supply.SupplyPackage#getDeliveryLine_Line()
	 * @model
	 * @generated
	 */
	OrderLine getLine();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.DeliveryLine#getLine <em>Line</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line</em>' reference.
	 * @see #getLine()
	 * @generated
	 */
	void setLine(OrderLine value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much arrived.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getDeliveryLine_Quantity()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getQuantity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.DeliveryLine#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rejected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much of it was sent back.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rejected</em>' attribute.
	 * @see #setRejected(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getDeliveryLine_Rejected()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getRejected();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.DeliveryLine#getRejected <em>Rejected</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rejected</em>' attribute.
	 * @see #getRejected()
	 * @generated
	 */
	void setRejected(Quantity value);

} // DeliveryLine
