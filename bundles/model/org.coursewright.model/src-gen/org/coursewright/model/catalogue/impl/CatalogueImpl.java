/**
 */
package org.coursewright.model.catalogue.impl;

import java.util.Collection;

import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.FinishType;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.UnitType;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Catalogue</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getUnitTypes <em>Unit Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getMixDesigns <em>Mix Designs</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getCoatingTypes <em>Coating Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getLintelTypes <em>Lintel Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getFinishTypes <em>Finish Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getCrewTypes <em>Crew Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CatalogueImpl#getPlant <em>Plant</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CatalogueImpl extends MinimalEObjectImpl.Container implements Catalogue {
	/**
	 * The cached value of the '{@link #getUnitTypes() <em>Unit Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<UnitType> unitTypes;

	/**
	 * The cached value of the '{@link #getMixDesigns() <em>Mix Designs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMixDesigns()
	 * @generated
	 * @ordered
	 */
	protected EList<MixDesign> mixDesigns;

	/**
	 * The cached value of the '{@link #getMaterials() <em>Materials</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterials()
	 * @generated
	 * @ordered
	 */
	protected EList<Material> materials;

	/**
	 * The cached value of the '{@link #getCoatingTypes() <em>Coating Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoatingTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<CoatingType> coatingTypes;

	/**
	 * The cached value of the '{@link #getLintelTypes() <em>Lintel Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLintelTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<LintelType> lintelTypes;

	/**
	 * The cached value of the '{@link #getFinishTypes() <em>Finish Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFinishTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<FinishType> finishTypes;

	/**
	 * The cached value of the '{@link #getCrewTypes() <em>Crew Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrewTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<CrewType> crewTypes;

	/**
	 * The cached value of the '{@link #getPlant() <em>Plant</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlant()
	 * @generated
	 * @ordered
	 */
	protected EList<Plant> plant;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CatalogueImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.CATALOGUE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<UnitType> getUnitTypes() {
		if (unitTypes == null) {
			unitTypes = new EObjectContainmentEList<UnitType>(UnitType.class, this, CataloguePackage.CATALOGUE__UNIT_TYPES);
		}
		return unitTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MixDesign> getMixDesigns() {
		if (mixDesigns == null) {
			mixDesigns = new EObjectContainmentEList<MixDesign>(MixDesign.class, this, CataloguePackage.CATALOGUE__MIX_DESIGNS);
		}
		return mixDesigns;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Material> getMaterials() {
		if (materials == null) {
			materials = new EObjectContainmentEList<Material>(Material.class, this, CataloguePackage.CATALOGUE__MATERIALS);
		}
		return materials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CoatingType> getCoatingTypes() {
		if (coatingTypes == null) {
			coatingTypes = new EObjectContainmentEList<CoatingType>(CoatingType.class, this, CataloguePackage.CATALOGUE__COATING_TYPES);
		}
		return coatingTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LintelType> getLintelTypes() {
		if (lintelTypes == null) {
			lintelTypes = new EObjectContainmentEList<LintelType>(LintelType.class, this, CataloguePackage.CATALOGUE__LINTEL_TYPES);
		}
		return lintelTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FinishType> getFinishTypes() {
		if (finishTypes == null) {
			finishTypes = new EObjectContainmentEList<FinishType>(FinishType.class, this, CataloguePackage.CATALOGUE__FINISH_TYPES);
		}
		return finishTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CrewType> getCrewTypes() {
		if (crewTypes == null) {
			crewTypes = new EObjectContainmentEList<CrewType>(CrewType.class, this, CataloguePackage.CATALOGUE__CREW_TYPES);
		}
		return crewTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Plant> getPlant() {
		if (plant == null) {
			plant = new EObjectContainmentEList<Plant>(Plant.class, this, CataloguePackage.CATALOGUE__PLANT);
		}
		return plant;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CataloguePackage.CATALOGUE__UNIT_TYPES:
				return ((InternalEList<?>)getUnitTypes()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__MIX_DESIGNS:
				return ((InternalEList<?>)getMixDesigns()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__MATERIALS:
				return ((InternalEList<?>)getMaterials()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__COATING_TYPES:
				return ((InternalEList<?>)getCoatingTypes()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__LINTEL_TYPES:
				return ((InternalEList<?>)getLintelTypes()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__FINISH_TYPES:
				return ((InternalEList<?>)getFinishTypes()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__CREW_TYPES:
				return ((InternalEList<?>)getCrewTypes()).basicRemove(otherEnd, msgs);
			case CataloguePackage.CATALOGUE__PLANT:
				return ((InternalEList<?>)getPlant()).basicRemove(otherEnd, msgs);
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
			case CataloguePackage.CATALOGUE__UNIT_TYPES:
				return getUnitTypes();
			case CataloguePackage.CATALOGUE__MIX_DESIGNS:
				return getMixDesigns();
			case CataloguePackage.CATALOGUE__MATERIALS:
				return getMaterials();
			case CataloguePackage.CATALOGUE__COATING_TYPES:
				return getCoatingTypes();
			case CataloguePackage.CATALOGUE__LINTEL_TYPES:
				return getLintelTypes();
			case CataloguePackage.CATALOGUE__FINISH_TYPES:
				return getFinishTypes();
			case CataloguePackage.CATALOGUE__CREW_TYPES:
				return getCrewTypes();
			case CataloguePackage.CATALOGUE__PLANT:
				return getPlant();
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
			case CataloguePackage.CATALOGUE__UNIT_TYPES:
				getUnitTypes().clear();
				getUnitTypes().addAll((Collection<? extends UnitType>)newValue);
				return;
			case CataloguePackage.CATALOGUE__MIX_DESIGNS:
				getMixDesigns().clear();
				getMixDesigns().addAll((Collection<? extends MixDesign>)newValue);
				return;
			case CataloguePackage.CATALOGUE__MATERIALS:
				getMaterials().clear();
				getMaterials().addAll((Collection<? extends Material>)newValue);
				return;
			case CataloguePackage.CATALOGUE__COATING_TYPES:
				getCoatingTypes().clear();
				getCoatingTypes().addAll((Collection<? extends CoatingType>)newValue);
				return;
			case CataloguePackage.CATALOGUE__LINTEL_TYPES:
				getLintelTypes().clear();
				getLintelTypes().addAll((Collection<? extends LintelType>)newValue);
				return;
			case CataloguePackage.CATALOGUE__FINISH_TYPES:
				getFinishTypes().clear();
				getFinishTypes().addAll((Collection<? extends FinishType>)newValue);
				return;
			case CataloguePackage.CATALOGUE__CREW_TYPES:
				getCrewTypes().clear();
				getCrewTypes().addAll((Collection<? extends CrewType>)newValue);
				return;
			case CataloguePackage.CATALOGUE__PLANT:
				getPlant().clear();
				getPlant().addAll((Collection<? extends Plant>)newValue);
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
			case CataloguePackage.CATALOGUE__UNIT_TYPES:
				getUnitTypes().clear();
				return;
			case CataloguePackage.CATALOGUE__MIX_DESIGNS:
				getMixDesigns().clear();
				return;
			case CataloguePackage.CATALOGUE__MATERIALS:
				getMaterials().clear();
				return;
			case CataloguePackage.CATALOGUE__COATING_TYPES:
				getCoatingTypes().clear();
				return;
			case CataloguePackage.CATALOGUE__LINTEL_TYPES:
				getLintelTypes().clear();
				return;
			case CataloguePackage.CATALOGUE__FINISH_TYPES:
				getFinishTypes().clear();
				return;
			case CataloguePackage.CATALOGUE__CREW_TYPES:
				getCrewTypes().clear();
				return;
			case CataloguePackage.CATALOGUE__PLANT:
				getPlant().clear();
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
			case CataloguePackage.CATALOGUE__UNIT_TYPES:
				return unitTypes != null && !unitTypes.isEmpty();
			case CataloguePackage.CATALOGUE__MIX_DESIGNS:
				return mixDesigns != null && !mixDesigns.isEmpty();
			case CataloguePackage.CATALOGUE__MATERIALS:
				return materials != null && !materials.isEmpty();
			case CataloguePackage.CATALOGUE__COATING_TYPES:
				return coatingTypes != null && !coatingTypes.isEmpty();
			case CataloguePackage.CATALOGUE__LINTEL_TYPES:
				return lintelTypes != null && !lintelTypes.isEmpty();
			case CataloguePackage.CATALOGUE__FINISH_TYPES:
				return finishTypes != null && !finishTypes.isEmpty();
			case CataloguePackage.CATALOGUE__CREW_TYPES:
				return crewTypes != null && !crewTypes.isEmpty();
			case CataloguePackage.CATALOGUE__PLANT:
				return plant != null && !plant.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //CatalogueImpl
