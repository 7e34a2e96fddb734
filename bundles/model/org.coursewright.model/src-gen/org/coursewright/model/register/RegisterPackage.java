/**
 */
package org.coursewright.model.register;

import org.coursewright.model.project.ProjectPackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
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
 * Tests due and results.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.register.RegisterFactory
 * @model kind="package"
 * @generated
 */
public interface RegisterPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "register";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/register";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "register";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	RegisterPackage eINSTANCE = org.coursewright.model.register.impl.RegisterPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.RegisterImpl <em>Register</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.RegisterImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getRegister()
	 * @generated
	 */
	int REGISTER = 0;

	/**
	 * The feature id for the '<em><b>Plans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REGISTER__PLANS = 0;

	/**
	 * The feature id for the '<em><b>Samples</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REGISTER__SAMPLES = 1;

	/**
	 * The feature id for the '<em><b>Certificates</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REGISTER__CERTIFICATES = 2;

	/**
	 * The number of structural features of the '<em>Register</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REGISTER_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Register</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REGISTER_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.TestPlanImpl <em>Test Plan</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.TestPlanImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getTestPlan()
	 * @generated
	 */
	int TEST_PLAN = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__METHOD = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__PROPERTY = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Every</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__EVERY = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Specimens</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__SPECIMENS = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Age Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__AGE_DAYS = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__UNIT_TYPE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN__MIX = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Test Plan</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Test Plan</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TEST_PLAN_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.SampleImpl <em>Sample</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.SampleImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getSample()
	 * @generated
	 */
	int SAMPLE = 2;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Plan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__PLAN = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__TAKEN_ON = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__PLACE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Specimens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__SPECIMENS = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Sample</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Sample</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.SpecimenImpl <em>Specimen</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.SpecimenImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getSpecimen()
	 * @generated
	 */
	int SPECIMEN = 3;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__LENGTH = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__WIDTH = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__HEIGHT = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Results</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN__RESULTS = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Specimen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Specimen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPECIMEN_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.ResultImpl <em>Result</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.ResultImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getResult()
	 * @generated
	 */
	int RESULT = 4;

	/**
	 * The feature id for the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT__PROPERTY = 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT__VALUE = 1;

	/**
	 * The feature id for the '<em><b>Tested On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT__TESTED_ON = 2;

	/**
	 * The feature id for the '<em><b>Certificate</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT__CERTIFICATE = 3;

	/**
	 * The number of structural features of the '<em>Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESULT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.register.impl.CertificateImpl <em>Certificate</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.register.impl.CertificateImpl
	 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getCertificate()
	 * @generated
	 */
	int CERTIFICATE = 5;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE__LABORATORY = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Issued On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE__ISSUED_ON = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE__FILE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Certificate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Certificate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CERTIFICATE_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.Register <em>Register</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Register</em>'.
	 * @see org.coursewright.model.register.Register
	 * @generated
	 */
	EClass getRegister();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.register.Register#getPlans <em>Plans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Plans</em>'.
	 * @see org.coursewright.model.register.Register#getPlans()
	 * @see #getRegister()
	 * @generated
	 */
	EReference getRegister_Plans();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.register.Register#getSamples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Samples</em>'.
	 * @see org.coursewright.model.register.Register#getSamples()
	 * @see #getRegister()
	 * @generated
	 */
	EReference getRegister_Samples();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.register.Register#getCertificates <em>Certificates</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Certificates</em>'.
	 * @see org.coursewright.model.register.Register#getCertificates()
	 * @see #getRegister()
	 * @generated
	 */
	EReference getRegister_Certificates();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.TestPlan <em>Test Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Test Plan</em>'.
	 * @see org.coursewright.model.register.TestPlan
	 * @generated
	 */
	EClass getTestPlan();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.TestPlan#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see org.coursewright.model.register.TestPlan#getMethod()
	 * @see #getTestPlan()
	 * @generated
	 */
	EAttribute getTestPlan_Method();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.TestPlan#getProperty <em>Property</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Property</em>'.
	 * @see org.coursewright.model.register.TestPlan#getProperty()
	 * @see #getTestPlan()
	 * @generated
	 */
	EAttribute getTestPlan_Property();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.TestPlan#getEvery <em>Every</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Every</em>'.
	 * @see org.coursewright.model.register.TestPlan#getEvery()
	 * @see #getTestPlan()
	 * @generated
	 */
	EAttribute getTestPlan_Every();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.TestPlan#getSpecimens <em>Specimens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specimens</em>'.
	 * @see org.coursewright.model.register.TestPlan#getSpecimens()
	 * @see #getTestPlan()
	 * @generated
	 */
	EAttribute getTestPlan_Specimens();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.TestPlan#getAgeDays <em>Age Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age Days</em>'.
	 * @see org.coursewright.model.register.TestPlan#getAgeDays()
	 * @see #getTestPlan()
	 * @generated
	 */
	EAttribute getTestPlan_AgeDays();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.register.TestPlan#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.register.TestPlan#getUnitType()
	 * @see #getTestPlan()
	 * @generated
	 */
	EReference getTestPlan_UnitType();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.register.TestPlan#getMix <em>Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mix</em>'.
	 * @see org.coursewright.model.register.TestPlan#getMix()
	 * @see #getTestPlan()
	 * @generated
	 */
	EReference getTestPlan_Mix();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.Sample <em>Sample</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sample</em>'.
	 * @see org.coursewright.model.register.Sample
	 * @generated
	 */
	EClass getSample();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.register.Sample#getPlan <em>Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Plan</em>'.
	 * @see org.coursewright.model.register.Sample#getPlan()
	 * @see #getSample()
	 * @generated
	 */
	EReference getSample_Plan();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Sample#getTakenOn <em>Taken On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Taken On</em>'.
	 * @see org.coursewright.model.register.Sample#getTakenOn()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_TakenOn();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Sample#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see org.coursewright.model.register.Sample#getPlace()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_Place();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.register.Sample#getSpecimens <em>Specimens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Specimens</em>'.
	 * @see org.coursewright.model.register.Sample#getSpecimens()
	 * @see #getSample()
	 * @generated
	 */
	EReference getSample_Specimens();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.Specimen <em>Specimen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Specimen</em>'.
	 * @see org.coursewright.model.register.Specimen
	 * @generated
	 */
	EClass getSpecimen();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Specimen#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.coursewright.model.register.Specimen#getLength()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Specimen#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.coursewright.model.register.Specimen#getWidth()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Specimen#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.coursewright.model.register.Specimen#getHeight()
	 * @see #getSpecimen()
	 * @generated
	 */
	EAttribute getSpecimen_Height();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.register.Specimen#getResults <em>Results</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Results</em>'.
	 * @see org.coursewright.model.register.Specimen#getResults()
	 * @see #getSpecimen()
	 * @generated
	 */
	EReference getSpecimen_Results();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.Result <em>Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Result</em>'.
	 * @see org.coursewright.model.register.Result
	 * @generated
	 */
	EClass getResult();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Result#getProperty <em>Property</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Property</em>'.
	 * @see org.coursewright.model.register.Result#getProperty()
	 * @see #getResult()
	 * @generated
	 */
	EAttribute getResult_Property();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Result#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.coursewright.model.register.Result#getValue()
	 * @see #getResult()
	 * @generated
	 */
	EAttribute getResult_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Result#getTestedOn <em>Tested On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tested On</em>'.
	 * @see org.coursewright.model.register.Result#getTestedOn()
	 * @see #getResult()
	 * @generated
	 */
	EAttribute getResult_TestedOn();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.register.Result#getCertificate <em>Certificate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Certificate</em>'.
	 * @see org.coursewright.model.register.Result#getCertificate()
	 * @see #getResult()
	 * @generated
	 */
	EReference getResult_Certificate();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.register.Certificate <em>Certificate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Certificate</em>'.
	 * @see org.coursewright.model.register.Certificate
	 * @generated
	 */
	EClass getCertificate();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Certificate#getLaboratory <em>Laboratory</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Laboratory</em>'.
	 * @see org.coursewright.model.register.Certificate#getLaboratory()
	 * @see #getCertificate()
	 * @generated
	 */
	EAttribute getCertificate_Laboratory();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Certificate#getIssuedOn <em>Issued On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Issued On</em>'.
	 * @see org.coursewright.model.register.Certificate#getIssuedOn()
	 * @see #getCertificate()
	 * @generated
	 */
	EAttribute getCertificate_IssuedOn();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.register.Certificate#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see org.coursewright.model.register.Certificate#getFile()
	 * @see #getCertificate()
	 * @generated
	 */
	EAttribute getCertificate_File();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	RegisterFactory getRegisterFactory();

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
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.RegisterImpl <em>Register</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.RegisterImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getRegister()
		 * @generated
		 */
		EClass REGISTER = eINSTANCE.getRegister();

		/**
		 * The meta object literal for the '<em><b>Plans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REGISTER__PLANS = eINSTANCE.getRegister_Plans();

		/**
		 * The meta object literal for the '<em><b>Samples</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REGISTER__SAMPLES = eINSTANCE.getRegister_Samples();

		/**
		 * The meta object literal for the '<em><b>Certificates</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REGISTER__CERTIFICATES = eINSTANCE.getRegister_Certificates();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.TestPlanImpl <em>Test Plan</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.TestPlanImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getTestPlan()
		 * @generated
		 */
		EClass TEST_PLAN = eINSTANCE.getTestPlan();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEST_PLAN__METHOD = eINSTANCE.getTestPlan_Method();

		/**
		 * The meta object literal for the '<em><b>Property</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEST_PLAN__PROPERTY = eINSTANCE.getTestPlan_Property();

		/**
		 * The meta object literal for the '<em><b>Every</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEST_PLAN__EVERY = eINSTANCE.getTestPlan_Every();

		/**
		 * The meta object literal for the '<em><b>Specimens</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEST_PLAN__SPECIMENS = eINSTANCE.getTestPlan_Specimens();

		/**
		 * The meta object literal for the '<em><b>Age Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TEST_PLAN__AGE_DAYS = eINSTANCE.getTestPlan_AgeDays();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TEST_PLAN__UNIT_TYPE = eINSTANCE.getTestPlan_UnitType();

		/**
		 * The meta object literal for the '<em><b>Mix</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TEST_PLAN__MIX = eINSTANCE.getTestPlan_Mix();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.SampleImpl <em>Sample</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.SampleImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getSample()
		 * @generated
		 */
		EClass SAMPLE = eINSTANCE.getSample();

		/**
		 * The meta object literal for the '<em><b>Plan</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SAMPLE__PLAN = eINSTANCE.getSample_Plan();

		/**
		 * The meta object literal for the '<em><b>Taken On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__TAKEN_ON = eINSTANCE.getSample_TakenOn();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__PLACE = eINSTANCE.getSample_Place();

		/**
		 * The meta object literal for the '<em><b>Specimens</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SAMPLE__SPECIMENS = eINSTANCE.getSample_Specimens();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.SpecimenImpl <em>Specimen</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.SpecimenImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getSpecimen()
		 * @generated
		 */
		EClass SPECIMEN = eINSTANCE.getSpecimen();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__LENGTH = eINSTANCE.getSpecimen_Length();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__WIDTH = eINSTANCE.getSpecimen_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPECIMEN__HEIGHT = eINSTANCE.getSpecimen_Height();

		/**
		 * The meta object literal for the '<em><b>Results</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPECIMEN__RESULTS = eINSTANCE.getSpecimen_Results();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.ResultImpl <em>Result</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.ResultImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getResult()
		 * @generated
		 */
		EClass RESULT = eINSTANCE.getResult();

		/**
		 * The meta object literal for the '<em><b>Property</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESULT__PROPERTY = eINSTANCE.getResult_Property();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESULT__VALUE = eINSTANCE.getResult_Value();

		/**
		 * The meta object literal for the '<em><b>Tested On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESULT__TESTED_ON = eINSTANCE.getResult_TestedOn();

		/**
		 * The meta object literal for the '<em><b>Certificate</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RESULT__CERTIFICATE = eINSTANCE.getResult_Certificate();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.register.impl.CertificateImpl <em>Certificate</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.register.impl.CertificateImpl
		 * @see org.coursewright.model.register.impl.RegisterPackageImpl#getCertificate()
		 * @generated
		 */
		EClass CERTIFICATE = eINSTANCE.getCertificate();

		/**
		 * The meta object literal for the '<em><b>Laboratory</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CERTIFICATE__LABORATORY = eINSTANCE.getCertificate_Laboratory();

		/**
		 * The meta object literal for the '<em><b>Issued On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CERTIFICATE__ISSUED_ON = eINSTANCE.getCertificate_IssuedOn();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CERTIFICATE__FILE = eINSTANCE.getCertificate_File();

	}

} //RegisterPackage
