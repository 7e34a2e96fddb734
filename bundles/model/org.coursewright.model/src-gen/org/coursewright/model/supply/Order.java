/**
 */
package org.coursewright.model.supply;

import java.time.LocalDate;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Order</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An order.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.Order#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Order#getPlacedOn <em>Placed On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Order#getDueOn <em>Due On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Order#getLines <em>Lines</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getOrder()
 * @model
 * @generated
 */
public interface Order extends Marked {
	/**
	 * Returns the value of the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * To whom.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supplier</em>' reference.
	 * @see #setSupplier(Supplier)
	 * @see org.coursewright.model.supply.SupplyPackage#getOrder_Supplier()
	 * @model
	 * @generated
	 */
	Supplier getSupplier();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Order#getSupplier <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supplier</em>' reference.
	 * @see #getSupplier()
	 * @generated
	 */
	void setSupplier(Supplier value);

	/**
	 * Returns the value of the '<em><b>Placed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Placed On</em>' attribute.
	 * @see #setPlacedOn(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getOrder_PlacedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getPlacedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Order#getPlacedOn <em>Placed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Placed On</em>' attribute.
	 * @see #getPlacedOn()
	 * @generated
	 */
	void setPlacedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Due On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it is to arrive.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Due On</em>' attribute.
	 * @see #setDueOn(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getOrder_DueOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getDueOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Order#getDueOn <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Due On</em>' attribute.
	 * @see #getDueOn()
	 * @generated
	 */
	void setDueOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Lines</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.OrderLine}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lines</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getOrder_Lines()
	 * @model containment="true"
	 * @generated
	 */
	EList<OrderLine> getLines();

} // Order
