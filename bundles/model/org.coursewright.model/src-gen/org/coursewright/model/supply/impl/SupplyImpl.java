/**
 */
package org.coursewright.model.supply.impl;

import java.util.Collection;

import org.coursewright.model.supply.Delivery;
import org.coursewright.model.supply.Offer;
import org.coursewright.model.supply.Order;
import org.coursewright.model.supply.StockCount;
import org.coursewright.model.supply.Supplier;
import org.coursewright.model.supply.Supply;
import org.coursewright.model.supply.SupplyPackage;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Supply</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.impl.SupplyImpl#getSuppliers <em>Suppliers</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.SupplyImpl#getOffers <em>Offers</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.SupplyImpl#getOrders <em>Orders</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.SupplyImpl#getDeliveries <em>Deliveries</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.SupplyImpl#getStockCounts <em>Stock Counts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SupplyImpl extends MinimalEObjectImpl.Container implements Supply {
	/**
	 * The cached value of the '{@link #getSuppliers() <em>Suppliers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuppliers()
	 * @generated
	 * @ordered
	 */
	protected EList<Supplier> suppliers;

	/**
	 * The cached value of the '{@link #getOffers() <em>Offers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffers()
	 * @generated
	 * @ordered
	 */
	protected EList<Offer> offers;

	/**
	 * The cached value of the '{@link #getOrders() <em>Orders</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrders()
	 * @generated
	 * @ordered
	 */
	protected EList<Order> orders;

	/**
	 * The cached value of the '{@link #getDeliveries() <em>Deliveries</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeliveries()
	 * @generated
	 * @ordered
	 */
	protected EList<Delivery> deliveries;

	/**
	 * The cached value of the '{@link #getStockCounts() <em>Stock Counts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStockCounts()
	 * @generated
	 * @ordered
	 */
	protected EList<StockCount> stockCounts;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SupplyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SupplyPackage.Literals.SUPPLY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Supplier> getSuppliers() {
		if (suppliers == null) {
			suppliers = new EObjectContainmentEList<Supplier>(Supplier.class, this, SupplyPackage.SUPPLY__SUPPLIERS);
		}
		return suppliers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Offer> getOffers() {
		if (offers == null) {
			offers = new EObjectContainmentEList<Offer>(Offer.class, this, SupplyPackage.SUPPLY__OFFERS);
		}
		return offers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Order> getOrders() {
		if (orders == null) {
			orders = new EObjectContainmentEList<Order>(Order.class, this, SupplyPackage.SUPPLY__ORDERS);
		}
		return orders;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Delivery> getDeliveries() {
		if (deliveries == null) {
			deliveries = new EObjectContainmentEList<Delivery>(Delivery.class, this, SupplyPackage.SUPPLY__DELIVERIES);
		}
		return deliveries;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StockCount> getStockCounts() {
		if (stockCounts == null) {
			stockCounts = new EObjectContainmentEList<StockCount>(StockCount.class, this, SupplyPackage.SUPPLY__STOCK_COUNTS);
		}
		return stockCounts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SupplyPackage.SUPPLY__SUPPLIERS:
				return ((InternalEList<?>)getSuppliers()).basicRemove(otherEnd, msgs);
			case SupplyPackage.SUPPLY__OFFERS:
				return ((InternalEList<?>)getOffers()).basicRemove(otherEnd, msgs);
			case SupplyPackage.SUPPLY__ORDERS:
				return ((InternalEList<?>)getOrders()).basicRemove(otherEnd, msgs);
			case SupplyPackage.SUPPLY__DELIVERIES:
				return ((InternalEList<?>)getDeliveries()).basicRemove(otherEnd, msgs);
			case SupplyPackage.SUPPLY__STOCK_COUNTS:
				return ((InternalEList<?>)getStockCounts()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SupplyPackage.SUPPLY__SUPPLIERS:
				return getSuppliers();
			case SupplyPackage.SUPPLY__OFFERS:
				return getOffers();
			case SupplyPackage.SUPPLY__ORDERS:
				return getOrders();
			case SupplyPackage.SUPPLY__DELIVERIES:
				return getDeliveries();
			case SupplyPackage.SUPPLY__STOCK_COUNTS:
				return getStockCounts();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SupplyPackage.SUPPLY__SUPPLIERS:
				getSuppliers().clear();
				getSuppliers().addAll((Collection<? extends Supplier>)newValue);
				return;
			case SupplyPackage.SUPPLY__OFFERS:
				getOffers().clear();
				getOffers().addAll((Collection<? extends Offer>)newValue);
				return;
			case SupplyPackage.SUPPLY__ORDERS:
				getOrders().clear();
				getOrders().addAll((Collection<? extends Order>)newValue);
				return;
			case SupplyPackage.SUPPLY__DELIVERIES:
				getDeliveries().clear();
				getDeliveries().addAll((Collection<? extends Delivery>)newValue);
				return;
			case SupplyPackage.SUPPLY__STOCK_COUNTS:
				getStockCounts().clear();
				getStockCounts().addAll((Collection<? extends StockCount>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SupplyPackage.SUPPLY__SUPPLIERS:
				getSuppliers().clear();
				return;
			case SupplyPackage.SUPPLY__OFFERS:
				getOffers().clear();
				return;
			case SupplyPackage.SUPPLY__ORDERS:
				getOrders().clear();
				return;
			case SupplyPackage.SUPPLY__DELIVERIES:
				getDeliveries().clear();
				return;
			case SupplyPackage.SUPPLY__STOCK_COUNTS:
				getStockCounts().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SupplyPackage.SUPPLY__SUPPLIERS:
				return suppliers != null && !suppliers.isEmpty();
			case SupplyPackage.SUPPLY__OFFERS:
				return offers != null && !offers.isEmpty();
			case SupplyPackage.SUPPLY__ORDERS:
				return orders != null && !orders.isEmpty();
			case SupplyPackage.SUPPLY__DELIVERIES:
				return deliveries != null && !deliveries.isEmpty();
			case SupplyPackage.SUPPLY__STOCK_COUNTS:
				return stockCounts != null && !stockCounts.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //SupplyImpl
