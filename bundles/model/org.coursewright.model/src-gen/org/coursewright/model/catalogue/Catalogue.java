/**
 */
package org.coursewright.model.catalogue;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Catalogue</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Everything a wall, a mix or a price may refer to.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getUnitTypes <em>Unit Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getMixDesigns <em>Mix Designs</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getCoatingTypes <em>Coating Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getLintelTypes <em>Lintel Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getFinishTypes <em>Finish Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getCrewTypes <em>Crew Types</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Catalogue#getPlant <em>Plant</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue()
 * @model
 * @generated
 */
public interface Catalogue extends EObject {
	/**
	 * Returns the value of the '<em><b>Unit Types</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.UnitType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Blocks and other masonry units.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Types</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_UnitTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<UnitType> getUnitTypes();

	/**
	 * Returns the value of the '<em><b>Mix Designs</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.MixDesign}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mortar, block and concrete mixes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix Designs</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_MixDesigns()
	 * @model containment="true"
	 * @generated
	 */
	EList<MixDesign> getMixDesigns();

	/**
	 * Returns the value of the '<em><b>Materials</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.Material}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whatever is measured and bought.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Materials</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_Materials()
	 * @model containment="true"
	 * @generated
	 */
	EList<Material> getMaterials();

	/**
	 * Returns the value of the '<em><b>Coating Types</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.CoatingType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sealers and washes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coating Types</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_CoatingTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<CoatingType> getCoatingTypes();

	/**
	 * Returns the value of the '<em><b>Lintel Types</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.LintelType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lintels.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lintel Types</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_LintelTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<LintelType> getLintelTypes();

	/**
	 * Returns the value of the '<em><b>Finish Types</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.FinishType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plasters and renders.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Finish Types</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_FinishTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<FinishType> getFinishTypes();

	/**
	 * Returns the value of the '<em><b>Crew Types</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.CrewType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who does the work.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Crew Types</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_CrewTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<CrewType> getCrewTypes();

	/**
	 * Returns the value of the '<em><b>Plant</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.Plant}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Presses, mixers, saws.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plant</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCatalogue_Plant()
	 * @model containment="true"
	 * @generated
	 */
	EList<Plant> getPlant();

} // Catalogue
