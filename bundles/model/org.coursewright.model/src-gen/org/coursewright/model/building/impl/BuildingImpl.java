/**
 */
package org.coursewright.model.building.impl;

import java.util.Collection;

import org.coursewright.model.building.BondBeam;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.GradeBeam;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.Storey;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Building</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.BuildingImpl#getStoreys <em>Storeys</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BuildingImpl#getJunctions <em>Junctions</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BuildingImpl#getGradeBeams <em>Grade Beams</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BuildingImpl#getBondBeams <em>Bond Beams</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BuildingImpl extends MinimalEObjectImpl.Container implements Building {
	/**
	 * The cached value of the '{@link #getStoreys() <em>Storeys</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoreys()
	 * @generated
	 * @ordered
	 */
	protected EList<Storey> storeys;

	/**
	 * The cached value of the '{@link #getJunctions() <em>Junctions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJunctions()
	 * @generated
	 * @ordered
	 */
	protected EList<Junction> junctions;

	/**
	 * The cached value of the '{@link #getGradeBeams() <em>Grade Beams</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGradeBeams()
	 * @generated
	 * @ordered
	 */
	protected EList<GradeBeam> gradeBeams;

	/**
	 * The cached value of the '{@link #getBondBeams() <em>Bond Beams</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondBeams()
	 * @generated
	 * @ordered
	 */
	protected EList<BondBeam> bondBeams;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BuildingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.BUILDING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Storey> getStoreys() {
		if (storeys == null) {
			storeys = new EObjectContainmentEList<Storey>(Storey.class, this, BuildingPackage.BUILDING__STOREYS);
		}
		return storeys;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Junction> getJunctions() {
		if (junctions == null) {
			junctions = new EObjectContainmentEList<Junction>(Junction.class, this, BuildingPackage.BUILDING__JUNCTIONS);
		}
		return junctions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GradeBeam> getGradeBeams() {
		if (gradeBeams == null) {
			gradeBeams = new EObjectContainmentEList<GradeBeam>(GradeBeam.class, this, BuildingPackage.BUILDING__GRADE_BEAMS);
		}
		return gradeBeams;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BondBeam> getBondBeams() {
		if (bondBeams == null) {
			bondBeams = new EObjectContainmentEList<BondBeam>(BondBeam.class, this, BuildingPackage.BUILDING__BOND_BEAMS);
		}
		return bondBeams;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case BuildingPackage.BUILDING__STOREYS:
				return ((InternalEList<?>)getStoreys()).basicRemove(otherEnd, msgs);
			case BuildingPackage.BUILDING__JUNCTIONS:
				return ((InternalEList<?>)getJunctions()).basicRemove(otherEnd, msgs);
			case BuildingPackage.BUILDING__GRADE_BEAMS:
				return ((InternalEList<?>)getGradeBeams()).basicRemove(otherEnd, msgs);
			case BuildingPackage.BUILDING__BOND_BEAMS:
				return ((InternalEList<?>)getBondBeams()).basicRemove(otherEnd, msgs);
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
			case BuildingPackage.BUILDING__STOREYS:
				return getStoreys();
			case BuildingPackage.BUILDING__JUNCTIONS:
				return getJunctions();
			case BuildingPackage.BUILDING__GRADE_BEAMS:
				return getGradeBeams();
			case BuildingPackage.BUILDING__BOND_BEAMS:
				return getBondBeams();
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
			case BuildingPackage.BUILDING__STOREYS:
				getStoreys().clear();
				getStoreys().addAll((Collection<? extends Storey>)newValue);
				return;
			case BuildingPackage.BUILDING__JUNCTIONS:
				getJunctions().clear();
				getJunctions().addAll((Collection<? extends Junction>)newValue);
				return;
			case BuildingPackage.BUILDING__GRADE_BEAMS:
				getGradeBeams().clear();
				getGradeBeams().addAll((Collection<? extends GradeBeam>)newValue);
				return;
			case BuildingPackage.BUILDING__BOND_BEAMS:
				getBondBeams().clear();
				getBondBeams().addAll((Collection<? extends BondBeam>)newValue);
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
			case BuildingPackage.BUILDING__STOREYS:
				getStoreys().clear();
				return;
			case BuildingPackage.BUILDING__JUNCTIONS:
				getJunctions().clear();
				return;
			case BuildingPackage.BUILDING__GRADE_BEAMS:
				getGradeBeams().clear();
				return;
			case BuildingPackage.BUILDING__BOND_BEAMS:
				getBondBeams().clear();
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
			case BuildingPackage.BUILDING__STOREYS:
				return storeys != null && !storeys.isEmpty();
			case BuildingPackage.BUILDING__JUNCTIONS:
				return junctions != null && !junctions.isEmpty();
			case BuildingPackage.BUILDING__GRADE_BEAMS:
				return gradeBeams != null && !gradeBeams.isEmpty();
			case BuildingPackage.BUILDING__BOND_BEAMS:
				return bondBeams != null && !bondBeams.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //BuildingImpl
