/**
 */
package org.coursewright.model.building.impl;

import java.util.Collection;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.TeeTie;
import org.coursewright.model.building.Wall;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Junction</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.JunctionImpl#getEnds <em>Ends</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.JunctionImpl#getThrough <em>Through</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.JunctionImpl#getTie <em>Tie</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JunctionImpl extends MinimalEObjectImpl.Container implements Junction {
	/**
	 * The cached value of the '{@link #getEnds() <em>Ends</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnds()
	 * @generated
	 * @ordered
	 */
	protected EList<JunctionEnd> ends;

	/**
	 * The cached value of the '{@link #getThrough() <em>Through</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThrough()
	 * @generated
	 * @ordered
	 */
	protected Wall through;

	/**
	 * The default value of the '{@link #getTie() <em>Tie</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTie()
	 * @generated
	 * @ordered
	 */
	protected static final TeeTie TIE_EDEFAULT = TeeTie.BONDED;

	/**
	 * The cached value of the '{@link #getTie() <em>Tie</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTie()
	 * @generated
	 * @ordered
	 */
	protected TeeTie tie = TIE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JunctionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.JUNCTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<JunctionEnd> getEnds() {
		if (ends == null) {
			ends = new EObjectContainmentEList<JunctionEnd>(JunctionEnd.class, this, BuildingPackage.JUNCTION__ENDS);
		}
		return ends;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wall getThrough() {
		if (through != null && through.eIsProxy()) {
			InternalEObject oldThrough = (InternalEObject)through;
			through = (Wall)eResolveProxy(oldThrough);
			if (through != oldThrough) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, BuildingPackage.JUNCTION__THROUGH, oldThrough, through));
			}
		}
		return through;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Wall basicGetThrough() {
		return through;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThrough(Wall newThrough) {
		Wall oldThrough = through;
		through = newThrough;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.JUNCTION__THROUGH, oldThrough, through));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TeeTie getTie() {
		return tie;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTie(TeeTie newTie) {
		TeeTie oldTie = tie;
		tie = newTie == null ? TIE_EDEFAULT : newTie;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.JUNCTION__TIE, oldTie, tie));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case BuildingPackage.JUNCTION__ENDS:
				return ((InternalEList<?>)getEnds()).basicRemove(otherEnd, msgs);
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
			case BuildingPackage.JUNCTION__ENDS:
				return getEnds();
			case BuildingPackage.JUNCTION__THROUGH:
				if (resolve) return getThrough();
				return basicGetThrough();
			case BuildingPackage.JUNCTION__TIE:
				return getTie();
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
			case BuildingPackage.JUNCTION__ENDS:
				getEnds().clear();
				getEnds().addAll((Collection<? extends JunctionEnd>)newValue);
				return;
			case BuildingPackage.JUNCTION__THROUGH:
				setThrough((Wall)newValue);
				return;
			case BuildingPackage.JUNCTION__TIE:
				setTie((TeeTie)newValue);
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
			case BuildingPackage.JUNCTION__ENDS:
				getEnds().clear();
				return;
			case BuildingPackage.JUNCTION__THROUGH:
				setThrough((Wall)null);
				return;
			case BuildingPackage.JUNCTION__TIE:
				setTie(TIE_EDEFAULT);
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
			case BuildingPackage.JUNCTION__ENDS:
				return ends != null && !ends.isEmpty();
			case BuildingPackage.JUNCTION__THROUGH:
				return through != null;
			case BuildingPackage.JUNCTION__TIE:
				return tie != TIE_EDEFAULT;
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
		result.append(" (tie: ");
		result.append(tie);
		result.append(')');
		return result.toString();
	}

} //JunctionImpl
