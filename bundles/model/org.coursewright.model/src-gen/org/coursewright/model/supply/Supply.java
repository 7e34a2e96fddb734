/**
 */
package org.coursewright.model.supply;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Supply</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Suppliers, offers, orders, deliveries and counts.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.Supply#getSuppliers <em>Suppliers</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Supply#getOffers <em>Offers</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Supply#getOrders <em>Orders</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Supply#getDeliveries <em>Deliveries</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Supply#getStockCounts <em>Stock Counts</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getSupply()
 * @model
 * @generated
 */
public interface Supply extends EObject {
	/**
	 * Returns the value of the '<em><b>Suppliers</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.Supplier}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who sells.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Suppliers</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getSupply_Suppliers()
	 * @model containment="true"
	 * @generated
	 */
	EList<Supplier> getSuppliers();

	/**
	 * Returns the value of the '<em><b>Offers</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.Offer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * At what price.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offers</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getSupply_Offers()
	 * @model containment="true"
	 * @generated
	 */
	EList<Offer> getOffers();

	/**
	 * Returns the value of the '<em><b>Orders</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.Order}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was ordered.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Orders</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getSupply_Orders()
	 * @model containment="true"
	 * @generated
	 */
	EList<Order> getOrders();

	/**
	 * Returns the value of the '<em><b>Deliveries</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.Delivery}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What arrived.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Deliveries</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getSupply_Deliveries()
	 * @model containment="true"
	 * @generated
	 */
	EList<Delivery> getDeliveries();

	/**
	 * Returns the value of the '<em><b>Stock Counts</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.StockCount}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was counted.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stock Counts</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getSupply_StockCounts()
	 * @model containment="true"
	 * @generated
	 */
	EList<StockCount> getStockCounts();

} // Supply
