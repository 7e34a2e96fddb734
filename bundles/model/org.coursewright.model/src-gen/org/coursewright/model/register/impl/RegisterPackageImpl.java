/**
 */
package org.coursewright.model.register.impl;

import org.coursewright.model.building.BuildingPackage;

import org.coursewright.model.building.impl.BuildingPackageImpl;

import org.coursewright.model.catalogue.CataloguePackage;

import org.coursewright.model.catalogue.impl.CataloguePackageImpl;

import org.coursewright.model.estimate.EstimatePackage;

import org.coursewright.model.estimate.impl.EstimatePackageImpl;

import org.coursewright.model.programme.ProgrammePackage;

import org.coursewright.model.programme.impl.ProgrammePackageImpl;

import org.coursewright.model.project.ProjectPackage;

import org.coursewright.model.project.impl.ProjectPackageImpl;

import org.coursewright.model.proposal.ProposalPackage;

import org.coursewright.model.proposal.impl.ProposalPackageImpl;

import org.coursewright.model.register.Certificate;
import org.coursewright.model.register.Register;
import org.coursewright.model.register.RegisterFactory;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.register.Result;
import org.coursewright.model.register.Sample;
import org.coursewright.model.register.Specimen;
import org.coursewright.model.register.TestPlan;

import org.coursewright.model.supply.SupplyPackage;

import org.coursewright.model.supply.impl.SupplyPackageImpl;

import org.coursewright.model.types.TypesPackage;

import org.coursewright.model.types.impl.TypesPackageImpl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class RegisterPackageImpl extends EPackageImpl implements RegisterPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass registerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass testPlanEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sampleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass specimenEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass resultEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass certificateEClass = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.coursewright.model.register.RegisterPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private RegisterPackageImpl() {
		super(eNS_URI, RegisterFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link RegisterPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static RegisterPackage init() {
		if (isInited) return (RegisterPackage)EPackage.Registry.INSTANCE.getEPackage(RegisterPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredRegisterPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		RegisterPackageImpl theRegisterPackage = registeredRegisterPackage instanceof RegisterPackageImpl ? (RegisterPackageImpl)registeredRegisterPackage : new RegisterPackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);
		TypesPackageImpl theTypesPackage = (TypesPackageImpl)(registeredPackage instanceof TypesPackageImpl ? registeredPackage : TypesPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProjectPackage.eNS_URI);
		ProjectPackageImpl theProjectPackage = (ProjectPackageImpl)(registeredPackage instanceof ProjectPackageImpl ? registeredPackage : ProjectPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(CataloguePackage.eNS_URI);
		CataloguePackageImpl theCataloguePackage = (CataloguePackageImpl)(registeredPackage instanceof CataloguePackageImpl ? registeredPackage : CataloguePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(BuildingPackage.eNS_URI);
		BuildingPackageImpl theBuildingPackage = (BuildingPackageImpl)(registeredPackage instanceof BuildingPackageImpl ? registeredPackage : BuildingPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(EstimatePackage.eNS_URI);
		EstimatePackageImpl theEstimatePackage = (EstimatePackageImpl)(registeredPackage instanceof EstimatePackageImpl ? registeredPackage : EstimatePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProgrammePackage.eNS_URI);
		ProgrammePackageImpl theProgrammePackage = (ProgrammePackageImpl)(registeredPackage instanceof ProgrammePackageImpl ? registeredPackage : ProgrammePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(SupplyPackage.eNS_URI);
		SupplyPackageImpl theSupplyPackage = (SupplyPackageImpl)(registeredPackage instanceof SupplyPackageImpl ? registeredPackage : SupplyPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProposalPackage.eNS_URI);
		ProposalPackageImpl theProposalPackage = (ProposalPackageImpl)(registeredPackage instanceof ProposalPackageImpl ? registeredPackage : ProposalPackage.eINSTANCE);

		// Create package meta-data objects
		theRegisterPackage.createPackageContents();
		theTypesPackage.createPackageContents();
		theProjectPackage.createPackageContents();
		theCataloguePackage.createPackageContents();
		theBuildingPackage.createPackageContents();
		theEstimatePackage.createPackageContents();
		theProgrammePackage.createPackageContents();
		theSupplyPackage.createPackageContents();
		theProposalPackage.createPackageContents();

		// Initialize created meta-data
		theRegisterPackage.initializePackageContents();
		theTypesPackage.initializePackageContents();
		theProjectPackage.initializePackageContents();
		theCataloguePackage.initializePackageContents();
		theBuildingPackage.initializePackageContents();
		theEstimatePackage.initializePackageContents();
		theProgrammePackage.initializePackageContents();
		theSupplyPackage.initializePackageContents();
		theProposalPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theRegisterPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(RegisterPackage.eNS_URI, theRegisterPackage);
		return theRegisterPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRegister() {
		return registerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRegister_Plans() {
		return (EReference)registerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRegister_Samples() {
		return (EReference)registerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRegister_Certificates() {
		return (EReference)registerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTestPlan() {
		return testPlanEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTestPlan_Method() {
		return (EAttribute)testPlanEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTestPlan_Property() {
		return (EAttribute)testPlanEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTestPlan_Every() {
		return (EAttribute)testPlanEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTestPlan_Specimens() {
		return (EAttribute)testPlanEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTestPlan_AgeDays() {
		return (EAttribute)testPlanEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTestPlan_UnitType() {
		return (EReference)testPlanEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTestPlan_Mix() {
		return (EReference)testPlanEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSample() {
		return sampleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSample_Plan() {
		return (EReference)sampleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSample_TakenOn() {
		return (EAttribute)sampleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSample_Place() {
		return (EAttribute)sampleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSample_Specimens() {
		return (EReference)sampleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSpecimen() {
		return specimenEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Length() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Width() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpecimen_Height() {
		return (EAttribute)specimenEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSpecimen_Results() {
		return (EReference)specimenEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getResult() {
		return resultEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getResult_Property() {
		return (EAttribute)resultEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getResult_Value() {
		return (EAttribute)resultEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getResult_TestedOn() {
		return (EAttribute)resultEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getResult_Certificate() {
		return (EReference)resultEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCertificate() {
		return certificateEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCertificate_Laboratory() {
		return (EAttribute)certificateEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCertificate_IssuedOn() {
		return (EAttribute)certificateEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCertificate_File() {
		return (EAttribute)certificateEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RegisterFactory getRegisterFactory() {
		return (RegisterFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		registerEClass = createEClass(REGISTER);
		createEReference(registerEClass, REGISTER__PLANS);
		createEReference(registerEClass, REGISTER__SAMPLES);
		createEReference(registerEClass, REGISTER__CERTIFICATES);

		testPlanEClass = createEClass(TEST_PLAN);
		createEAttribute(testPlanEClass, TEST_PLAN__METHOD);
		createEAttribute(testPlanEClass, TEST_PLAN__PROPERTY);
		createEAttribute(testPlanEClass, TEST_PLAN__EVERY);
		createEAttribute(testPlanEClass, TEST_PLAN__SPECIMENS);
		createEAttribute(testPlanEClass, TEST_PLAN__AGE_DAYS);
		createEReference(testPlanEClass, TEST_PLAN__UNIT_TYPE);
		createEReference(testPlanEClass, TEST_PLAN__MIX);

		sampleEClass = createEClass(SAMPLE);
		createEReference(sampleEClass, SAMPLE__PLAN);
		createEAttribute(sampleEClass, SAMPLE__TAKEN_ON);
		createEAttribute(sampleEClass, SAMPLE__PLACE);
		createEReference(sampleEClass, SAMPLE__SPECIMENS);

		specimenEClass = createEClass(SPECIMEN);
		createEAttribute(specimenEClass, SPECIMEN__LENGTH);
		createEAttribute(specimenEClass, SPECIMEN__WIDTH);
		createEAttribute(specimenEClass, SPECIMEN__HEIGHT);
		createEReference(specimenEClass, SPECIMEN__RESULTS);

		resultEClass = createEClass(RESULT);
		createEAttribute(resultEClass, RESULT__PROPERTY);
		createEAttribute(resultEClass, RESULT__VALUE);
		createEAttribute(resultEClass, RESULT__TESTED_ON);
		createEReference(resultEClass, RESULT__CERTIFICATE);

		certificateEClass = createEClass(CERTIFICATE);
		createEAttribute(certificateEClass, CERTIFICATE__LABORATORY);
		createEAttribute(certificateEClass, CERTIFICATE__ISSUED_ON);
		createEAttribute(certificateEClass, CERTIFICATE__FILE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Obtain other dependent packages
		ProjectPackage theProjectPackage = (ProjectPackage)EPackage.Registry.INSTANCE.getEPackage(ProjectPackage.eNS_URI);
		TypesPackage theTypesPackage = (TypesPackage)EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);
		CataloguePackage theCataloguePackage = (CataloguePackage)EPackage.Registry.INSTANCE.getEPackage(CataloguePackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		testPlanEClass.getESuperTypes().add(theProjectPackage.getMarked());
		sampleEClass.getESuperTypes().add(theProjectPackage.getMarked());
		specimenEClass.getESuperTypes().add(theProjectPackage.getMarked());
		certificateEClass.getESuperTypes().add(theProjectPackage.getMarked());

		// Initialize classes, features, and operations; add parameters
		initEClass(registerEClass, Register.class, "Register", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRegister_Plans(), this.getTestPlan(), null, "plans", null, 0, -1, Register.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRegister_Samples(), this.getSample(), null, "samples", null, 0, -1, Register.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRegister_Certificates(), this.getCertificate(), null, "certificates", null, 0, -1, Register.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(testPlanEClass, TestPlan.class, "TestPlan", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTestPlan_Method(), ecorePackage.getEString(), "method", null, 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTestPlan_Property(), ecorePackage.getEString(), "property", null, 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTestPlan_Every(), theTypesPackage.getQuantity(), "every", null, 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTestPlan_Specimens(), ecorePackage.getEInt(), "specimens", "1", 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTestPlan_AgeDays(), ecorePackage.getEInt(), "ageDays", "28", 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTestPlan_UnitType(), theCataloguePackage.getUnitType(), null, "unitType", null, 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTestPlan_Mix(), theCataloguePackage.getMixDesign(), null, "mix", null, 0, 1, TestPlan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sampleEClass, Sample.class, "Sample", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSample_Plan(), this.getTestPlan(), null, "plan", null, 0, 1, Sample.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSample_TakenOn(), theTypesPackage.getDate(), "takenOn", null, 0, 1, Sample.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSample_Place(), ecorePackage.getEString(), "place", null, 0, 1, Sample.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSample_Specimens(), this.getSpecimen(), null, "specimens", null, 0, -1, Sample.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(specimenEClass, Specimen.class, "Specimen", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSpecimen_Length(), theTypesPackage.getLength(), "length", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_Width(), theTypesPackage.getLength(), "width", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpecimen_Height(), theTypesPackage.getLength(), "height", null, 0, 1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSpecimen_Results(), this.getResult(), null, "results", null, 0, -1, Specimen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(resultEClass, Result.class, "Result", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getResult_Property(), ecorePackage.getEString(), "property", null, 0, 1, Result.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getResult_Value(), theTypesPackage.getQuantity(), "value", null, 0, 1, Result.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getResult_TestedOn(), theTypesPackage.getDate(), "testedOn", null, 0, 1, Result.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getResult_Certificate(), this.getCertificate(), null, "certificate", null, 0, 1, Result.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(certificateEClass, Certificate.class, "Certificate", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCertificate_Laboratory(), ecorePackage.getEString(), "laboratory", null, 0, 1, Certificate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCertificate_IssuedOn(), theTypesPackage.getDate(), "issuedOn", null, 0, 1, Certificate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCertificate_File(), ecorePackage.getEString(), "file", null, 0, 1, Certificate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Create resource
		createResource(eNS_URI);
	}

} //RegisterPackageImpl
