/**
 */
package org.coursewright.model.estimate.impl;

import org.coursewright.model.building.BuildingPackage;

import org.coursewright.model.building.impl.BuildingPackageImpl;

import org.coursewright.model.catalogue.CataloguePackage;

import org.coursewright.model.catalogue.impl.CataloguePackageImpl;

import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.HeightBand;
import org.coursewright.model.estimate.LearningTheory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.Uncertain;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.model.estimate.UnitChoice;
import org.coursewright.model.estimate.WallChoice;
import org.coursewright.model.estimate.WorkKind;

import org.coursewright.model.programme.ProgrammePackage;

import org.coursewright.model.programme.impl.ProgrammePackageImpl;

import org.coursewright.model.project.ProjectPackage;

import org.coursewright.model.project.impl.ProjectPackageImpl;

import org.coursewright.model.proposal.ProposalPackage;

import org.coursewright.model.proposal.impl.ProposalPackageImpl;

import org.coursewright.model.register.RegisterPackage;

import org.coursewright.model.register.impl.RegisterPackageImpl;

import org.coursewright.model.supply.SupplyPackage;

import org.coursewright.model.supply.impl.SupplyPackageImpl;

import org.coursewright.model.types.TypesPackage;

import org.coursewright.model.types.impl.TypesPackageImpl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class EstimatePackageImpl extends EPackageImpl implements EstimatePackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass estimateEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass uncertaintyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass uncertainEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rateEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass heightBandEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass taskEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass scenarioEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass wallChoiceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass unitChoiceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum rateKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum workKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum learningTheoryEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum specialChoiceEEnum = null;

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
	 * @see org.coursewright.model.estimate.EstimatePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private EstimatePackageImpl() {
		super(eNS_URI, EstimateFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link EstimatePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static EstimatePackage init() {
		if (isInited) return (EstimatePackage)EPackage.Registry.INSTANCE.getEPackage(EstimatePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredEstimatePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		EstimatePackageImpl theEstimatePackage = registeredEstimatePackage instanceof EstimatePackageImpl ? (EstimatePackageImpl)registeredEstimatePackage : new EstimatePackageImpl();

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
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProgrammePackage.eNS_URI);
		ProgrammePackageImpl theProgrammePackage = (ProgrammePackageImpl)(registeredPackage instanceof ProgrammePackageImpl ? registeredPackage : ProgrammePackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(SupplyPackage.eNS_URI);
		SupplyPackageImpl theSupplyPackage = (SupplyPackageImpl)(registeredPackage instanceof SupplyPackageImpl ? registeredPackage : SupplyPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(RegisterPackage.eNS_URI);
		RegisterPackageImpl theRegisterPackage = (RegisterPackageImpl)(registeredPackage instanceof RegisterPackageImpl ? registeredPackage : RegisterPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProposalPackage.eNS_URI);
		ProposalPackageImpl theProposalPackage = (ProposalPackageImpl)(registeredPackage instanceof ProposalPackageImpl ? registeredPackage : ProposalPackage.eINSTANCE);

		// Create package meta-data objects
		theEstimatePackage.createPackageContents();
		theTypesPackage.createPackageContents();
		theProjectPackage.createPackageContents();
		theCataloguePackage.createPackageContents();
		theBuildingPackage.createPackageContents();
		theProgrammePackage.createPackageContents();
		theSupplyPackage.createPackageContents();
		theRegisterPackage.createPackageContents();
		theProposalPackage.createPackageContents();

		// Initialize created meta-data
		theEstimatePackage.initializePackageContents();
		theTypesPackage.initializePackageContents();
		theProjectPackage.initializePackageContents();
		theCataloguePackage.initializePackageContents();
		theBuildingPackage.initializePackageContents();
		theProgrammePackage.initializePackageContents();
		theSupplyPackage.initializePackageContents();
		theRegisterPackage.initializePackageContents();
		theProposalPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theEstimatePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(EstimatePackage.eNS_URI, theEstimatePackage);
		return theEstimatePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getEstimate() {
		return estimateEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Mortar() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_FirstMortar() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_BedFillShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_HeadFillShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Sealer() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_ScaffoldReach() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_ScaffoldLift() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_TieCourses() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_TiesPerJoint() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_MaterialTaxShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_LabourTaxShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_PlantTaxShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_HaulageTaxShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_OverheadShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEstimate_ContingencyShare() {
		return (EAttribute)estimateEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Uncertainties() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Tasks() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Rates() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getEstimate_Scenarios() {
		return (EReference)estimateEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUncertainty() {
		return uncertaintyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUncertainty_Correlation() {
		return (EAttribute)uncertaintyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUncertain() {
		return uncertainEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUncertain_LowShare() {
		return (EAttribute)uncertainEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUncertain_HighShare() {
		return (EAttribute)uncertainEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUncertain_MovesWith() {
		return (EReference)uncertainEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRate() {
		return rateEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_Kind() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_Price() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_UnitCode() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_AsOf() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_Source() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_Trade() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRate_Element() {
		return (EAttribute)rateEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHeightBand() {
		return heightBandEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHeightBand_From() {
		return (EAttribute)heightBandEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHeightBand_OutputShare() {
		return (EAttribute)heightBandEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTask() {
		return taskEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_Kind() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTask_Crew() {
		return (EReference)taskEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTask_Plant() {
		return (EReference)taskEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_Output() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_ConditionsShare() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_LearningShare() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_LearningTheory() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_LearningRepetition() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_LearningPlateau() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTask_Bands() {
		return (EReference)taskEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTask_Source() {
		return (EAttribute)taskEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getScenario() {
		return scenarioEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScenario_Specials() {
		return (EAttribute)scenarioEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getScenario_WallChoices() {
		return (EReference)scenarioEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getScenario_UnitChoices() {
		return (EReference)scenarioEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWallChoice() {
		return wallChoiceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWallChoice_Walls() {
		return (EReference)wallChoiceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWallChoice_UnitType() {
		return (EReference)wallChoiceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWallChoice_Bond() {
		return (EAttribute)wallChoiceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUnitChoice() {
		return unitChoiceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUnitChoice_UnitType() {
		return (EReference)unitChoiceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitChoice_Source() {
		return (EAttribute)unitChoiceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRateKind() {
		return rateKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWorkKind() {
		return workKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLearningTheory() {
		return learningTheoryEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSpecialChoice() {
		return specialChoiceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EstimateFactory getEstimateFactory() {
		return (EstimateFactory)getEFactoryInstance();
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
		estimateEClass = createEClass(ESTIMATE);
		createEReference(estimateEClass, ESTIMATE__MORTAR);
		createEReference(estimateEClass, ESTIMATE__FIRST_MORTAR);
		createEAttribute(estimateEClass, ESTIMATE__BED_FILL_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__HEAD_FILL_SHARE);
		createEReference(estimateEClass, ESTIMATE__SEALER);
		createEAttribute(estimateEClass, ESTIMATE__SCAFFOLD_REACH);
		createEAttribute(estimateEClass, ESTIMATE__SCAFFOLD_LIFT);
		createEAttribute(estimateEClass, ESTIMATE__TIE_COURSES);
		createEAttribute(estimateEClass, ESTIMATE__TIES_PER_JOINT);
		createEAttribute(estimateEClass, ESTIMATE__MATERIAL_TAX_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__LABOUR_TAX_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__PLANT_TAX_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__HAULAGE_TAX_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__OVERHEAD_SHARE);
		createEAttribute(estimateEClass, ESTIMATE__CONTINGENCY_SHARE);
		createEReference(estimateEClass, ESTIMATE__UNCERTAINTIES);
		createEReference(estimateEClass, ESTIMATE__TASKS);
		createEReference(estimateEClass, ESTIMATE__RATES);
		createEReference(estimateEClass, ESTIMATE__SCENARIOS);

		uncertaintyEClass = createEClass(UNCERTAINTY);
		createEAttribute(uncertaintyEClass, UNCERTAINTY__CORRELATION);

		uncertainEClass = createEClass(UNCERTAIN);
		createEAttribute(uncertainEClass, UNCERTAIN__LOW_SHARE);
		createEAttribute(uncertainEClass, UNCERTAIN__HIGH_SHARE);
		createEReference(uncertainEClass, UNCERTAIN__MOVES_WITH);

		rateEClass = createEClass(RATE);
		createEAttribute(rateEClass, RATE__KIND);
		createEAttribute(rateEClass, RATE__PRICE);
		createEAttribute(rateEClass, RATE__UNIT_CODE);
		createEAttribute(rateEClass, RATE__AS_OF);
		createEAttribute(rateEClass, RATE__SOURCE);
		createEAttribute(rateEClass, RATE__TRADE);
		createEAttribute(rateEClass, RATE__ELEMENT);

		heightBandEClass = createEClass(HEIGHT_BAND);
		createEAttribute(heightBandEClass, HEIGHT_BAND__FROM);
		createEAttribute(heightBandEClass, HEIGHT_BAND__OUTPUT_SHARE);

		taskEClass = createEClass(TASK);
		createEAttribute(taskEClass, TASK__KIND);
		createEReference(taskEClass, TASK__CREW);
		createEReference(taskEClass, TASK__PLANT);
		createEAttribute(taskEClass, TASK__OUTPUT);
		createEAttribute(taskEClass, TASK__CONDITIONS_SHARE);
		createEAttribute(taskEClass, TASK__LEARNING_SHARE);
		createEAttribute(taskEClass, TASK__LEARNING_THEORY);
		createEAttribute(taskEClass, TASK__LEARNING_REPETITION);
		createEAttribute(taskEClass, TASK__LEARNING_PLATEAU);
		createEReference(taskEClass, TASK__BANDS);
		createEAttribute(taskEClass, TASK__SOURCE);

		scenarioEClass = createEClass(SCENARIO);
		createEAttribute(scenarioEClass, SCENARIO__SPECIALS);
		createEReference(scenarioEClass, SCENARIO__WALL_CHOICES);
		createEReference(scenarioEClass, SCENARIO__UNIT_CHOICES);

		wallChoiceEClass = createEClass(WALL_CHOICE);
		createEReference(wallChoiceEClass, WALL_CHOICE__WALLS);
		createEReference(wallChoiceEClass, WALL_CHOICE__UNIT_TYPE);
		createEAttribute(wallChoiceEClass, WALL_CHOICE__BOND);

		unitChoiceEClass = createEClass(UNIT_CHOICE);
		createEReference(unitChoiceEClass, UNIT_CHOICE__UNIT_TYPE);
		createEAttribute(unitChoiceEClass, UNIT_CHOICE__SOURCE);

		// Create enums
		rateKindEEnum = createEEnum(RATE_KIND);
		workKindEEnum = createEEnum(WORK_KIND);
		learningTheoryEEnum = createEEnum(LEARNING_THEORY);
		specialChoiceEEnum = createEEnum(SPECIAL_CHOICE);
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
		CataloguePackage theCataloguePackage = (CataloguePackage)EPackage.Registry.INSTANCE.getEPackage(CataloguePackage.eNS_URI);
		TypesPackage theTypesPackage = (TypesPackage)EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);
		ProjectPackage theProjectPackage = (ProjectPackage)EPackage.Registry.INSTANCE.getEPackage(ProjectPackage.eNS_URI);
		BuildingPackage theBuildingPackage = (BuildingPackage)EPackage.Registry.INSTANCE.getEPackage(BuildingPackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		uncertaintyEClass.getESuperTypes().add(theProjectPackage.getMarked());
		rateEClass.getESuperTypes().add(theProjectPackage.getMarked());
		rateEClass.getESuperTypes().add(this.getUncertain());
		taskEClass.getESuperTypes().add(theProjectPackage.getMarked());
		taskEClass.getESuperTypes().add(this.getUncertain());
		scenarioEClass.getESuperTypes().add(theProjectPackage.getMarked());

		// Initialize classes, features, and operations; add parameters
		initEClass(estimateEClass, Estimate.class, "Estimate", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getEstimate_Mortar(), theCataloguePackage.getMixDesign(), null, "mortar", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_FirstMortar(), theCataloguePackage.getMixDesign(), null, "firstMortar", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_BedFillShare(), ecorePackage.getEBigDecimal(), "bedFillShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_HeadFillShare(), ecorePackage.getEBigDecimal(), "headFillShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_Sealer(), theCataloguePackage.getCoatingType(), null, "sealer", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_ScaffoldReach(), theTypesPackage.getLength(), "scaffoldReach", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_ScaffoldLift(), theTypesPackage.getLength(), "scaffoldLift", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_TieCourses(), ecorePackage.getEInt(), "tieCourses", "0", 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_TiesPerJoint(), ecorePackage.getEInt(), "tiesPerJoint", "1", 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_MaterialTaxShare(), ecorePackage.getEBigDecimal(), "materialTaxShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_LabourTaxShare(), ecorePackage.getEBigDecimal(), "labourTaxShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_PlantTaxShare(), ecorePackage.getEBigDecimal(), "plantTaxShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_HaulageTaxShare(), ecorePackage.getEBigDecimal(), "haulageTaxShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_OverheadShare(), ecorePackage.getEBigDecimal(), "overheadShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEstimate_ContingencyShare(), ecorePackage.getEBigDecimal(), "contingencyShare", null, 0, 1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_Uncertainties(), this.getUncertainty(), null, "uncertainties", null, 0, -1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_Tasks(), this.getTask(), null, "tasks", null, 0, -1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_Rates(), this.getRate(), null, "rates", null, 0, -1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getEstimate_Scenarios(), this.getScenario(), null, "scenarios", null, 0, -1, Estimate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(uncertaintyEClass, Uncertainty.class, "Uncertainty", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUncertainty_Correlation(), ecorePackage.getEBigDecimal(), "correlation", null, 0, 1, Uncertainty.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(uncertainEClass, Uncertain.class, "Uncertain", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUncertain_LowShare(), ecorePackage.getEBigDecimal(), "lowShare", null, 0, 1, Uncertain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUncertain_HighShare(), ecorePackage.getEBigDecimal(), "highShare", null, 0, 1, Uncertain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUncertain_MovesWith(), this.getUncertainty(), null, "movesWith", null, 0, 1, Uncertain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rateEClass, Rate.class, "Rate", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRate_Kind(), this.getRateKind(), "kind", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_Price(), theTypesPackage.getMoney(), "price", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_UnitCode(), ecorePackage.getEString(), "unitCode", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_AsOf(), theTypesPackage.getDate(), "asOf", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_Source(), ecorePackage.getEString(), "source", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_Trade(), ecorePackage.getEString(), "trade", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRate_Element(), ecorePackage.getEString(), "element", null, 0, 1, Rate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(heightBandEClass, HeightBand.class, "HeightBand", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHeightBand_From(), theTypesPackage.getLength(), "from", "0 mm", 0, 1, HeightBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHeightBand_OutputShare(), ecorePackage.getEBigDecimal(), "outputShare", null, 0, 1, HeightBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(taskEClass, Task.class, "Task", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTask_Kind(), this.getWorkKind(), "kind", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTask_Crew(), theCataloguePackage.getCrewType(), null, "crew", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTask_Plant(), theCataloguePackage.getPlant(), null, "plant", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_Output(), theTypesPackage.getQuantity(), "output", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_ConditionsShare(), ecorePackage.getEBigDecimal(), "conditionsShare", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_LearningShare(), ecorePackage.getEBigDecimal(), "learningShare", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_LearningTheory(), this.getLearningTheory(), "learningTheory", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_LearningRepetition(), ecorePackage.getEBigDecimal(), "learningRepetition", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_LearningPlateau(), ecorePackage.getEInt(), "learningPlateau", "64", 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTask_Bands(), this.getHeightBand(), null, "bands", null, 0, -1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTask_Source(), ecorePackage.getEString(), "source", null, 0, 1, Task.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(scenarioEClass, Scenario.class, "Scenario", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getScenario_Specials(), this.getSpecialChoice(), "specials", null, 0, 1, Scenario.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getScenario_WallChoices(), this.getWallChoice(), null, "wallChoices", null, 0, -1, Scenario.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getScenario_UnitChoices(), this.getUnitChoice(), null, "unitChoices", null, 0, -1, Scenario.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(wallChoiceEClass, WallChoice.class, "WallChoice", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getWallChoice_Walls(), theBuildingPackage.getWall(), null, "walls", null, 0, -1, WallChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWallChoice_UnitType(), theCataloguePackage.getUnitType(), null, "unitType", null, 0, 1, WallChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWallChoice_Bond(), theBuildingPackage.getBond(), "bond", null, 0, 1, WallChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(unitChoiceEClass, UnitChoice.class, "UnitChoice", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getUnitChoice_UnitType(), theCataloguePackage.getUnitType(), null, "unitType", null, 0, 1, UnitChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitChoice_Source(), theCataloguePackage.getUnitSource(), "source", null, 0, 1, UnitChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(rateKindEEnum, RateKind.class, "RateKind");
		addEEnumLiteral(rateKindEEnum, RateKind.MATERIAL);
		addEEnumLiteral(rateKindEEnum, RateKind.LABOUR);
		addEEnumLiteral(rateKindEEnum, RateKind.PLANT);
		addEEnumLiteral(rateKindEEnum, RateKind.HAULAGE);

		initEEnum(workKindEEnum, WorkKind.class, "WorkKind");
		addEEnumLiteral(workKindEEnum, WorkKind.LAY);
		addEEnumLiteral(workKindEEnum, WorkKind.CUT);
		addEEnumLiteral(workKindEEnum, WorkKind.PRESS);
		addEEnumLiteral(workKindEEnum, WorkKind.MIX);
		addEEnumLiteral(workKindEEnum, WorkKind.PLASTER);
		addEEnumLiteral(workKindEEnum, WorkKind.SEAL);
		addEEnumLiteral(workKindEEnum, WorkKind.SET_LINTEL);
		addEEnumLiteral(workKindEEnum, WorkKind.CAST_BEAM);
		addEEnumLiteral(workKindEEnum, WorkKind.SCAFFOLD);

		initEEnum(learningTheoryEEnum, LearningTheory.class, "LearningTheory");
		addEEnumLiteral(learningTheoryEEnum, LearningTheory.UNIT);
		addEEnumLiteral(learningTheoryEEnum, LearningTheory.CUMULATIVE_AVERAGE);

		initEEnum(specialChoiceEEnum, SpecialChoice.class, "SpecialChoice");
		addEEnumLiteral(specialChoiceEEnum, SpecialChoice.AS_STOCKED);
		addEEnumLiteral(specialChoiceEEnum, SpecialChoice.CUT);

		// Create resource
		createResource(eNS_URI);
	}

} //EstimatePackageImpl
