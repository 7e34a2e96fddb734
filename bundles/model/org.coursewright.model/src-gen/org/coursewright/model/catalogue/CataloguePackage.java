/**
 */
package org.coursewright.model.catalogue;

import org.coursewright.model.project.ProjectPackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What the building is built of and with.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.catalogue.CatalogueFactory
 * @model kind="package"
 * @generated
 */
public interface CataloguePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "catalogue";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/catalogue";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "catalogue";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	CataloguePackage eINSTANCE = org.coursewright.model.catalogue.impl.CataloguePackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.CatalogueImpl <em>Catalogue</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.CatalogueImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCatalogue()
	 * @generated
	 */
	int CATALOGUE = 0;

	/**
	 * The feature id for the '<em><b>Unit Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__UNIT_TYPES = 0;

	/**
	 * The feature id for the '<em><b>Mix Designs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__MIX_DESIGNS = 1;

	/**
	 * The feature id for the '<em><b>Materials</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__MATERIALS = 2;

	/**
	 * The feature id for the '<em><b>Coating Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__COATING_TYPES = 3;

	/**
	 * The feature id for the '<em><b>Lintel Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__LINTEL_TYPES = 4;

	/**
	 * The feature id for the '<em><b>Finish Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__FINISH_TYPES = 5;

	/**
	 * The feature id for the '<em><b>Crew Types</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__CREW_TYPES = 6;

	/**
	 * The feature id for the '<em><b>Plant</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE__PLANT = 7;

	/**
	 * The number of structural features of the '<em>Catalogue</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Catalogue</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CATALOGUE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.UnitTypeImpl <em>Unit Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.UnitTypeImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getUnitType()
	 * @generated
	 */
	int UNIT_TYPE = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__LENGTH = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__HEIGHT = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__MASS = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Special Lengths</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__SPECIAL_LENGTHS = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Shortest Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__SHORTEST_PIECE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cut Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__CUT_STEP = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Kerf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__KERF = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__SOURCE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Days Moist</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__DAYS_MOIST = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Days Drying</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__DAYS_DRYING = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Breakage Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__BREAKAGE_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE__MIX = ProjectPackage.MARKED_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Unit Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Unit Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_TYPE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.MixDesignImpl <em>Mix Design</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.MixDesignImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixDesign()
	 * @generated
	 */
	int MIX_DESIGN = 2;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__BASIS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Yield Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__YIELD_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__WATER_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Stabiliser Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__STABILISER_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__PARTS = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Air Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__AIR_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Least Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__LEAST_WATER_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Most Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__MOST_WATER_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Waste Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__WASTE_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Dry Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__DRY_DENSITY = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Loose Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__LOOSE_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Spoiled Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN__SPOILED_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Mix Design</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Mix Design</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DESIGN_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.MixPartImpl <em>Mix Part</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.MixPartImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixPart()
	 * @generated
	 */
	int MIX_PART = 3;

	/**
	 * The feature id for the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__MATERIAL = 0;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__PARTS = 1;

	/**
	 * The number of structural features of the '<em>Mix Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Mix Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.MaterialImpl <em>Material</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.MaterialImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMaterial()
	 * @generated
	 */
	int MATERIAL = 4;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__NAME = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Unit Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__UNIT_CODE = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__DENSITY = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Pack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__PACK = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Waste Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__WASTE_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Compacted Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__COMPACTED_DENSITY = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Particle Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__PARTICLE_DENSITY = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Moisture Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__MOISTURE_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Absorbed Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__ABSORBED_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bulking Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__BULKING_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Largest Particle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__LARGEST_PARTICLE = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Binder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__BINDER = ProjectPackage.MARKED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Dug On Site</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL__DUG_ON_SITE = ProjectPackage.MARKED_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Material</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Material</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MATERIAL_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.CoatingTypeImpl <em>Coating Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.CoatingTypeImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCoatingType()
	 * @generated
	 */
	int COATING_TYPE = 5;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE__MATERIAL = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE__COVERAGE = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Coats</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE__COATS = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Coating Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Coating Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COATING_TYPE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.LintelTypeImpl <em>Lintel Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.LintelTypeImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getLintelType()
	 * @generated
	 */
	int LINTEL_TYPE = 6;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__HEIGHT = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__BEARING = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE__MATERIAL = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Lintel Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Lintel Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINTEL_TYPE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.FinishTypeImpl <em>Finish Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.FinishTypeImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getFinishType()
	 * @generated
	 */
	int FINISH_TYPE = 7;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE__MIX = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE__THICKNESS = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Coats</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE__COATS = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Finish Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Finish Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_TYPE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.CrewTypeImpl <em>Crew Type</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.CrewTypeImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCrewType()
	 * @generated
	 */
	int CREW_TYPE = 8;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_TYPE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_TYPE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Members</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_TYPE__MEMBERS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Crew Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_TYPE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Crew Type</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_TYPE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.CrewMemberImpl <em>Crew Member</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.CrewMemberImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCrewMember()
	 * @generated
	 */
	int CREW_MEMBER = 9;

	/**
	 * The feature id for the '<em><b>Trade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_MEMBER__TRADE = 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_MEMBER__COUNT = 1;

	/**
	 * The feature id for the '<em><b>Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_MEMBER__RATE = 2;

	/**
	 * The number of structural features of the '<em>Crew Member</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_MEMBER_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Crew Member</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CREW_MEMBER_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.impl.PlantImpl <em>Plant</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.impl.PlantImpl
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getPlant()
	 * @generated
	 */
	int PLANT = 10;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__KIND = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Output</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__OUTPUT = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__RATE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Lost Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__LOST_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT__CAPACITY = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Plant</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Plant</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANT_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.UnitSource <em>Unit Source</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getUnitSource()
	 * @generated
	 */
	int UNIT_SOURCE = 11;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.MixBasis <em>Mix Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.MixBasis
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixBasis()
	 * @generated
	 */
	int MIX_BASIS = 12;

	/**
	 * The meta object id for the '{@link org.coursewright.model.catalogue.PlantKind <em>Plant Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.catalogue.PlantKind
	 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getPlantKind()
	 * @generated
	 */
	int PLANT_KIND = 13;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.Catalogue <em>Catalogue</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Catalogue</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue
	 * @generated
	 */
	EClass getCatalogue();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getUnitTypes <em>Unit Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Unit Types</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getUnitTypes()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_UnitTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getMixDesigns <em>Mix Designs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Mix Designs</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getMixDesigns()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_MixDesigns();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getMaterials <em>Materials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Materials</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getMaterials()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_Materials();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getCoatingTypes <em>Coating Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Coating Types</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getCoatingTypes()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_CoatingTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getLintelTypes <em>Lintel Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lintel Types</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getLintelTypes()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_LintelTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getFinishTypes <em>Finish Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Finish Types</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getFinishTypes()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_FinishTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getCrewTypes <em>Crew Types</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Crew Types</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getCrewTypes()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_CrewTypes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.Catalogue#getPlant <em>Plant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Plant</em>'.
	 * @see org.coursewright.model.catalogue.Catalogue#getPlant()
	 * @see #getCatalogue()
	 * @generated
	 */
	EReference getCatalogue_Plant();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.UnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Unit Type</em>'.
	 * @see org.coursewright.model.catalogue.UnitType
	 * @generated
	 */
	EClass getUnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getLength()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getWidth()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getHeight()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Height();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getMass <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getMass()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Mass();

	/**
	 * Returns the meta object for the attribute list '{@link org.coursewright.model.catalogue.UnitType#getSpecialLengths <em>Special Lengths</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Special Lengths</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getSpecialLengths()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_SpecialLengths();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getShortestPiece <em>Shortest Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shortest Piece</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getShortestPiece()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_ShortestPiece();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getCutStep <em>Cut Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cut Step</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getCutStep()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_CutStep();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getKerf <em>Kerf</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kerf</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getKerf()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Kerf();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getSource()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getDaysMoist <em>Days Moist</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Days Moist</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getDaysMoist()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_DaysMoist();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getDaysDrying <em>Days Drying</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Days Drying</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getDaysDrying()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_DaysDrying();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.UnitType#getBreakageShare <em>Breakage Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Breakage Share</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getBreakageShare()
	 * @see #getUnitType()
	 * @generated
	 */
	EAttribute getUnitType_BreakageShare();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.catalogue.UnitType#getMix <em>Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mix</em>'.
	 * @see org.coursewright.model.catalogue.UnitType#getMix()
	 * @see #getUnitType()
	 * @generated
	 */
	EReference getUnitType_Mix();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.MixDesign <em>Mix Design</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mix Design</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign
	 * @generated
	 */
	EClass getMixDesign();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getBasis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basis</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getBasis()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_Basis();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getYieldShare <em>Yield Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yield Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getYieldShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_YieldShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getWaterShare <em>Water Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getWaterShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_WaterShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getStabiliserShare <em>Stabiliser Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stabiliser Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getStabiliserShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_StabiliserShare();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.MixDesign#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Parts</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getParts()
	 * @see #getMixDesign()
	 * @generated
	 */
	EReference getMixDesign_Parts();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getAirShare <em>Air Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Air Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getAirShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_AirShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getLeastWaterShare <em>Least Water Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Least Water Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getLeastWaterShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_LeastWaterShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getMostWaterShare <em>Most Water Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Most Water Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getMostWaterShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_MostWaterShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getWasteShare <em>Waste Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Waste Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getWasteShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_WasteShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getDryDensity <em>Dry Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Density</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getDryDensity()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_DryDensity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getLooseShare <em>Loose Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Loose Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getLooseShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_LooseShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixDesign#getSpoiledShare <em>Spoiled Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spoiled Share</em>'.
	 * @see org.coursewright.model.catalogue.MixDesign#getSpoiledShare()
	 * @see #getMixDesign()
	 * @generated
	 */
	EAttribute getMixDesign_SpoiledShare();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.MixPart <em>Mix Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mix Part</em>'.
	 * @see org.coursewright.model.catalogue.MixPart
	 * @generated
	 */
	EClass getMixPart();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.catalogue.MixPart#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Material</em>'.
	 * @see org.coursewright.model.catalogue.MixPart#getMaterial()
	 * @see #getMixPart()
	 * @generated
	 */
	EReference getMixPart_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.MixPart#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parts</em>'.
	 * @see org.coursewright.model.catalogue.MixPart#getParts()
	 * @see #getMixPart()
	 * @generated
	 */
	EAttribute getMixPart_Parts();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.Material <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Material</em>'.
	 * @see org.coursewright.model.catalogue.Material
	 * @generated
	 */
	EClass getMaterial();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.coursewright.model.catalogue.Material#getName()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getUnitCode <em>Unit Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Code</em>'.
	 * @see org.coursewright.model.catalogue.Material#getUnitCode()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_UnitCode();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getDensity <em>Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density</em>'.
	 * @see org.coursewright.model.catalogue.Material#getDensity()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_Density();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getPack <em>Pack</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pack</em>'.
	 * @see org.coursewright.model.catalogue.Material#getPack()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_Pack();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getWasteShare <em>Waste Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Waste Share</em>'.
	 * @see org.coursewright.model.catalogue.Material#getWasteShare()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_WasteShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getCompactedDensity <em>Compacted Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Compacted Density</em>'.
	 * @see org.coursewright.model.catalogue.Material#getCompactedDensity()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_CompactedDensity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getParticleDensity <em>Particle Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Particle Density</em>'.
	 * @see org.coursewright.model.catalogue.Material#getParticleDensity()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_ParticleDensity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getMoistureShare <em>Moisture Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Moisture Share</em>'.
	 * @see org.coursewright.model.catalogue.Material#getMoistureShare()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_MoistureShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getAbsorbedShare <em>Absorbed Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Absorbed Share</em>'.
	 * @see org.coursewright.model.catalogue.Material#getAbsorbedShare()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_AbsorbedShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getBulkingShare <em>Bulking Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bulking Share</em>'.
	 * @see org.coursewright.model.catalogue.Material#getBulkingShare()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_BulkingShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#getLargestParticle <em>Largest Particle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Largest Particle</em>'.
	 * @see org.coursewright.model.catalogue.Material#getLargestParticle()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_LargestParticle();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#isBinder <em>Binder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Binder</em>'.
	 * @see org.coursewright.model.catalogue.Material#isBinder()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_Binder();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Material#isDugOnSite <em>Dug On Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dug On Site</em>'.
	 * @see org.coursewright.model.catalogue.Material#isDugOnSite()
	 * @see #getMaterial()
	 * @generated
	 */
	EAttribute getMaterial_DugOnSite();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.CoatingType <em>Coating Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Coating Type</em>'.
	 * @see org.coursewright.model.catalogue.CoatingType
	 * @generated
	 */
	EClass getCoatingType();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.catalogue.CoatingType#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Material</em>'.
	 * @see org.coursewright.model.catalogue.CoatingType#getMaterial()
	 * @see #getCoatingType()
	 * @generated
	 */
	EReference getCoatingType_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.CoatingType#getCoverage <em>Coverage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coverage</em>'.
	 * @see org.coursewright.model.catalogue.CoatingType#getCoverage()
	 * @see #getCoatingType()
	 * @generated
	 */
	EAttribute getCoatingType_Coverage();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.CoatingType#getCoats <em>Coats</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coats</em>'.
	 * @see org.coursewright.model.catalogue.CoatingType#getCoats()
	 * @see #getCoatingType()
	 * @generated
	 */
	EAttribute getCoatingType_Coats();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.LintelType <em>Lintel Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lintel Type</em>'.
	 * @see org.coursewright.model.catalogue.LintelType
	 * @generated
	 */
	EClass getLintelType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.LintelType#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.catalogue.LintelType#getHeight()
	 * @see #getLintelType()
	 * @generated
	 */
	EAttribute getLintelType_Height();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.LintelType#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.catalogue.LintelType#getWidth()
	 * @see #getLintelType()
	 * @generated
	 */
	EAttribute getLintelType_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.LintelType#getBearing <em>Bearing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bearing</em>'.
	 * @see org.coursewright.model.catalogue.LintelType#getBearing()
	 * @see #getLintelType()
	 * @generated
	 */
	EAttribute getLintelType_Bearing();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.catalogue.LintelType#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Material</em>'.
	 * @see org.coursewright.model.catalogue.LintelType#getMaterial()
	 * @see #getLintelType()
	 * @generated
	 */
	EReference getLintelType_Material();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.FinishType <em>Finish Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Finish Type</em>'.
	 * @see org.coursewright.model.catalogue.FinishType
	 * @generated
	 */
	EClass getFinishType();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.catalogue.FinishType#getMix <em>Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mix</em>'.
	 * @see org.coursewright.model.catalogue.FinishType#getMix()
	 * @see #getFinishType()
	 * @generated
	 */
	EReference getFinishType_Mix();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.FinishType#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see org.coursewright.model.catalogue.FinishType#getThickness()
	 * @see #getFinishType()
	 * @generated
	 */
	EAttribute getFinishType_Thickness();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.FinishType#getCoats <em>Coats</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coats</em>'.
	 * @see org.coursewright.model.catalogue.FinishType#getCoats()
	 * @see #getFinishType()
	 * @generated
	 */
	EAttribute getFinishType_Coats();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.CrewType <em>Crew Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Crew Type</em>'.
	 * @see org.coursewright.model.catalogue.CrewType
	 * @generated
	 */
	EClass getCrewType();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.catalogue.CrewType#getMembers <em>Members</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Members</em>'.
	 * @see org.coursewright.model.catalogue.CrewType#getMembers()
	 * @see #getCrewType()
	 * @generated
	 */
	EReference getCrewType_Members();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.CrewMember <em>Crew Member</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Crew Member</em>'.
	 * @see org.coursewright.model.catalogue.CrewMember
	 * @generated
	 */
	EClass getCrewMember();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.CrewMember#getTrade <em>Trade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trade</em>'.
	 * @see org.coursewright.model.catalogue.CrewMember#getTrade()
	 * @see #getCrewMember()
	 * @generated
	 */
	EAttribute getCrewMember_Trade();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.CrewMember#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.coursewright.model.catalogue.CrewMember#getCount()
	 * @see #getCrewMember()
	 * @generated
	 */
	EAttribute getCrewMember_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.CrewMember#getRate <em>Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rate</em>'.
	 * @see org.coursewright.model.catalogue.CrewMember#getRate()
	 * @see #getCrewMember()
	 * @generated
	 */
	EAttribute getCrewMember_Rate();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.catalogue.Plant <em>Plant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Plant</em>'.
	 * @see org.coursewright.model.catalogue.Plant
	 * @generated
	 */
	EClass getPlant();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Plant#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.coursewright.model.catalogue.Plant#getKind()
	 * @see #getPlant()
	 * @generated
	 */
	EAttribute getPlant_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Plant#getOutput <em>Output</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Output</em>'.
	 * @see org.coursewright.model.catalogue.Plant#getOutput()
	 * @see #getPlant()
	 * @generated
	 */
	EAttribute getPlant_Output();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Plant#getRate <em>Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rate</em>'.
	 * @see org.coursewright.model.catalogue.Plant#getRate()
	 * @see #getPlant()
	 * @generated
	 */
	EAttribute getPlant_Rate();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Plant#getLostShare <em>Lost Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lost Share</em>'.
	 * @see org.coursewright.model.catalogue.Plant#getLostShare()
	 * @see #getPlant()
	 * @generated
	 */
	EAttribute getPlant_LostShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.catalogue.Plant#getCapacity <em>Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capacity</em>'.
	 * @see org.coursewright.model.catalogue.Plant#getCapacity()
	 * @see #getPlant()
	 * @generated
	 */
	EAttribute getPlant_Capacity();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.catalogue.UnitSource <em>Unit Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Unit Source</em>'.
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @generated
	 */
	EEnum getUnitSource();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.catalogue.MixBasis <em>Mix Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mix Basis</em>'.
	 * @see org.coursewright.model.catalogue.MixBasis
	 * @generated
	 */
	EEnum getMixBasis();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.catalogue.PlantKind <em>Plant Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Plant Kind</em>'.
	 * @see org.coursewright.model.catalogue.PlantKind
	 * @generated
	 */
	EEnum getPlantKind();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	CatalogueFactory getCatalogueFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.CatalogueImpl <em>Catalogue</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.CatalogueImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCatalogue()
		 * @generated
		 */
		EClass CATALOGUE = eINSTANCE.getCatalogue();

		/**
		 * The meta object literal for the '<em><b>Unit Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__UNIT_TYPES = eINSTANCE.getCatalogue_UnitTypes();

		/**
		 * The meta object literal for the '<em><b>Mix Designs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__MIX_DESIGNS = eINSTANCE.getCatalogue_MixDesigns();

		/**
		 * The meta object literal for the '<em><b>Materials</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__MATERIALS = eINSTANCE.getCatalogue_Materials();

		/**
		 * The meta object literal for the '<em><b>Coating Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__COATING_TYPES = eINSTANCE.getCatalogue_CoatingTypes();

		/**
		 * The meta object literal for the '<em><b>Lintel Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__LINTEL_TYPES = eINSTANCE.getCatalogue_LintelTypes();

		/**
		 * The meta object literal for the '<em><b>Finish Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__FINISH_TYPES = eINSTANCE.getCatalogue_FinishTypes();

		/**
		 * The meta object literal for the '<em><b>Crew Types</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__CREW_TYPES = eINSTANCE.getCatalogue_CrewTypes();

		/**
		 * The meta object literal for the '<em><b>Plant</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CATALOGUE__PLANT = eINSTANCE.getCatalogue_Plant();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.UnitTypeImpl <em>Unit Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.UnitTypeImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getUnitType()
		 * @generated
		 */
		EClass UNIT_TYPE = eINSTANCE.getUnitType();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__LENGTH = eINSTANCE.getUnitType_Length();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__WIDTH = eINSTANCE.getUnitType_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__HEIGHT = eINSTANCE.getUnitType_Height();

		/**
		 * The meta object literal for the '<em><b>Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__MASS = eINSTANCE.getUnitType_Mass();

		/**
		 * The meta object literal for the '<em><b>Special Lengths</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__SPECIAL_LENGTHS = eINSTANCE.getUnitType_SpecialLengths();

		/**
		 * The meta object literal for the '<em><b>Shortest Piece</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__SHORTEST_PIECE = eINSTANCE.getUnitType_ShortestPiece();

		/**
		 * The meta object literal for the '<em><b>Cut Step</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__CUT_STEP = eINSTANCE.getUnitType_CutStep();

		/**
		 * The meta object literal for the '<em><b>Kerf</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__KERF = eINSTANCE.getUnitType_Kerf();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__SOURCE = eINSTANCE.getUnitType_Source();

		/**
		 * The meta object literal for the '<em><b>Days Moist</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__DAYS_MOIST = eINSTANCE.getUnitType_DaysMoist();

		/**
		 * The meta object literal for the '<em><b>Days Drying</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__DAYS_DRYING = eINSTANCE.getUnitType_DaysDrying();

		/**
		 * The meta object literal for the '<em><b>Breakage Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_TYPE__BREAKAGE_SHARE = eINSTANCE.getUnitType_BreakageShare();

		/**
		 * The meta object literal for the '<em><b>Mix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UNIT_TYPE__MIX = eINSTANCE.getUnitType_Mix();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.MixDesignImpl <em>Mix Design</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.MixDesignImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixDesign()
		 * @generated
		 */
		EClass MIX_DESIGN = eINSTANCE.getMixDesign();

		/**
		 * The meta object literal for the '<em><b>Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__BASIS = eINSTANCE.getMixDesign_Basis();

		/**
		 * The meta object literal for the '<em><b>Yield Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__YIELD_SHARE = eINSTANCE.getMixDesign_YieldShare();

		/**
		 * The meta object literal for the '<em><b>Water Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__WATER_SHARE = eINSTANCE.getMixDesign_WaterShare();

		/**
		 * The meta object literal for the '<em><b>Stabiliser Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__STABILISER_SHARE = eINSTANCE.getMixDesign_StabiliserShare();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MIX_DESIGN__PARTS = eINSTANCE.getMixDesign_Parts();

		/**
		 * The meta object literal for the '<em><b>Air Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__AIR_SHARE = eINSTANCE.getMixDesign_AirShare();

		/**
		 * The meta object literal for the '<em><b>Least Water Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__LEAST_WATER_SHARE = eINSTANCE.getMixDesign_LeastWaterShare();

		/**
		 * The meta object literal for the '<em><b>Most Water Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__MOST_WATER_SHARE = eINSTANCE.getMixDesign_MostWaterShare();

		/**
		 * The meta object literal for the '<em><b>Waste Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__WASTE_SHARE = eINSTANCE.getMixDesign_WasteShare();

		/**
		 * The meta object literal for the '<em><b>Dry Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__DRY_DENSITY = eINSTANCE.getMixDesign_DryDensity();

		/**
		 * The meta object literal for the '<em><b>Loose Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__LOOSE_SHARE = eINSTANCE.getMixDesign_LooseShare();

		/**
		 * The meta object literal for the '<em><b>Spoiled Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DESIGN__SPOILED_SHARE = eINSTANCE.getMixDesign_SpoiledShare();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.MixPartImpl <em>Mix Part</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.MixPartImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixPart()
		 * @generated
		 */
		EClass MIX_PART = eINSTANCE.getMixPart();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MIX_PART__MATERIAL = eINSTANCE.getMixPart_Material();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_PART__PARTS = eINSTANCE.getMixPart_Parts();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.MaterialImpl <em>Material</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.MaterialImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMaterial()
		 * @generated
		 */
		EClass MATERIAL = eINSTANCE.getMaterial();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__NAME = eINSTANCE.getMaterial_Name();

		/**
		 * The meta object literal for the '<em><b>Unit Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__UNIT_CODE = eINSTANCE.getMaterial_UnitCode();

		/**
		 * The meta object literal for the '<em><b>Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__DENSITY = eINSTANCE.getMaterial_Density();

		/**
		 * The meta object literal for the '<em><b>Pack</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__PACK = eINSTANCE.getMaterial_Pack();

		/**
		 * The meta object literal for the '<em><b>Waste Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__WASTE_SHARE = eINSTANCE.getMaterial_WasteShare();

		/**
		 * The meta object literal for the '<em><b>Compacted Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__COMPACTED_DENSITY = eINSTANCE.getMaterial_CompactedDensity();

		/**
		 * The meta object literal for the '<em><b>Particle Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__PARTICLE_DENSITY = eINSTANCE.getMaterial_ParticleDensity();

		/**
		 * The meta object literal for the '<em><b>Moisture Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__MOISTURE_SHARE = eINSTANCE.getMaterial_MoistureShare();

		/**
		 * The meta object literal for the '<em><b>Absorbed Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__ABSORBED_SHARE = eINSTANCE.getMaterial_AbsorbedShare();

		/**
		 * The meta object literal for the '<em><b>Bulking Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__BULKING_SHARE = eINSTANCE.getMaterial_BulkingShare();

		/**
		 * The meta object literal for the '<em><b>Largest Particle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__LARGEST_PARTICLE = eINSTANCE.getMaterial_LargestParticle();

		/**
		 * The meta object literal for the '<em><b>Binder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__BINDER = eINSTANCE.getMaterial_Binder();

		/**
		 * The meta object literal for the '<em><b>Dug On Site</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MATERIAL__DUG_ON_SITE = eINSTANCE.getMaterial_DugOnSite();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.CoatingTypeImpl <em>Coating Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.CoatingTypeImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCoatingType()
		 * @generated
		 */
		EClass COATING_TYPE = eINSTANCE.getCoatingType();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COATING_TYPE__MATERIAL = eINSTANCE.getCoatingType_Material();

		/**
		 * The meta object literal for the '<em><b>Coverage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COATING_TYPE__COVERAGE = eINSTANCE.getCoatingType_Coverage();

		/**
		 * The meta object literal for the '<em><b>Coats</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COATING_TYPE__COATS = eINSTANCE.getCoatingType_Coats();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.LintelTypeImpl <em>Lintel Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.LintelTypeImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getLintelType()
		 * @generated
		 */
		EClass LINTEL_TYPE = eINSTANCE.getLintelType();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINTEL_TYPE__HEIGHT = eINSTANCE.getLintelType_Height();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINTEL_TYPE__WIDTH = eINSTANCE.getLintelType_Width();

		/**
		 * The meta object literal for the '<em><b>Bearing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINTEL_TYPE__BEARING = eINSTANCE.getLintelType_Bearing();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LINTEL_TYPE__MATERIAL = eINSTANCE.getLintelType_Material();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.FinishTypeImpl <em>Finish Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.FinishTypeImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getFinishType()
		 * @generated
		 */
		EClass FINISH_TYPE = eINSTANCE.getFinishType();

		/**
		 * The meta object literal for the '<em><b>Mix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FINISH_TYPE__MIX = eINSTANCE.getFinishType_Mix();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH_TYPE__THICKNESS = eINSTANCE.getFinishType_Thickness();

		/**
		 * The meta object literal for the '<em><b>Coats</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH_TYPE__COATS = eINSTANCE.getFinishType_Coats();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.CrewTypeImpl <em>Crew Type</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.CrewTypeImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCrewType()
		 * @generated
		 */
		EClass CREW_TYPE = eINSTANCE.getCrewType();

		/**
		 * The meta object literal for the '<em><b>Members</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CREW_TYPE__MEMBERS = eINSTANCE.getCrewType_Members();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.CrewMemberImpl <em>Crew Member</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.CrewMemberImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getCrewMember()
		 * @generated
		 */
		EClass CREW_MEMBER = eINSTANCE.getCrewMember();

		/**
		 * The meta object literal for the '<em><b>Trade</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CREW_MEMBER__TRADE = eINSTANCE.getCrewMember_Trade();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CREW_MEMBER__COUNT = eINSTANCE.getCrewMember_Count();

		/**
		 * The meta object literal for the '<em><b>Rate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CREW_MEMBER__RATE = eINSTANCE.getCrewMember_Rate();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.impl.PlantImpl <em>Plant</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.impl.PlantImpl
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getPlant()
		 * @generated
		 */
		EClass PLANT = eINSTANCE.getPlant();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANT__KIND = eINSTANCE.getPlant_Kind();

		/**
		 * The meta object literal for the '<em><b>Output</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANT__OUTPUT = eINSTANCE.getPlant_Output();

		/**
		 * The meta object literal for the '<em><b>Rate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANT__RATE = eINSTANCE.getPlant_Rate();

		/**
		 * The meta object literal for the '<em><b>Lost Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANT__LOST_SHARE = eINSTANCE.getPlant_LostShare();

		/**
		 * The meta object literal for the '<em><b>Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANT__CAPACITY = eINSTANCE.getPlant_Capacity();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.UnitSource <em>Unit Source</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.UnitSource
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getUnitSource()
		 * @generated
		 */
		EEnum UNIT_SOURCE = eINSTANCE.getUnitSource();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.MixBasis <em>Mix Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.MixBasis
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getMixBasis()
		 * @generated
		 */
		EEnum MIX_BASIS = eINSTANCE.getMixBasis();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.catalogue.PlantKind <em>Plant Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.catalogue.PlantKind
		 * @see org.coursewright.model.catalogue.impl.CataloguePackageImpl#getPlantKind()
		 * @generated
		 */
		EEnum PLANT_KIND = eINSTANCE.getPlantKind();

	}

} //CataloguePackage
