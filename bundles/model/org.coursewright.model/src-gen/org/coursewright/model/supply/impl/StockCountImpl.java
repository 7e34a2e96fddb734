/**
 */
package org.coursewright.model.supply.impl;

import java.time.LocalDate;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.supply.StockCount;
import org.coursewright.model.supply.SupplyPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stock Count</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.impl.StockCountImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.StockCountImpl#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.StockCountImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.StockCountImpl#getCountedOn <em>Counted On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StockCountImpl extends MinimalEObjectImpl.Container implements StockCount {
	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material;

	/**
	 * The cached value of the '{@link #getUnitType() <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitType()
	 * @generated
	 * @ordered
	 */
	protected UnitType unitType;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity QUANTITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected Quantity quantity = QUANTITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getCountedOn() <em>Counted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate COUNTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCountedOn() <em>Counted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCountedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate countedOn = COUNTED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StockCountImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SupplyPackage.Literals.STOCK_COUNT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		if (material != null && material.eIsProxy()) {
			InternalEObject oldMaterial = (InternalEObject)material;
			material = (Material)eResolveProxy(oldMaterial);
			if (material != oldMaterial) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.STOCK_COUNT__MATERIAL, oldMaterial, material));
			}
		}
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Material basicGetMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.STOCK_COUNT__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitType getUnitType() {
		if (unitType != null && unitType.eIsProxy()) {
			InternalEObject oldUnitType = (InternalEObject)unitType;
			unitType = (UnitType)eResolveProxy(oldUnitType);
			if (unitType != oldUnitType) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.STOCK_COUNT__UNIT_TYPE, oldUnitType, unitType));
			}
		}
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public UnitType basicGetUnitType() {
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitType(UnitType newUnitType) {
		UnitType oldUnitType = unitType;
		unitType = newUnitType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.STOCK_COUNT__UNIT_TYPE, oldUnitType, unitType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(Quantity newQuantity) {
		Quantity oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.STOCK_COUNT__QUANTITY, oldQuantity, quantity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCountedOn() {
		return countedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCountedOn(LocalDate newCountedOn) {
		LocalDate oldCountedOn = countedOn;
		countedOn = newCountedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.STOCK_COUNT__COUNTED_ON, oldCountedOn, countedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SupplyPackage.STOCK_COUNT__MATERIAL:
				if (resolve) return getMaterial();
				return basicGetMaterial();
			case SupplyPackage.STOCK_COUNT__UNIT_TYPE:
				if (resolve) return getUnitType();
				return basicGetUnitType();
			case SupplyPackage.STOCK_COUNT__QUANTITY:
				return getQuantity();
			case SupplyPackage.STOCK_COUNT__COUNTED_ON:
				return getCountedOn();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SupplyPackage.STOCK_COUNT__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case SupplyPackage.STOCK_COUNT__UNIT_TYPE:
				setUnitType((UnitType)newValue);
				return;
			case SupplyPackage.STOCK_COUNT__QUANTITY:
				setQuantity((Quantity)newValue);
				return;
			case SupplyPackage.STOCK_COUNT__COUNTED_ON:
				setCountedOn((LocalDate)newValue);
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
			case SupplyPackage.STOCK_COUNT__MATERIAL:
				setMaterial((Material)null);
				return;
			case SupplyPackage.STOCK_COUNT__UNIT_TYPE:
				setUnitType((UnitType)null);
				return;
			case SupplyPackage.STOCK_COUNT__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case SupplyPackage.STOCK_COUNT__COUNTED_ON:
				setCountedOn(COUNTED_ON_EDEFAULT);
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
			case SupplyPackage.STOCK_COUNT__MATERIAL:
				return material != null;
			case SupplyPackage.STOCK_COUNT__UNIT_TYPE:
				return unitType != null;
			case SupplyPackage.STOCK_COUNT__QUANTITY:
				return QUANTITY_EDEFAULT == null ? quantity != null : !QUANTITY_EDEFAULT.equals(quantity);
			case SupplyPackage.STOCK_COUNT__COUNTED_ON:
				return COUNTED_ON_EDEFAULT == null ? countedOn != null : !COUNTED_ON_EDEFAULT.equals(countedOn);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (quantity: ");
		result.append(quantity);
		result.append(", countedOn: ");
		result.append(countedOn);
		result.append(')');
		return result.toString();
	}

} //StockCountImpl
