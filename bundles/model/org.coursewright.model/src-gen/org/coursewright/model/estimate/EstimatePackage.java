/**
 */
package org.coursewright.model.estimate;

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
 * Decisions about mixes in use, work, prices and scenarios.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.estimate.EstimateFactory
 * @model kind="package"
 * @generated
 */
public interface EstimatePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "estimate";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/estimate";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "estimate";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	EstimatePackage eINSTANCE = org.coursewright.model.estimate.impl.EstimatePackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.EstimateImpl <em>Estimate</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.EstimateImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getEstimate()
	 * @generated
	 */
	int ESTIMATE = 0;

	/**
	 * The feature id for the '<em><b>Mortar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__MORTAR = 0;

	/**
	 * The feature id for the '<em><b>First Mortar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__FIRST_MORTAR = 1;

	/**
	 * The feature id for the '<em><b>Bed Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__BED_FILL_SHARE = 2;

	/**
	 * The feature id for the '<em><b>Head Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__HEAD_FILL_SHARE = 3;

	/**
	 * The feature id for the '<em><b>Sealer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__SEALER = 4;

	/**
	 * The feature id for the '<em><b>Scaffold Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__SCAFFOLD_REACH = 5;

	/**
	 * The feature id for the '<em><b>Scaffold Lift</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__SCAFFOLD_LIFT = 6;

	/**
	 * The feature id for the '<em><b>Tie Courses</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__TIE_COURSES = 7;

	/**
	 * The feature id for the '<em><b>Ties Per Joint</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__TIES_PER_JOINT = 8;

	/**
	 * The feature id for the '<em><b>Material Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__MATERIAL_TAX_SHARE = 9;

	/**
	 * The feature id for the '<em><b>Labour Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__LABOUR_TAX_SHARE = 10;

	/**
	 * The feature id for the '<em><b>Plant Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__PLANT_TAX_SHARE = 11;

	/**
	 * The feature id for the '<em><b>Haulage Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__HAULAGE_TAX_SHARE = 12;

	/**
	 * The feature id for the '<em><b>Overhead Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__OVERHEAD_SHARE = 13;

	/**
	 * The feature id for the '<em><b>Contingency Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__CONTINGENCY_SHARE = 14;

	/**
	 * The feature id for the '<em><b>Uncertainties</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__UNCERTAINTIES = 15;

	/**
	 * The feature id for the '<em><b>Tasks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__TASKS = 16;

	/**
	 * The feature id for the '<em><b>Rates</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__RATES = 17;

	/**
	 * The feature id for the '<em><b>Scenarios</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE__SCENARIOS = 18;

	/**
	 * The number of structural features of the '<em>Estimate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE_FEATURE_COUNT = 19;

	/**
	 * The number of operations of the '<em>Estimate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ESTIMATE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.UncertaintyImpl <em>Uncertainty</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.UncertaintyImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUncertainty()
	 * @generated
	 */
	int UNCERTAINTY = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAINTY__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAINTY__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Correlation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAINTY__CORRELATION = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Uncertainty</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAINTY_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Uncertainty</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAINTY_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.UncertainImpl <em>Uncertain</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.UncertainImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUncertain()
	 * @generated
	 */
	int UNCERTAIN = 2;

	/**
	 * The feature id for the '<em><b>Low Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAIN__LOW_SHARE = 0;

	/**
	 * The feature id for the '<em><b>High Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAIN__HIGH_SHARE = 1;

	/**
	 * The feature id for the '<em><b>Moves With</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAIN__MOVES_WITH = 2;

	/**
	 * The number of structural features of the '<em>Uncertain</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAIN_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Uncertain</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNCERTAIN_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.RateImpl <em>Rate</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.RateImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getRate()
	 * @generated
	 */
	int RATE = 3;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Low Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__LOW_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>High Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__HIGH_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Moves With</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__MOVES_WITH = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__KIND = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__PRICE = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Unit Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__UNIT_CODE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>As Of</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__AS_OF = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__SOURCE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Trade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__TRADE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE__ELEMENT = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Rate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Rate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.HeightBandImpl <em>Height Band</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.HeightBandImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getHeightBand()
	 * @generated
	 */
	int HEIGHT_BAND = 4;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEIGHT_BAND__FROM = 0;

	/**
	 * The feature id for the '<em><b>Output Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEIGHT_BAND__OUTPUT_SHARE = 1;

	/**
	 * The number of structural features of the '<em>Height Band</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEIGHT_BAND_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Height Band</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HEIGHT_BAND_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.TaskImpl <em>Task</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.TaskImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getTask()
	 * @generated
	 */
	int TASK = 5;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Low Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__LOW_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>High Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__HIGH_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Moves With</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__MOVES_WITH = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__KIND = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Crew</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__CREW = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Plant</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__PLANT = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Output</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__OUTPUT = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Conditions Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__CONDITIONS_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Learning Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__LEARNING_SHARE = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Learning Theory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__LEARNING_THEORY = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Learning Repetition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__LEARNING_REPETITION = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Learning Plateau</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__LEARNING_PLATEAU = ProjectPackage.MARKED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Bands</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__BANDS = ProjectPackage.MARKED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK__SOURCE = ProjectPackage.MARKED_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Task</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 14;

	/**
	 * The number of operations of the '<em>Task</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TASK_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.ScenarioImpl <em>Scenario</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.ScenarioImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getScenario()
	 * @generated
	 */
	int SCENARIO = 6;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Specials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO__SPECIALS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wall Choices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO__WALL_CHOICES = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit Choices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO__UNIT_CHOICES = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Scenario</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Scenario</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCENARIO_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.WallChoiceImpl <em>Wall Choice</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.WallChoiceImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getWallChoice()
	 * @generated
	 */
	int WALL_CHOICE = 7;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_CHOICE__WALLS = 0;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_CHOICE__UNIT_TYPE = 1;

	/**
	 * The feature id for the '<em><b>Bond</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_CHOICE__BOND = 2;

	/**
	 * The number of structural features of the '<em>Wall Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_CHOICE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Wall Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_CHOICE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.impl.UnitChoiceImpl <em>Unit Choice</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.impl.UnitChoiceImpl
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUnitChoice()
	 * @generated
	 */
	int UNIT_CHOICE = 8;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_CHOICE__UNIT_TYPE = 0;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_CHOICE__SOURCE = 1;

	/**
	 * The number of structural features of the '<em>Unit Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_CHOICE_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Unit Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UNIT_CHOICE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.RateKind <em>Rate Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.RateKind
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getRateKind()
	 * @generated
	 */
	int RATE_KIND = 9;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.WorkKind <em>Work Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.WorkKind
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getWorkKind()
	 * @generated
	 */
	int WORK_KIND = 10;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.LearningTheory <em>Learning Theory</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.LearningTheory
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getLearningTheory()
	 * @generated
	 */
	int LEARNING_THEORY = 11;

	/**
	 * The meta object id for the '{@link org.coursewright.model.estimate.SpecialChoice <em>Special Choice</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.estimate.SpecialChoice
	 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getSpecialChoice()
	 * @generated
	 */
	int SPECIAL_CHOICE = 12;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Estimate <em>Estimate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Estimate</em>'.
	 * @see org.coursewright.model.estimate.Estimate
	 * @generated
	 */
	EClass getEstimate();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Estimate#getMortar <em>Mortar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mortar</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getMortar()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Mortar();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Estimate#getFirstMortar <em>First Mortar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>First Mortar</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getFirstMortar()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_FirstMortar();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getBedFillShare <em>Bed Fill Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bed Fill Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getBedFillShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_BedFillShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getHeadFillShare <em>Head Fill Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Fill Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getHeadFillShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_HeadFillShare();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Estimate#getSealer <em>Sealer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Sealer</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getSealer()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Sealer();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getScaffoldReach <em>Scaffold Reach</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scaffold Reach</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getScaffoldReach()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_ScaffoldReach();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getScaffoldLift <em>Scaffold Lift</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scaffold Lift</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getScaffoldLift()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_ScaffoldLift();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getTieCourses <em>Tie Courses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tie Courses</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getTieCourses()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_TieCourses();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getTiesPerJoint <em>Ties Per Joint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ties Per Joint</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getTiesPerJoint()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_TiesPerJoint();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getMaterialTaxShare <em>Material Tax Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material Tax Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getMaterialTaxShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_MaterialTaxShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getLabourTaxShare <em>Labour Tax Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labour Tax Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getLabourTaxShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_LabourTaxShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getPlantTaxShare <em>Plant Tax Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plant Tax Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getPlantTaxShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_PlantTaxShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getHaulageTaxShare <em>Haulage Tax Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Haulage Tax Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getHaulageTaxShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_HaulageTaxShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getOverheadShare <em>Overhead Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overhead Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getOverheadShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_OverheadShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Estimate#getContingencyShare <em>Contingency Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contingency Share</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getContingencyShare()
	 * @see #getEstimate()
	 * @generated
	 */
	EAttribute getEstimate_ContingencyShare();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Estimate#getUncertainties <em>Uncertainties</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Uncertainties</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getUncertainties()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Uncertainties();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Estimate#getTasks <em>Tasks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Tasks</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getTasks()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Tasks();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Estimate#getRates <em>Rates</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Rates</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getRates()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Rates();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Estimate#getScenarios <em>Scenarios</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Scenarios</em>'.
	 * @see org.coursewright.model.estimate.Estimate#getScenarios()
	 * @see #getEstimate()
	 * @generated
	 */
	EReference getEstimate_Scenarios();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Uncertainty <em>Uncertainty</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Uncertainty</em>'.
	 * @see org.coursewright.model.estimate.Uncertainty
	 * @generated
	 */
	EClass getUncertainty();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Uncertainty#getCorrelation <em>Correlation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Correlation</em>'.
	 * @see org.coursewright.model.estimate.Uncertainty#getCorrelation()
	 * @see #getUncertainty()
	 * @generated
	 */
	EAttribute getUncertainty_Correlation();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Uncertain <em>Uncertain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Uncertain</em>'.
	 * @see org.coursewright.model.estimate.Uncertain
	 * @generated
	 */
	EClass getUncertain();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Uncertain#getLowShare <em>Low Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low Share</em>'.
	 * @see org.coursewright.model.estimate.Uncertain#getLowShare()
	 * @see #getUncertain()
	 * @generated
	 */
	EAttribute getUncertain_LowShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Uncertain#getHighShare <em>High Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High Share</em>'.
	 * @see org.coursewright.model.estimate.Uncertain#getHighShare()
	 * @see #getUncertain()
	 * @generated
	 */
	EAttribute getUncertain_HighShare();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Uncertain#getMovesWith <em>Moves With</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Moves With</em>'.
	 * @see org.coursewright.model.estimate.Uncertain#getMovesWith()
	 * @see #getUncertain()
	 * @generated
	 */
	EReference getUncertain_MovesWith();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Rate <em>Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rate</em>'.
	 * @see org.coursewright.model.estimate.Rate
	 * @generated
	 */
	EClass getRate();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.coursewright.model.estimate.Rate#getKind()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.coursewright.model.estimate.Rate#getPrice()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_Price();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getUnitCode <em>Unit Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Code</em>'.
	 * @see org.coursewright.model.estimate.Rate#getUnitCode()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_UnitCode();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getAsOf <em>As Of</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>As Of</em>'.
	 * @see org.coursewright.model.estimate.Rate#getAsOf()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_AsOf();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.coursewright.model.estimate.Rate#getSource()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getTrade <em>Trade</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trade</em>'.
	 * @see org.coursewright.model.estimate.Rate#getTrade()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_Trade();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Rate#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Element</em>'.
	 * @see org.coursewright.model.estimate.Rate#getElement()
	 * @see #getRate()
	 * @generated
	 */
	EAttribute getRate_Element();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.HeightBand <em>Height Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Height Band</em>'.
	 * @see org.coursewright.model.estimate.HeightBand
	 * @generated
	 */
	EClass getHeightBand();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.HeightBand#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.coursewright.model.estimate.HeightBand#getFrom()
	 * @see #getHeightBand()
	 * @generated
	 */
	EAttribute getHeightBand_From();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.HeightBand#getOutputShare <em>Output Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Output Share</em>'.
	 * @see org.coursewright.model.estimate.HeightBand#getOutputShare()
	 * @see #getHeightBand()
	 * @generated
	 */
	EAttribute getHeightBand_OutputShare();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Task <em>Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Task</em>'.
	 * @see org.coursewright.model.estimate.Task
	 * @generated
	 */
	EClass getTask();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.coursewright.model.estimate.Task#getKind()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_Kind();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Task#getCrew <em>Crew</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Crew</em>'.
	 * @see org.coursewright.model.estimate.Task#getCrew()
	 * @see #getTask()
	 * @generated
	 */
	EReference getTask_Crew();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.Task#getPlant <em>Plant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Plant</em>'.
	 * @see org.coursewright.model.estimate.Task#getPlant()
	 * @see #getTask()
	 * @generated
	 */
	EReference getTask_Plant();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getOutput <em>Output</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Output</em>'.
	 * @see org.coursewright.model.estimate.Task#getOutput()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_Output();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getConditionsShare <em>Conditions Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conditions Share</em>'.
	 * @see org.coursewright.model.estimate.Task#getConditionsShare()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_ConditionsShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getLearningShare <em>Learning Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Learning Share</em>'.
	 * @see org.coursewright.model.estimate.Task#getLearningShare()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_LearningShare();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getLearningTheory <em>Learning Theory</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Learning Theory</em>'.
	 * @see org.coursewright.model.estimate.Task#getLearningTheory()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_LearningTheory();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getLearningRepetition <em>Learning Repetition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Learning Repetition</em>'.
	 * @see org.coursewright.model.estimate.Task#getLearningRepetition()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_LearningRepetition();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getLearningPlateau <em>Learning Plateau</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Learning Plateau</em>'.
	 * @see org.coursewright.model.estimate.Task#getLearningPlateau()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_LearningPlateau();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Task#getBands <em>Bands</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bands</em>'.
	 * @see org.coursewright.model.estimate.Task#getBands()
	 * @see #getTask()
	 * @generated
	 */
	EReference getTask_Bands();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Task#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.coursewright.model.estimate.Task#getSource()
	 * @see #getTask()
	 * @generated
	 */
	EAttribute getTask_Source();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.Scenario <em>Scenario</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Scenario</em>'.
	 * @see org.coursewright.model.estimate.Scenario
	 * @generated
	 */
	EClass getScenario();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.Scenario#getSpecials <em>Specials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specials</em>'.
	 * @see org.coursewright.model.estimate.Scenario#getSpecials()
	 * @see #getScenario()
	 * @generated
	 */
	EAttribute getScenario_Specials();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Scenario#getWallChoices <em>Wall Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Wall Choices</em>'.
	 * @see org.coursewright.model.estimate.Scenario#getWallChoices()
	 * @see #getScenario()
	 * @generated
	 */
	EReference getScenario_WallChoices();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.estimate.Scenario#getUnitChoices <em>Unit Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Unit Choices</em>'.
	 * @see org.coursewright.model.estimate.Scenario#getUnitChoices()
	 * @see #getScenario()
	 * @generated
	 */
	EReference getScenario_UnitChoices();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.WallChoice <em>Wall Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wall Choice</em>'.
	 * @see org.coursewright.model.estimate.WallChoice
	 * @generated
	 */
	EClass getWallChoice();

	/**
	 * Returns the meta object for the reference list '{@link org.coursewright.model.estimate.WallChoice#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Walls</em>'.
	 * @see org.coursewright.model.estimate.WallChoice#getWalls()
	 * @see #getWallChoice()
	 * @generated
	 */
	EReference getWallChoice_Walls();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.WallChoice#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.estimate.WallChoice#getUnitType()
	 * @see #getWallChoice()
	 * @generated
	 */
	EReference getWallChoice_UnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.WallChoice#getBond <em>Bond</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bond</em>'.
	 * @see org.coursewright.model.estimate.WallChoice#getBond()
	 * @see #getWallChoice()
	 * @generated
	 */
	EAttribute getWallChoice_Bond();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.estimate.UnitChoice <em>Unit Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Unit Choice</em>'.
	 * @see org.coursewright.model.estimate.UnitChoice
	 * @generated
	 */
	EClass getUnitChoice();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.estimate.UnitChoice#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.estimate.UnitChoice#getUnitType()
	 * @see #getUnitChoice()
	 * @generated
	 */
	EReference getUnitChoice_UnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.estimate.UnitChoice#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.coursewright.model.estimate.UnitChoice#getSource()
	 * @see #getUnitChoice()
	 * @generated
	 */
	EAttribute getUnitChoice_Source();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.estimate.RateKind <em>Rate Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Rate Kind</em>'.
	 * @see org.coursewright.model.estimate.RateKind
	 * @generated
	 */
	EEnum getRateKind();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.estimate.WorkKind <em>Work Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Work Kind</em>'.
	 * @see org.coursewright.model.estimate.WorkKind
	 * @generated
	 */
	EEnum getWorkKind();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.estimate.LearningTheory <em>Learning Theory</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Learning Theory</em>'.
	 * @see org.coursewright.model.estimate.LearningTheory
	 * @generated
	 */
	EEnum getLearningTheory();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.estimate.SpecialChoice <em>Special Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Special Choice</em>'.
	 * @see org.coursewright.model.estimate.SpecialChoice
	 * @generated
	 */
	EEnum getSpecialChoice();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	EstimateFactory getEstimateFactory();

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
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.EstimateImpl <em>Estimate</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.EstimateImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getEstimate()
		 * @generated
		 */
		EClass ESTIMATE = eINSTANCE.getEstimate();

		/**
		 * The meta object literal for the '<em><b>Mortar</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__MORTAR = eINSTANCE.getEstimate_Mortar();

		/**
		 * The meta object literal for the '<em><b>First Mortar</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__FIRST_MORTAR = eINSTANCE.getEstimate_FirstMortar();

		/**
		 * The meta object literal for the '<em><b>Bed Fill Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__BED_FILL_SHARE = eINSTANCE.getEstimate_BedFillShare();

		/**
		 * The meta object literal for the '<em><b>Head Fill Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__HEAD_FILL_SHARE = eINSTANCE.getEstimate_HeadFillShare();

		/**
		 * The meta object literal for the '<em><b>Sealer</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__SEALER = eINSTANCE.getEstimate_Sealer();

		/**
		 * The meta object literal for the '<em><b>Scaffold Reach</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__SCAFFOLD_REACH = eINSTANCE.getEstimate_ScaffoldReach();

		/**
		 * The meta object literal for the '<em><b>Scaffold Lift</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__SCAFFOLD_LIFT = eINSTANCE.getEstimate_ScaffoldLift();

		/**
		 * The meta object literal for the '<em><b>Tie Courses</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__TIE_COURSES = eINSTANCE.getEstimate_TieCourses();

		/**
		 * The meta object literal for the '<em><b>Ties Per Joint</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__TIES_PER_JOINT = eINSTANCE.getEstimate_TiesPerJoint();

		/**
		 * The meta object literal for the '<em><b>Material Tax Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__MATERIAL_TAX_SHARE = eINSTANCE.getEstimate_MaterialTaxShare();

		/**
		 * The meta object literal for the '<em><b>Labour Tax Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__LABOUR_TAX_SHARE = eINSTANCE.getEstimate_LabourTaxShare();

		/**
		 * The meta object literal for the '<em><b>Plant Tax Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__PLANT_TAX_SHARE = eINSTANCE.getEstimate_PlantTaxShare();

		/**
		 * The meta object literal for the '<em><b>Haulage Tax Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__HAULAGE_TAX_SHARE = eINSTANCE.getEstimate_HaulageTaxShare();

		/**
		 * The meta object literal for the '<em><b>Overhead Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__OVERHEAD_SHARE = eINSTANCE.getEstimate_OverheadShare();

		/**
		 * The meta object literal for the '<em><b>Contingency Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ESTIMATE__CONTINGENCY_SHARE = eINSTANCE.getEstimate_ContingencyShare();

		/**
		 * The meta object literal for the '<em><b>Uncertainties</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__UNCERTAINTIES = eINSTANCE.getEstimate_Uncertainties();

		/**
		 * The meta object literal for the '<em><b>Tasks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__TASKS = eINSTANCE.getEstimate_Tasks();

		/**
		 * The meta object literal for the '<em><b>Rates</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__RATES = eINSTANCE.getEstimate_Rates();

		/**
		 * The meta object literal for the '<em><b>Scenarios</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ESTIMATE__SCENARIOS = eINSTANCE.getEstimate_Scenarios();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.UncertaintyImpl <em>Uncertainty</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.UncertaintyImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUncertainty()
		 * @generated
		 */
		EClass UNCERTAINTY = eINSTANCE.getUncertainty();

		/**
		 * The meta object literal for the '<em><b>Correlation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNCERTAINTY__CORRELATION = eINSTANCE.getUncertainty_Correlation();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.UncertainImpl <em>Uncertain</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.UncertainImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUncertain()
		 * @generated
		 */
		EClass UNCERTAIN = eINSTANCE.getUncertain();

		/**
		 * The meta object literal for the '<em><b>Low Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNCERTAIN__LOW_SHARE = eINSTANCE.getUncertain_LowShare();

		/**
		 * The meta object literal for the '<em><b>High Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNCERTAIN__HIGH_SHARE = eINSTANCE.getUncertain_HighShare();

		/**
		 * The meta object literal for the '<em><b>Moves With</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UNCERTAIN__MOVES_WITH = eINSTANCE.getUncertain_MovesWith();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.RateImpl <em>Rate</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.RateImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getRate()
		 * @generated
		 */
		EClass RATE = eINSTANCE.getRate();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__KIND = eINSTANCE.getRate_Kind();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__PRICE = eINSTANCE.getRate_Price();

		/**
		 * The meta object literal for the '<em><b>Unit Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__UNIT_CODE = eINSTANCE.getRate_UnitCode();

		/**
		 * The meta object literal for the '<em><b>As Of</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__AS_OF = eINSTANCE.getRate_AsOf();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__SOURCE = eINSTANCE.getRate_Source();

		/**
		 * The meta object literal for the '<em><b>Trade</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__TRADE = eINSTANCE.getRate_Trade();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATE__ELEMENT = eINSTANCE.getRate_Element();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.HeightBandImpl <em>Height Band</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.HeightBandImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getHeightBand()
		 * @generated
		 */
		EClass HEIGHT_BAND = eINSTANCE.getHeightBand();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HEIGHT_BAND__FROM = eINSTANCE.getHeightBand_From();

		/**
		 * The meta object literal for the '<em><b>Output Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HEIGHT_BAND__OUTPUT_SHARE = eINSTANCE.getHeightBand_OutputShare();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.TaskImpl <em>Task</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.TaskImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getTask()
		 * @generated
		 */
		EClass TASK = eINSTANCE.getTask();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__KIND = eINSTANCE.getTask_Kind();

		/**
		 * The meta object literal for the '<em><b>Crew</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TASK__CREW = eINSTANCE.getTask_Crew();

		/**
		 * The meta object literal for the '<em><b>Plant</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TASK__PLANT = eINSTANCE.getTask_Plant();

		/**
		 * The meta object literal for the '<em><b>Output</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__OUTPUT = eINSTANCE.getTask_Output();

		/**
		 * The meta object literal for the '<em><b>Conditions Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__CONDITIONS_SHARE = eINSTANCE.getTask_ConditionsShare();

		/**
		 * The meta object literal for the '<em><b>Learning Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__LEARNING_SHARE = eINSTANCE.getTask_LearningShare();

		/**
		 * The meta object literal for the '<em><b>Learning Theory</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__LEARNING_THEORY = eINSTANCE.getTask_LearningTheory();

		/**
		 * The meta object literal for the '<em><b>Learning Repetition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__LEARNING_REPETITION = eINSTANCE.getTask_LearningRepetition();

		/**
		 * The meta object literal for the '<em><b>Learning Plateau</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__LEARNING_PLATEAU = eINSTANCE.getTask_LearningPlateau();

		/**
		 * The meta object literal for the '<em><b>Bands</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TASK__BANDS = eINSTANCE.getTask_Bands();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TASK__SOURCE = eINSTANCE.getTask_Source();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.ScenarioImpl <em>Scenario</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.ScenarioImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getScenario()
		 * @generated
		 */
		EClass SCENARIO = eINSTANCE.getScenario();

		/**
		 * The meta object literal for the '<em><b>Specials</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCENARIO__SPECIALS = eINSTANCE.getScenario_Specials();

		/**
		 * The meta object literal for the '<em><b>Wall Choices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SCENARIO__WALL_CHOICES = eINSTANCE.getScenario_WallChoices();

		/**
		 * The meta object literal for the '<em><b>Unit Choices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SCENARIO__UNIT_CHOICES = eINSTANCE.getScenario_UnitChoices();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.WallChoiceImpl <em>Wall Choice</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.WallChoiceImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getWallChoice()
		 * @generated
		 */
		EClass WALL_CHOICE = eINSTANCE.getWallChoice();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL_CHOICE__WALLS = eINSTANCE.getWallChoice_Walls();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL_CHOICE__UNIT_TYPE = eINSTANCE.getWallChoice_UnitType();

		/**
		 * The meta object literal for the '<em><b>Bond</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_CHOICE__BOND = eINSTANCE.getWallChoice_Bond();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.impl.UnitChoiceImpl <em>Unit Choice</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.impl.UnitChoiceImpl
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getUnitChoice()
		 * @generated
		 */
		EClass UNIT_CHOICE = eINSTANCE.getUnitChoice();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UNIT_CHOICE__UNIT_TYPE = eINSTANCE.getUnitChoice_UnitType();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UNIT_CHOICE__SOURCE = eINSTANCE.getUnitChoice_Source();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.RateKind <em>Rate Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.RateKind
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getRateKind()
		 * @generated
		 */
		EEnum RATE_KIND = eINSTANCE.getRateKind();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.WorkKind <em>Work Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.WorkKind
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getWorkKind()
		 * @generated
		 */
		EEnum WORK_KIND = eINSTANCE.getWorkKind();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.LearningTheory <em>Learning Theory</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.LearningTheory
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getLearningTheory()
		 * @generated
		 */
		EEnum LEARNING_THEORY = eINSTANCE.getLearningTheory();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.estimate.SpecialChoice <em>Special Choice</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.estimate.SpecialChoice
		 * @see org.coursewright.model.estimate.impl.EstimatePackageImpl#getSpecialChoice()
		 * @generated
		 */
		EEnum SPECIAL_CHOICE = eINSTANCE.getSpecialChoice();

	}

} //EstimatePackage
