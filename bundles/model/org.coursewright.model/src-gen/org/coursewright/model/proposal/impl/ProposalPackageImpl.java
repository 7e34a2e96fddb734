/**
 */
package org.coursewright.model.proposal.impl;

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

import org.coursewright.model.proposal.Dimension;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalFactory;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.proposal.ProposalState;

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
public class ProposalPackageImpl extends EPackageImpl implements ProposalPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass proposalEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum proposalStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum dimensionEEnum = null;

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
	 * @see org.coursewright.model.proposal.ProposalPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private ProposalPackageImpl() {
		super(eNS_URI, ProposalFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link ProposalPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static ProposalPackage init() {
		if (isInited) return (ProposalPackage)EPackage.Registry.INSTANCE.getEPackage(ProposalPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredProposalPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		ProposalPackageImpl theProposalPackage = registeredProposalPackage instanceof ProposalPackageImpl ? (ProposalPackageImpl)registeredProposalPackage : new ProposalPackageImpl();

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
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(RegisterPackage.eNS_URI);
		RegisterPackageImpl theRegisterPackage = (RegisterPackageImpl)(registeredPackage instanceof RegisterPackageImpl ? registeredPackage : RegisterPackage.eINSTANCE);

		// Create package meta-data objects
		theProposalPackage.createPackageContents();
		theTypesPackage.createPackageContents();
		theProjectPackage.createPackageContents();
		theCataloguePackage.createPackageContents();
		theBuildingPackage.createPackageContents();
		theEstimatePackage.createPackageContents();
		theProgrammePackage.createPackageContents();
		theSupplyPackage.createPackageContents();
		theRegisterPackage.createPackageContents();

		// Initialize created meta-data
		theProposalPackage.initializePackageContents();
		theTypesPackage.initializePackageContents();
		theProjectPackage.initializePackageContents();
		theCataloguePackage.initializePackageContents();
		theBuildingPackage.initializePackageContents();
		theEstimatePackage.initializePackageContents();
		theProgrammePackage.initializePackageContents();
		theSupplyPackage.initializePackageContents();
		theRegisterPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theProposalPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(ProposalPackage.eNS_URI, theProposalPackage);
		return theProposalPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProposal() {
		return proposalEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProposal_Wall() {
		return (EReference)proposalEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProposal_Opening() {
		return (EReference)proposalEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_Dimension() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_From() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_To() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_Reason() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_State() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_Comment() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_By() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProposal_At() {
		return (EAttribute)proposalEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getProposalState() {
		return proposalStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDimension() {
		return dimensionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProposalFactory getProposalFactory() {
		return (ProposalFactory)getEFactoryInstance();
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
		proposalEClass = createEClass(PROPOSAL);
		createEReference(proposalEClass, PROPOSAL__WALL);
		createEReference(proposalEClass, PROPOSAL__OPENING);
		createEAttribute(proposalEClass, PROPOSAL__DIMENSION);
		createEAttribute(proposalEClass, PROPOSAL__FROM);
		createEAttribute(proposalEClass, PROPOSAL__TO);
		createEAttribute(proposalEClass, PROPOSAL__REASON);
		createEAttribute(proposalEClass, PROPOSAL__STATE);
		createEAttribute(proposalEClass, PROPOSAL__COMMENT);
		createEAttribute(proposalEClass, PROPOSAL__BY);
		createEAttribute(proposalEClass, PROPOSAL__AT);

		// Create enums
		proposalStateEEnum = createEEnum(PROPOSAL_STATE);
		dimensionEEnum = createEEnum(DIMENSION);
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
		BuildingPackage theBuildingPackage = (BuildingPackage)EPackage.Registry.INSTANCE.getEPackage(BuildingPackage.eNS_URI);
		TypesPackage theTypesPackage = (TypesPackage)EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		proposalEClass.getESuperTypes().add(theProjectPackage.getMarked());

		// Initialize classes, features, and operations; add parameters
		initEClass(proposalEClass, Proposal.class, "Proposal", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getProposal_Wall(), theBuildingPackage.getWall(), null, "wall", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getProposal_Opening(), theBuildingPackage.getOpening(), null, "opening", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_Dimension(), this.getDimension(), "dimension", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_From(), theTypesPackage.getLength(), "from", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_To(), theTypesPackage.getLength(), "to", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_State(), this.getProposalState(), "state", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_Comment(), ecorePackage.getEString(), "comment", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_By(), ecorePackage.getEString(), "by", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProposal_At(), theTypesPackage.getMoment(), "at", null, 0, 1, Proposal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(proposalStateEEnum, ProposalState.class, "ProposalState");
		addEEnumLiteral(proposalStateEEnum, ProposalState.OPEN);
		addEEnumLiteral(proposalStateEEnum, ProposalState.ACCEPTED);
		addEEnumLiteral(proposalStateEEnum, ProposalState.REFUSED);
		addEEnumLiteral(proposalStateEEnum, ProposalState.WITHDRAWN);

		initEEnum(dimensionEEnum, Dimension.class, "Dimension");
		addEEnumLiteral(dimensionEEnum, Dimension.OFFSET);
		addEEnumLiteral(dimensionEEnum, Dimension.WIDTH);
		addEEnumLiteral(dimensionEEnum, Dimension.LENGTH);

		// Create resource
		createResource(eNS_URI);
	}

} //ProposalPackageImpl
