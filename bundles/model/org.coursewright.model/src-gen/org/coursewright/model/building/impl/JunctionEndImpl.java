/**
 */
package org.coursewright.model.building.impl;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Junction End</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.JunctionEndImpl#getWall <em>Wall</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.JunctionEndImpl#getPlace <em>Place</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JunctionEndImpl extends MinimalEObjectImpl.Container implements JunctionEnd {
	/**
	 * The cached value of the '{@link #getWall() <em>Wall</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWall()
	 * @generated
	 * @ordered
	 */
	protected Wall wall;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final WallPlace PLACE_EDEFAULT = WallPlace.START;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected WallPlace place = PLACE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JunctionEndImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.JUNCTION_END;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wall getWall() {
		if (wall != null && wall.eIsProxy()) {
			InternalEObject oldWall = (InternalEObject)wall;
			wall = (Wall)eResolveProxy(oldWall);
			if (wall != oldWall) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, BuildingPackage.JUNCTION_END__WALL, oldWall, wall));
			}
		}
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Wall basicGetWall() {
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWall(Wall newWall) {
		Wall oldWall = wall;
		wall = newWall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.JUNCTION_END__WALL, oldWall, wall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WallPlace getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(WallPlace newPlace) {
		WallPlace oldPlace = place;
		place = newPlace == null ? PLACE_EDEFAULT : newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.JUNCTION_END__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BuildingPackage.JUNCTION_END__WALL:
				if (resolve) return getWall();
				return basicGetWall();
			case BuildingPackage.JUNCTION_END__PLACE:
				return getPlace();
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
			case BuildingPackage.JUNCTION_END__WALL:
				setWall((Wall)newValue);
				return;
			case BuildingPackage.JUNCTION_END__PLACE:
				setPlace((WallPlace)newValue);
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
			case BuildingPackage.JUNCTION_END__WALL:
				setWall((Wall)null);
				return;
			case BuildingPackage.JUNCTION_END__PLACE:
				setPlace(PLACE_EDEFAULT);
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
			case BuildingPackage.JUNCTION_END__WALL:
				return wall != null;
			case BuildingPackage.JUNCTION_END__PLACE:
				return place != PLACE_EDEFAULT;
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
		result.append(" (place: ");
		result.append(place);
		result.append(')');
		return result.toString();
	}

} //JunctionEndImpl
