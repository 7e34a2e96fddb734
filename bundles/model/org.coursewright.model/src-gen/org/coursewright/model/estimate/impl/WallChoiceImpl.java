/**
 */
package org.coursewright.model.estimate.impl;

import java.util.Collection;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.WallChoice;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Wall Choice</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.WallChoiceImpl#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.WallChoiceImpl#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.WallChoiceImpl#getBond <em>Bond</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WallChoiceImpl extends MinimalEObjectImpl.Container implements WallChoice {
	/**
	 * The cached value of the '{@link #getWalls() <em>Walls</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<Wall> walls;

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
	 * The default value of the '{@link #getBond() <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBond()
	 * @generated
	 * @ordered
	 */
	protected static final Bond BOND_EDEFAULT = Bond.STRETCHER;

	/**
	 * The cached value of the '{@link #getBond() <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBond()
	 * @generated
	 * @ordered
	 */
	protected Bond bond = BOND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WallChoiceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.WALL_CHOICE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Wall> getWalls() {
		if (walls == null) {
			walls = new EObjectResolvingEList<Wall>(Wall.class, this, EstimatePackage.WALL_CHOICE__WALLS);
		}
		return walls;
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.WALL_CHOICE__UNIT_TYPE, oldUnitType, unitType));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.WALL_CHOICE__UNIT_TYPE, oldUnitType, unitType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Bond getBond() {
		return bond;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBond(Bond newBond) {
		Bond oldBond = bond;
		bond = newBond == null ? BOND_EDEFAULT : newBond;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.WALL_CHOICE__BOND, oldBond, bond));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case EstimatePackage.WALL_CHOICE__WALLS:
				return getWalls();
			case EstimatePackage.WALL_CHOICE__UNIT_TYPE:
				if (resolve) return getUnitType();
				return basicGetUnitType();
			case EstimatePackage.WALL_CHOICE__BOND:
				return getBond();
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
			case EstimatePackage.WALL_CHOICE__WALLS:
				getWalls().clear();
				getWalls().addAll((Collection<? extends Wall>)newValue);
				return;
			case EstimatePackage.WALL_CHOICE__UNIT_TYPE:
				setUnitType((UnitType)newValue);
				return;
			case EstimatePackage.WALL_CHOICE__BOND:
				setBond((Bond)newValue);
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
			case EstimatePackage.WALL_CHOICE__WALLS:
				getWalls().clear();
				return;
			case EstimatePackage.WALL_CHOICE__UNIT_TYPE:
				setUnitType((UnitType)null);
				return;
			case EstimatePackage.WALL_CHOICE__BOND:
				setBond(BOND_EDEFAULT);
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
			case EstimatePackage.WALL_CHOICE__WALLS:
				return walls != null && !walls.isEmpty();
			case EstimatePackage.WALL_CHOICE__UNIT_TYPE:
				return unitType != null;
			case EstimatePackage.WALL_CHOICE__BOND:
				return bond != BOND_EDEFAULT;
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
		result.append(" (bond: ");
		result.append(bond);
		result.append(')');
		return result.toString();
	}

} //WallChoiceImpl
