/**
 */
package org.coursewright.model.building;

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
 * Storeys, walls, openings and what ties them together.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.building.BuildingFactory
 * @model kind="package"
 * @generated
 */
public interface BuildingPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "building";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/building";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "building";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	BuildingPackage eINSTANCE = org.coursewright.model.building.impl.BuildingPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.BuildingImpl <em>Building</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.BuildingImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBuilding()
	 * @generated
	 */
	int BUILDING = 0;

	/**
	 * The feature id for the '<em><b>Storeys</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING__STOREYS = 0;

	/**
	 * The feature id for the '<em><b>Junctions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING__JUNCTIONS = 1;

	/**
	 * The feature id for the '<em><b>Grade Beams</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING__GRADE_BEAMS = 2;

	/**
	 * The feature id for the '<em><b>Bond Beams</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING__BOND_BEAMS = 3;

	/**
	 * The number of structural features of the '<em>Building</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Building</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BUILDING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.StoreyImpl <em>Storey</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.StoreyImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getStorey()
	 * @generated
	 */
	int STOREY = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Elevation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY__ELEVATION = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY__WALLS = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Storey</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Storey</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOREY_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.WallImpl <em>Wall</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.WallImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWall()
	 * @generated
	 */
	int WALL = 2;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>From X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__FROM_X = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__FROM_Y = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__TO_X = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>To Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__TO_Y = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__UNIT_TYPE = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Bond</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__BOND = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__BASE = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__HEIGHT = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Top Profile</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__TOP_PROFILE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bond Rule</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__BOND_RULE = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Openings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__OPENINGS = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Pins</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__PINS = ProjectPackage.MARKED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Finishes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__FINISHES = ProjectPackage.MARKED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__ELEMENT = ProjectPackage.MARKED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Move Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__MOVE_TOLERANCE = ProjectPackage.MARKED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Size Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL__SIZE_TOLERANCE = ProjectPackage.MARKED_FEATURE_COUNT + 15;

	/**
	 * The number of structural features of the '<em>Wall</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 16;

	/**
	 * The number of operations of the '<em>Wall</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.TopPointImpl <em>Top Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.TopPointImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getTopPoint()
	 * @generated
	 */
	int TOP_POINT = 3;

	/**
	 * The feature id for the '<em><b>Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_POINT__OFFSET = 0;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_POINT__HEIGHT = 1;

	/**
	 * The number of structural features of the '<em>Top Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_POINT_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Top Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_POINT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.OpeningImpl <em>Opening</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.OpeningImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getOpening()
	 * @generated
	 */
	int OPENING = 4;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__KIND = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__OFFSET = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sill</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__SILL = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__HEIGHT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Lintel Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__LINTEL_TYPE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Move Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__MOVE_TOLERANCE = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Size Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__SIZE_TOLERANCE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.JunctionImpl <em>Junction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.JunctionImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getJunction()
	 * @generated
	 */
	int JUNCTION = 5;

	/**
	 * The feature id for the '<em><b>Ends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__ENDS = 0;

	/**
	 * The feature id for the '<em><b>Through</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__THROUGH = 1;

	/**
	 * The feature id for the '<em><b>Tie</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__TIE = 2;

	/**
	 * The number of structural features of the '<em>Junction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Junction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.JunctionEndImpl <em>Junction End</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.JunctionEndImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getJunctionEnd()
	 * @generated
	 */
	int JUNCTION_END = 6;

	/**
	 * The feature id for the '<em><b>Wall</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_END__WALL = 0;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_END__PLACE = 1;

	/**
	 * The number of structural features of the '<em>Junction End</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_END_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Junction End</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_END_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.GradeBeamImpl <em>Grade Beam</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.GradeBeamImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getGradeBeam()
	 * @generated
	 */
	int GRADE_BEAM = 7;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__WALLS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__DEPTH = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Top</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__TOP = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__MIX = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reinforcement</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM__REINFORCEMENT = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Grade Beam</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Grade Beam</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GRADE_BEAM_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.BondBeamImpl <em>Bond Beam</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.BondBeamImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBondBeam()
	 * @generated
	 */
	int BOND_BEAM = 8;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__WALLS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__DEPTH = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bottom</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__BOTTOM = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__MIX = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reinforcement</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM__REINFORCEMENT = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Bond Beam</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Bond Beam</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_BEAM_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.ReinforcementImpl <em>Reinforcement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.ReinforcementImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getReinforcement()
	 * @generated
	 */
	int REINFORCEMENT = 9;

	/**
	 * The feature id for the '<em><b>Bar</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT__BAR = 0;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT__LINES = 1;

	/**
	 * The feature id for the '<em><b>Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT__STOCK = 2;

	/**
	 * The feature id for the '<em><b>Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT__LAP = 3;

	/**
	 * The number of structural features of the '<em>Reinforcement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Reinforcement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REINFORCEMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.FinishImpl <em>Finish</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.FinishImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getFinish()
	 * @generated
	 */
	int FINISH = 10;

	/**
	 * The feature id for the '<em><b>Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__TYPE = 0;

	/**
	 * The feature id for the '<em><b>Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__SIDE = 1;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__FROM = 2;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH__TO = 3;

	/**
	 * The number of structural features of the '<em>Finish</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Finish</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FINISH_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.BondRuleImpl <em>Bond Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.BondRuleImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBondRule()
	 * @generated
	 */
	int BOND_RULE = 11;

	/**
	 * The feature id for the '<em><b>Least Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__LEAST_LAP = 0;

	/**
	 * The feature id for the '<em><b>Head Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__HEAD_LEAST = 1;

	/**
	 * The feature id for the '<em><b>Head Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__HEAD_NOMINAL = 2;

	/**
	 * The feature id for the '<em><b>Head Most</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__HEAD_MOST = 3;

	/**
	 * The feature id for the '<em><b>Bed Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__BED_LEAST = 4;

	/**
	 * The feature id for the '<em><b>Bed Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__BED_NOMINAL = 5;

	/**
	 * The feature id for the '<em><b>Bed Most</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__BED_MOST = 6;

	/**
	 * The feature id for the '<em><b>Shortest Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__SHORTEST_PIECE = 7;

	/**
	 * The feature id for the '<em><b>Fat Joint Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE__FAT_JOINT_RESERVE = 8;

	/**
	 * The number of structural features of the '<em>Bond Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE_FEATURE_COUNT = 9;

	/**
	 * The number of operations of the '<em>Bond Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOND_RULE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.PinImpl <em>Pin</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.PinImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getPin()
	 * @generated
	 */
	int PIN = 12;

	/**
	 * The feature id for the '<em><b>Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIN__COURSE = 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIN__AT = 1;

	/**
	 * The number of structural features of the '<em>Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIN_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIN_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.GaugePinImpl <em>Gauge Pin</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.GaugePinImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getGaugePin()
	 * @generated
	 */
	int GAUGE_PIN = 13;

	/**
	 * The feature id for the '<em><b>Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_PIN__COURSE = PIN__COURSE;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_PIN__AT = PIN__AT;

	/**
	 * The feature id for the '<em><b>Joint</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_PIN__JOINT = PIN_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Gauge Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_PIN_FEATURE_COUNT = PIN_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Gauge Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GAUGE_PIN_OPERATION_COUNT = PIN_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.impl.PiecePinImpl <em>Piece Pin</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.impl.PiecePinImpl
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getPiecePin()
	 * @generated
	 */
	int PIECE_PIN = 14;

	/**
	 * The feature id for the '<em><b>Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_PIN__COURSE = PIN__COURSE;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_PIN__AT = PIN__AT;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_PIN__LENGTH = PIN_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Piece Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_PIN_FEATURE_COUNT = PIN_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Piece Pin</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_PIN_OPERATION_COUNT = PIN_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.Bond <em>Bond</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.Bond
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBond()
	 * @generated
	 */
	int BOND = 15;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.OpeningKind <em>Opening Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.OpeningKind
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getOpeningKind()
	 * @generated
	 */
	int OPENING_KIND = 16;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.WallPlace <em>Wall Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.WallPlace
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWallPlace()
	 * @generated
	 */
	int WALL_PLACE = 17;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.TeeTie <em>Tee Tie</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.TeeTie
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getTeeTie()
	 * @generated
	 */
	int TEE_TIE = 18;

	/**
	 * The meta object id for the '{@link org.coursewright.model.building.WallSide <em>Wall Side</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.building.WallSide
	 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWallSide()
	 * @generated
	 */
	int WALL_SIDE = 19;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Building <em>Building</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Building</em>'.
	 * @see org.coursewright.model.building.Building
	 * @generated
	 */
	EClass getBuilding();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Building#getStoreys <em>Storeys</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Storeys</em>'.
	 * @see org.coursewright.model.building.Building#getStoreys()
	 * @see #getBuilding()
	 * @generated
	 */
	EReference getBuilding_Storeys();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Building#getJunctions <em>Junctions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Junctions</em>'.
	 * @see org.coursewright.model.building.Building#getJunctions()
	 * @see #getBuilding()
	 * @generated
	 */
	EReference getBuilding_Junctions();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Building#getGradeBeams <em>Grade Beams</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Grade Beams</em>'.
	 * @see org.coursewright.model.building.Building#getGradeBeams()
	 * @see #getBuilding()
	 * @generated
	 */
	EReference getBuilding_GradeBeams();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Building#getBondBeams <em>Bond Beams</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bond Beams</em>'.
	 * @see org.coursewright.model.building.Building#getBondBeams()
	 * @see #getBuilding()
	 * @generated
	 */
	EReference getBuilding_BondBeams();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Storey <em>Storey</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Storey</em>'.
	 * @see org.coursewright.model.building.Storey
	 * @generated
	 */
	EClass getStorey();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Storey#getElevation <em>Elevation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation</em>'.
	 * @see org.coursewright.model.building.Storey#getElevation()
	 * @see #getStorey()
	 * @generated
	 */
	EAttribute getStorey_Elevation();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Storey#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Walls</em>'.
	 * @see org.coursewright.model.building.Storey#getWalls()
	 * @see #getStorey()
	 * @generated
	 */
	EReference getStorey_Walls();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Wall <em>Wall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wall</em>'.
	 * @see org.coursewright.model.building.Wall
	 * @generated
	 */
	EClass getWall();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getFromX <em>From X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From X</em>'.
	 * @see org.coursewright.model.building.Wall#getFromX()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_FromX();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getFromY <em>From Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From Y</em>'.
	 * @see org.coursewright.model.building.Wall#getFromY()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_FromY();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getToX <em>To X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To X</em>'.
	 * @see org.coursewright.model.building.Wall#getToX()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_ToX();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getToY <em>To Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Y</em>'.
	 * @see org.coursewright.model.building.Wall#getToY()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_ToY();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.Wall#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.building.Wall#getUnitType()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_UnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getBond <em>Bond</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bond</em>'.
	 * @see org.coursewright.model.building.Wall#getBond()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Bond();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getBase <em>Base</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base</em>'.
	 * @see org.coursewright.model.building.Wall#getBase()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Base();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.building.Wall#getHeight()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Height();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Wall#getTopProfile <em>Top Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Top Profile</em>'.
	 * @see org.coursewright.model.building.Wall#getTopProfile()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_TopProfile();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.building.Wall#getBondRule <em>Bond Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Bond Rule</em>'.
	 * @see org.coursewright.model.building.Wall#getBondRule()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_BondRule();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Wall#getOpenings <em>Openings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Openings</em>'.
	 * @see org.coursewright.model.building.Wall#getOpenings()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Openings();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Wall#getPins <em>Pins</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pins</em>'.
	 * @see org.coursewright.model.building.Wall#getPins()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Pins();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Wall#getFinishes <em>Finishes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Finishes</em>'.
	 * @see org.coursewright.model.building.Wall#getFinishes()
	 * @see #getWall()
	 * @generated
	 */
	EReference getWall_Finishes();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Element</em>'.
	 * @see org.coursewright.model.building.Wall#getElement()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getMoveTolerance <em>Move Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Move Tolerance</em>'.
	 * @see org.coursewright.model.building.Wall#getMoveTolerance()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_MoveTolerance();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Wall#getSizeTolerance <em>Size Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size Tolerance</em>'.
	 * @see org.coursewright.model.building.Wall#getSizeTolerance()
	 * @see #getWall()
	 * @generated
	 */
	EAttribute getWall_SizeTolerance();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.TopPoint <em>Top Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Top Point</em>'.
	 * @see org.coursewright.model.building.TopPoint
	 * @generated
	 */
	EClass getTopPoint();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.TopPoint#getOffset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset</em>'.
	 * @see org.coursewright.model.building.TopPoint#getOffset()
	 * @see #getTopPoint()
	 * @generated
	 */
	EAttribute getTopPoint_Offset();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.TopPoint#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.building.TopPoint#getHeight()
	 * @see #getTopPoint()
	 * @generated
	 */
	EAttribute getTopPoint_Height();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Opening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Opening</em>'.
	 * @see org.coursewright.model.building.Opening
	 * @generated
	 */
	EClass getOpening();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.coursewright.model.building.Opening#getKind()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getOffset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset</em>'.
	 * @see org.coursewright.model.building.Opening#getOffset()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Offset();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.building.Opening#getWidth()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getSill <em>Sill</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sill</em>'.
	 * @see org.coursewright.model.building.Opening#getSill()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Sill();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.building.Opening#getHeight()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Height();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.Opening#getLintelType <em>Lintel Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lintel Type</em>'.
	 * @see org.coursewright.model.building.Opening#getLintelType()
	 * @see #getOpening()
	 * @generated
	 */
	EReference getOpening_LintelType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getMoveTolerance <em>Move Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Move Tolerance</em>'.
	 * @see org.coursewright.model.building.Opening#getMoveTolerance()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_MoveTolerance();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Opening#getSizeTolerance <em>Size Tolerance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size Tolerance</em>'.
	 * @see org.coursewright.model.building.Opening#getSizeTolerance()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_SizeTolerance();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Junction <em>Junction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Junction</em>'.
	 * @see org.coursewright.model.building.Junction
	 * @generated
	 */
	EClass getJunction();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.building.Junction#getEnds <em>Ends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ends</em>'.
	 * @see org.coursewright.model.building.Junction#getEnds()
	 * @see #getJunction()
	 * @generated
	 */
	EReference getJunction_Ends();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.Junction#getThrough <em>Through</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Through</em>'.
	 * @see org.coursewright.model.building.Junction#getThrough()
	 * @see #getJunction()
	 * @generated
	 */
	EReference getJunction_Through();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Junction#getTie <em>Tie</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tie</em>'.
	 * @see org.coursewright.model.building.Junction#getTie()
	 * @see #getJunction()
	 * @generated
	 */
	EAttribute getJunction_Tie();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.JunctionEnd <em>Junction End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Junction End</em>'.
	 * @see org.coursewright.model.building.JunctionEnd
	 * @generated
	 */
	EClass getJunctionEnd();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.JunctionEnd#getWall <em>Wall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Wall</em>'.
	 * @see org.coursewright.model.building.JunctionEnd#getWall()
	 * @see #getJunctionEnd()
	 * @generated
	 */
	EReference getJunctionEnd_Wall();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.JunctionEnd#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see org.coursewright.model.building.JunctionEnd#getPlace()
	 * @see #getJunctionEnd()
	 * @generated
	 */
	EAttribute getJunctionEnd_Place();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.GradeBeam <em>Grade Beam</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Grade Beam</em>'.
	 * @see org.coursewright.model.building.GradeBeam
	 * @generated
	 */
	EClass getGradeBeam();

	/**
	 * Returns the meta object for the reference list '{@link org.coursewright.model.building.GradeBeam#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Walls</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getWalls()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EReference getGradeBeam_Walls();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.GradeBeam#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getWidth()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EAttribute getGradeBeam_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.GradeBeam#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getDepth()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EAttribute getGradeBeam_Depth();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.GradeBeam#getTop <em>Top</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Top</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getTop()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EAttribute getGradeBeam_Top();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.GradeBeam#getMix <em>Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mix</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getMix()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EReference getGradeBeam_Mix();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.building.GradeBeam#getReinforcement <em>Reinforcement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Reinforcement</em>'.
	 * @see org.coursewright.model.building.GradeBeam#getReinforcement()
	 * @see #getGradeBeam()
	 * @generated
	 */
	EReference getGradeBeam_Reinforcement();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.BondBeam <em>Bond Beam</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bond Beam</em>'.
	 * @see org.coursewright.model.building.BondBeam
	 * @generated
	 */
	EClass getBondBeam();

	/**
	 * Returns the meta object for the reference list '{@link org.coursewright.model.building.BondBeam#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Walls</em>'.
	 * @see org.coursewright.model.building.BondBeam#getWalls()
	 * @see #getBondBeam()
	 * @generated
	 */
	EReference getBondBeam_Walls();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondBeam#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.building.BondBeam#getWidth()
	 * @see #getBondBeam()
	 * @generated
	 */
	EAttribute getBondBeam_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondBeam#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.coursewright.model.building.BondBeam#getDepth()
	 * @see #getBondBeam()
	 * @generated
	 */
	EAttribute getBondBeam_Depth();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondBeam#getBottom <em>Bottom</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bottom</em>'.
	 * @see org.coursewright.model.building.BondBeam#getBottom()
	 * @see #getBondBeam()
	 * @generated
	 */
	EAttribute getBondBeam_Bottom();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.BondBeam#getMix <em>Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mix</em>'.
	 * @see org.coursewright.model.building.BondBeam#getMix()
	 * @see #getBondBeam()
	 * @generated
	 */
	EReference getBondBeam_Mix();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.building.BondBeam#getReinforcement <em>Reinforcement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Reinforcement</em>'.
	 * @see org.coursewright.model.building.BondBeam#getReinforcement()
	 * @see #getBondBeam()
	 * @generated
	 */
	EReference getBondBeam_Reinforcement();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Reinforcement <em>Reinforcement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reinforcement</em>'.
	 * @see org.coursewright.model.building.Reinforcement
	 * @generated
	 */
	EClass getReinforcement();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Reinforcement#getBar <em>Bar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bar</em>'.
	 * @see org.coursewright.model.building.Reinforcement#getBar()
	 * @see #getReinforcement()
	 * @generated
	 */
	EAttribute getReinforcement_Bar();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Reinforcement#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lines</em>'.
	 * @see org.coursewright.model.building.Reinforcement#getLines()
	 * @see #getReinforcement()
	 * @generated
	 */
	EAttribute getReinforcement_Lines();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Reinforcement#getStock <em>Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stock</em>'.
	 * @see org.coursewright.model.building.Reinforcement#getStock()
	 * @see #getReinforcement()
	 * @generated
	 */
	EAttribute getReinforcement_Stock();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Reinforcement#getLap <em>Lap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lap</em>'.
	 * @see org.coursewright.model.building.Reinforcement#getLap()
	 * @see #getReinforcement()
	 * @generated
	 */
	EAttribute getReinforcement_Lap();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Finish <em>Finish</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Finish</em>'.
	 * @see org.coursewright.model.building.Finish
	 * @generated
	 */
	EClass getFinish();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.building.Finish#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Type</em>'.
	 * @see org.coursewright.model.building.Finish#getType()
	 * @see #getFinish()
	 * @generated
	 */
	EReference getFinish_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Finish#getSide <em>Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Side</em>'.
	 * @see org.coursewright.model.building.Finish#getSide()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_Side();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Finish#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.coursewright.model.building.Finish#getFrom()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_From();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Finish#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.coursewright.model.building.Finish#getTo()
	 * @see #getFinish()
	 * @generated
	 */
	EAttribute getFinish_To();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.BondRule <em>Bond Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bond Rule</em>'.
	 * @see org.coursewright.model.building.BondRule
	 * @generated
	 */
	EClass getBondRule();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getLeastLap <em>Least Lap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Least Lap</em>'.
	 * @see org.coursewright.model.building.BondRule#getLeastLap()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_LeastLap();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getHeadLeast <em>Head Least</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Least</em>'.
	 * @see org.coursewright.model.building.BondRule#getHeadLeast()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_HeadLeast();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getHeadNominal <em>Head Nominal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Nominal</em>'.
	 * @see org.coursewright.model.building.BondRule#getHeadNominal()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_HeadNominal();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getHeadMost <em>Head Most</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Most</em>'.
	 * @see org.coursewright.model.building.BondRule#getHeadMost()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_HeadMost();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getBedLeast <em>Bed Least</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bed Least</em>'.
	 * @see org.coursewright.model.building.BondRule#getBedLeast()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_BedLeast();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getBedNominal <em>Bed Nominal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bed Nominal</em>'.
	 * @see org.coursewright.model.building.BondRule#getBedNominal()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_BedNominal();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getBedMost <em>Bed Most</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bed Most</em>'.
	 * @see org.coursewright.model.building.BondRule#getBedMost()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_BedMost();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getShortestPiece <em>Shortest Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shortest Piece</em>'.
	 * @see org.coursewright.model.building.BondRule#getShortestPiece()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_ShortestPiece();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.BondRule#getFatJointReserve <em>Fat Joint Reserve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fat Joint Reserve</em>'.
	 * @see org.coursewright.model.building.BondRule#getFatJointReserve()
	 * @see #getBondRule()
	 * @generated
	 */
	EAttribute getBondRule_FatJointReserve();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.Pin <em>Pin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pin</em>'.
	 * @see org.coursewright.model.building.Pin
	 * @generated
	 */
	EClass getPin();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Pin#getCourse <em>Course</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Course</em>'.
	 * @see org.coursewright.model.building.Pin#getCourse()
	 * @see #getPin()
	 * @generated
	 */
	EAttribute getPin_Course();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.Pin#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.coursewright.model.building.Pin#getAt()
	 * @see #getPin()
	 * @generated
	 */
	EAttribute getPin_At();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.GaugePin <em>Gauge Pin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Gauge Pin</em>'.
	 * @see org.coursewright.model.building.GaugePin
	 * @generated
	 */
	EClass getGaugePin();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.GaugePin#getJoint <em>Joint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Joint</em>'.
	 * @see org.coursewright.model.building.GaugePin#getJoint()
	 * @see #getGaugePin()
	 * @generated
	 */
	EAttribute getGaugePin_Joint();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.building.PiecePin <em>Piece Pin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Piece Pin</em>'.
	 * @see org.coursewright.model.building.PiecePin
	 * @generated
	 */
	EClass getPiecePin();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.building.PiecePin#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.coursewright.model.building.PiecePin#getLength()
	 * @see #getPiecePin()
	 * @generated
	 */
	EAttribute getPiecePin_Length();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.building.Bond <em>Bond</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bond</em>'.
	 * @see org.coursewright.model.building.Bond
	 * @generated
	 */
	EEnum getBond();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.building.OpeningKind <em>Opening Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Opening Kind</em>'.
	 * @see org.coursewright.model.building.OpeningKind
	 * @generated
	 */
	EEnum getOpeningKind();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.building.WallPlace <em>Wall Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Wall Place</em>'.
	 * @see org.coursewright.model.building.WallPlace
	 * @generated
	 */
	EEnum getWallPlace();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.building.TeeTie <em>Tee Tie</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tee Tie</em>'.
	 * @see org.coursewright.model.building.TeeTie
	 * @generated
	 */
	EEnum getTeeTie();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.building.WallSide <em>Wall Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Wall Side</em>'.
	 * @see org.coursewright.model.building.WallSide
	 * @generated
	 */
	EEnum getWallSide();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	BuildingFactory getBuildingFactory();

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
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.BuildingImpl <em>Building</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.BuildingImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBuilding()
		 * @generated
		 */
		EClass BUILDING = eINSTANCE.getBuilding();

		/**
		 * The meta object literal for the '<em><b>Storeys</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BUILDING__STOREYS = eINSTANCE.getBuilding_Storeys();

		/**
		 * The meta object literal for the '<em><b>Junctions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BUILDING__JUNCTIONS = eINSTANCE.getBuilding_Junctions();

		/**
		 * The meta object literal for the '<em><b>Grade Beams</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BUILDING__GRADE_BEAMS = eINSTANCE.getBuilding_GradeBeams();

		/**
		 * The meta object literal for the '<em><b>Bond Beams</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BUILDING__BOND_BEAMS = eINSTANCE.getBuilding_BondBeams();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.StoreyImpl <em>Storey</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.StoreyImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getStorey()
		 * @generated
		 */
		EClass STOREY = eINSTANCE.getStorey();

		/**
		 * The meta object literal for the '<em><b>Elevation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOREY__ELEVATION = eINSTANCE.getStorey_Elevation();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOREY__WALLS = eINSTANCE.getStorey_Walls();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.WallImpl <em>Wall</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.WallImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWall()
		 * @generated
		 */
		EClass WALL = eINSTANCE.getWall();

		/**
		 * The meta object literal for the '<em><b>From X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__FROM_X = eINSTANCE.getWall_FromX();

		/**
		 * The meta object literal for the '<em><b>From Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__FROM_Y = eINSTANCE.getWall_FromY();

		/**
		 * The meta object literal for the '<em><b>To X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__TO_X = eINSTANCE.getWall_ToX();

		/**
		 * The meta object literal for the '<em><b>To Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__TO_Y = eINSTANCE.getWall_ToY();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__UNIT_TYPE = eINSTANCE.getWall_UnitType();

		/**
		 * The meta object literal for the '<em><b>Bond</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__BOND = eINSTANCE.getWall_Bond();

		/**
		 * The meta object literal for the '<em><b>Base</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__BASE = eINSTANCE.getWall_Base();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__HEIGHT = eINSTANCE.getWall_Height();

		/**
		 * The meta object literal for the '<em><b>Top Profile</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__TOP_PROFILE = eINSTANCE.getWall_TopProfile();

		/**
		 * The meta object literal for the '<em><b>Bond Rule</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__BOND_RULE = eINSTANCE.getWall_BondRule();

		/**
		 * The meta object literal for the '<em><b>Openings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__OPENINGS = eINSTANCE.getWall_Openings();

		/**
		 * The meta object literal for the '<em><b>Pins</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__PINS = eINSTANCE.getWall_Pins();

		/**
		 * The meta object literal for the '<em><b>Finishes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL__FINISHES = eINSTANCE.getWall_Finishes();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__ELEMENT = eINSTANCE.getWall_Element();

		/**
		 * The meta object literal for the '<em><b>Move Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__MOVE_TOLERANCE = eINSTANCE.getWall_MoveTolerance();

		/**
		 * The meta object literal for the '<em><b>Size Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL__SIZE_TOLERANCE = eINSTANCE.getWall_SizeTolerance();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.TopPointImpl <em>Top Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.TopPointImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getTopPoint()
		 * @generated
		 */
		EClass TOP_POINT = eINSTANCE.getTopPoint();

		/**
		 * The meta object literal for the '<em><b>Offset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_POINT__OFFSET = eINSTANCE.getTopPoint_Offset();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_POINT__HEIGHT = eINSTANCE.getTopPoint_Height();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.OpeningImpl <em>Opening</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.OpeningImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getOpening()
		 * @generated
		 */
		EClass OPENING = eINSTANCE.getOpening();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__KIND = eINSTANCE.getOpening_Kind();

		/**
		 * The meta object literal for the '<em><b>Offset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__OFFSET = eINSTANCE.getOpening_Offset();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__WIDTH = eINSTANCE.getOpening_Width();

		/**
		 * The meta object literal for the '<em><b>Sill</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__SILL = eINSTANCE.getOpening_Sill();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__HEIGHT = eINSTANCE.getOpening_Height();

		/**
		 * The meta object literal for the '<em><b>Lintel Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPENING__LINTEL_TYPE = eINSTANCE.getOpening_LintelType();

		/**
		 * The meta object literal for the '<em><b>Move Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__MOVE_TOLERANCE = eINSTANCE.getOpening_MoveTolerance();

		/**
		 * The meta object literal for the '<em><b>Size Tolerance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__SIZE_TOLERANCE = eINSTANCE.getOpening_SizeTolerance();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.JunctionImpl <em>Junction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.JunctionImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getJunction()
		 * @generated
		 */
		EClass JUNCTION = eINSTANCE.getJunction();

		/**
		 * The meta object literal for the '<em><b>Ends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JUNCTION__ENDS = eINSTANCE.getJunction_Ends();

		/**
		 * The meta object literal for the '<em><b>Through</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JUNCTION__THROUGH = eINSTANCE.getJunction_Through();

		/**
		 * The meta object literal for the '<em><b>Tie</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JUNCTION__TIE = eINSTANCE.getJunction_Tie();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.JunctionEndImpl <em>Junction End</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.JunctionEndImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getJunctionEnd()
		 * @generated
		 */
		EClass JUNCTION_END = eINSTANCE.getJunctionEnd();

		/**
		 * The meta object literal for the '<em><b>Wall</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JUNCTION_END__WALL = eINSTANCE.getJunctionEnd_Wall();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JUNCTION_END__PLACE = eINSTANCE.getJunctionEnd_Place();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.GradeBeamImpl <em>Grade Beam</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.GradeBeamImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getGradeBeam()
		 * @generated
		 */
		EClass GRADE_BEAM = eINSTANCE.getGradeBeam();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GRADE_BEAM__WALLS = eINSTANCE.getGradeBeam_Walls();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GRADE_BEAM__WIDTH = eINSTANCE.getGradeBeam_Width();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GRADE_BEAM__DEPTH = eINSTANCE.getGradeBeam_Depth();

		/**
		 * The meta object literal for the '<em><b>Top</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GRADE_BEAM__TOP = eINSTANCE.getGradeBeam_Top();

		/**
		 * The meta object literal for the '<em><b>Mix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GRADE_BEAM__MIX = eINSTANCE.getGradeBeam_Mix();

		/**
		 * The meta object literal for the '<em><b>Reinforcement</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GRADE_BEAM__REINFORCEMENT = eINSTANCE.getGradeBeam_Reinforcement();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.BondBeamImpl <em>Bond Beam</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.BondBeamImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBondBeam()
		 * @generated
		 */
		EClass BOND_BEAM = eINSTANCE.getBondBeam();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOND_BEAM__WALLS = eINSTANCE.getBondBeam_Walls();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_BEAM__WIDTH = eINSTANCE.getBondBeam_Width();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_BEAM__DEPTH = eINSTANCE.getBondBeam_Depth();

		/**
		 * The meta object literal for the '<em><b>Bottom</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_BEAM__BOTTOM = eINSTANCE.getBondBeam_Bottom();

		/**
		 * The meta object literal for the '<em><b>Mix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOND_BEAM__MIX = eINSTANCE.getBondBeam_Mix();

		/**
		 * The meta object literal for the '<em><b>Reinforcement</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOND_BEAM__REINFORCEMENT = eINSTANCE.getBondBeam_Reinforcement();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.ReinforcementImpl <em>Reinforcement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.ReinforcementImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getReinforcement()
		 * @generated
		 */
		EClass REINFORCEMENT = eINSTANCE.getReinforcement();

		/**
		 * The meta object literal for the '<em><b>Bar</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REINFORCEMENT__BAR = eINSTANCE.getReinforcement_Bar();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REINFORCEMENT__LINES = eINSTANCE.getReinforcement_Lines();

		/**
		 * The meta object literal for the '<em><b>Stock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REINFORCEMENT__STOCK = eINSTANCE.getReinforcement_Stock();

		/**
		 * The meta object literal for the '<em><b>Lap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REINFORCEMENT__LAP = eINSTANCE.getReinforcement_Lap();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.FinishImpl <em>Finish</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.FinishImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getFinish()
		 * @generated
		 */
		EClass FINISH = eINSTANCE.getFinish();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FINISH__TYPE = eINSTANCE.getFinish_Type();

		/**
		 * The meta object literal for the '<em><b>Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__SIDE = eINSTANCE.getFinish_Side();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__FROM = eINSTANCE.getFinish_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FINISH__TO = eINSTANCE.getFinish_To();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.BondRuleImpl <em>Bond Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.BondRuleImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBondRule()
		 * @generated
		 */
		EClass BOND_RULE = eINSTANCE.getBondRule();

		/**
		 * The meta object literal for the '<em><b>Least Lap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__LEAST_LAP = eINSTANCE.getBondRule_LeastLap();

		/**
		 * The meta object literal for the '<em><b>Head Least</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__HEAD_LEAST = eINSTANCE.getBondRule_HeadLeast();

		/**
		 * The meta object literal for the '<em><b>Head Nominal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__HEAD_NOMINAL = eINSTANCE.getBondRule_HeadNominal();

		/**
		 * The meta object literal for the '<em><b>Head Most</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__HEAD_MOST = eINSTANCE.getBondRule_HeadMost();

		/**
		 * The meta object literal for the '<em><b>Bed Least</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__BED_LEAST = eINSTANCE.getBondRule_BedLeast();

		/**
		 * The meta object literal for the '<em><b>Bed Nominal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__BED_NOMINAL = eINSTANCE.getBondRule_BedNominal();

		/**
		 * The meta object literal for the '<em><b>Bed Most</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__BED_MOST = eINSTANCE.getBondRule_BedMost();

		/**
		 * The meta object literal for the '<em><b>Shortest Piece</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__SHORTEST_PIECE = eINSTANCE.getBondRule_ShortestPiece();

		/**
		 * The meta object literal for the '<em><b>Fat Joint Reserve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOND_RULE__FAT_JOINT_RESERVE = eINSTANCE.getBondRule_FatJointReserve();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.PinImpl <em>Pin</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.PinImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getPin()
		 * @generated
		 */
		EClass PIN = eINSTANCE.getPin();

		/**
		 * The meta object literal for the '<em><b>Course</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIN__COURSE = eINSTANCE.getPin_Course();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIN__AT = eINSTANCE.getPin_At();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.GaugePinImpl <em>Gauge Pin</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.GaugePinImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getGaugePin()
		 * @generated
		 */
		EClass GAUGE_PIN = eINSTANCE.getGaugePin();

		/**
		 * The meta object literal for the '<em><b>Joint</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GAUGE_PIN__JOINT = eINSTANCE.getGaugePin_Joint();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.impl.PiecePinImpl <em>Piece Pin</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.impl.PiecePinImpl
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getPiecePin()
		 * @generated
		 */
		EClass PIECE_PIN = eINSTANCE.getPiecePin();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE_PIN__LENGTH = eINSTANCE.getPiecePin_Length();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.Bond <em>Bond</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.Bond
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getBond()
		 * @generated
		 */
		EEnum BOND = eINSTANCE.getBond();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.OpeningKind <em>Opening Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.OpeningKind
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getOpeningKind()
		 * @generated
		 */
		EEnum OPENING_KIND = eINSTANCE.getOpeningKind();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.WallPlace <em>Wall Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.WallPlace
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWallPlace()
		 * @generated
		 */
		EEnum WALL_PLACE = eINSTANCE.getWallPlace();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.TeeTie <em>Tee Tie</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.TeeTie
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getTeeTie()
		 * @generated
		 */
		EEnum TEE_TIE = eINSTANCE.getTeeTie();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.building.WallSide <em>Wall Side</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.building.WallSide
		 * @see org.coursewright.model.building.impl.BuildingPackageImpl#getWallSide()
		 * @generated
		 */
		EEnum WALL_SIDE = eINSTANCE.getWallSide();

	}

} //BuildingPackage
