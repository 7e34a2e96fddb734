/**
 */
package org.coursewright.model.catalogue.impl;

import org.coursewright.model.building.BuildingPackage;

import org.coursewright.model.building.impl.BuildingPackageImpl;

import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.CrewMember;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.FinishType;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixBasis;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.PlantKind;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.estimate.EstimatePackage;

import org.coursewright.model.estimate.impl.EstimatePackageImpl;

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
public class CataloguePackageImpl extends EPackageImpl implements CataloguePackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass catalogueEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass unitTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mixDesignEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mixPartEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass materialEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass coatingTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lintelTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass finishTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass crewTypeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass crewMemberEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass plantEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum unitSourceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mixBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum plantKindEEnum = null;

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
	 * @see org.coursewright.model.catalogue.CataloguePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private CataloguePackageImpl() {
		super(eNS_URI, CatalogueFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link CataloguePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static CataloguePackage init() {
		if (isInited) return (CataloguePackage)EPackage.Registry.INSTANCE.getEPackage(CataloguePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredCataloguePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		CataloguePackageImpl theCataloguePackage = registeredCataloguePackage instanceof CataloguePackageImpl ? (CataloguePackageImpl)registeredCataloguePackage : new CataloguePackageImpl();

		isInited = true;

		// Obtain or create and register interdependencies
		Object registeredPackage = EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);
		TypesPackageImpl theTypesPackage = (TypesPackageImpl)(registeredPackage instanceof TypesPackageImpl ? registeredPackage : TypesPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProjectPackage.eNS_URI);
		ProjectPackageImpl theProjectPackage = (ProjectPackageImpl)(registeredPackage instanceof ProjectPackageImpl ? registeredPackage : ProjectPackage.eINSTANCE);
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
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProposalPackage.eNS_URI);
		ProposalPackageImpl theProposalPackage = (ProposalPackageImpl)(registeredPackage instanceof ProposalPackageImpl ? registeredPackage : ProposalPackage.eINSTANCE);

		// Create package meta-data objects
		theCataloguePackage.createPackageContents();
		theTypesPackage.createPackageContents();
		theProjectPackage.createPackageContents();
		theBuildingPackage.createPackageContents();
		theEstimatePackage.createPackageContents();
		theProgrammePackage.createPackageContents();
		theSupplyPackage.createPackageContents();
		theRegisterPackage.createPackageContents();
		theProposalPackage.createPackageContents();

		// Initialize created meta-data
		theCataloguePackage.initializePackageContents();
		theTypesPackage.initializePackageContents();
		theProjectPackage.initializePackageContents();
		theBuildingPackage.initializePackageContents();
		theEstimatePackage.initializePackageContents();
		theProgrammePackage.initializePackageContents();
		theSupplyPackage.initializePackageContents();
		theRegisterPackage.initializePackageContents();
		theProposalPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theCataloguePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(CataloguePackage.eNS_URI, theCataloguePackage);
		return theCataloguePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCatalogue() {
		return catalogueEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_UnitTypes() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_MixDesigns() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_Materials() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_CoatingTypes() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_LintelTypes() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_FinishTypes() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_CrewTypes() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCatalogue_Plant() {
		return (EReference)catalogueEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUnitType() {
		return unitTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Length() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Width() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Height() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Mass() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_SpecialLengths() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_ShortestPiece() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_CutStep() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Kerf() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_Source() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_DaysMoist() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_DaysDrying() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnitType_BreakageShare() {
		return (EAttribute)unitTypeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUnitType_Mix() {
		return (EReference)unitTypeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMixDesign() {
		return mixDesignEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_Basis() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_YieldShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_WaterShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_StabiliserShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMixDesign_Parts() {
		return (EReference)mixDesignEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_AirShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_LeastWaterShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_MostWaterShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_WasteShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_DryDensity() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_LooseShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDesign_SpoiledShare() {
		return (EAttribute)mixDesignEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMixPart() {
		return mixPartEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMixPart_Material() {
		return (EReference)mixPartEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixPart_Parts() {
		return (EAttribute)mixPartEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMaterial() {
		return materialEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_Name() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_UnitCode() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_Density() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_Pack() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_WasteShare() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_CompactedDensity() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_ParticleDensity() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_MoistureShare() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_AbsorbedShare() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_BulkingShare() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_LargestParticle() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_Binder() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMaterial_DugOnSite() {
		return (EAttribute)materialEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCoatingType() {
		return coatingTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCoatingType_Material() {
		return (EReference)coatingTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCoatingType_Coverage() {
		return (EAttribute)coatingTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCoatingType_Coats() {
		return (EAttribute)coatingTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLintelType() {
		return lintelTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLintelType_Height() {
		return (EAttribute)lintelTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLintelType_Width() {
		return (EAttribute)lintelTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLintelType_Bearing() {
		return (EAttribute)lintelTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLintelType_Material() {
		return (EReference)lintelTypeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFinishType() {
		return finishTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFinishType_Mix() {
		return (EReference)finishTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinishType_Thickness() {
		return (EAttribute)finishTypeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFinishType_Coats() {
		return (EAttribute)finishTypeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCrewType() {
		return crewTypeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCrewType_Members() {
		return (EReference)crewTypeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCrewMember() {
		return crewMemberEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrewMember_Trade() {
		return (EAttribute)crewMemberEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrewMember_Count() {
		return (EAttribute)crewMemberEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrewMember_Rate() {
		return (EAttribute)crewMemberEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlant() {
		return plantEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlant_Kind() {
		return (EAttribute)plantEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlant_Output() {
		return (EAttribute)plantEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlant_Rate() {
		return (EAttribute)plantEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlant_LostShare() {
		return (EAttribute)plantEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlant_Capacity() {
		return (EAttribute)plantEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getUnitSource() {
		return unitSourceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMixBasis() {
		return mixBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPlantKind() {
		return plantKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CatalogueFactory getCatalogueFactory() {
		return (CatalogueFactory)getEFactoryInstance();
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
		catalogueEClass = createEClass(CATALOGUE);
		createEReference(catalogueEClass, CATALOGUE__UNIT_TYPES);
		createEReference(catalogueEClass, CATALOGUE__MIX_DESIGNS);
		createEReference(catalogueEClass, CATALOGUE__MATERIALS);
		createEReference(catalogueEClass, CATALOGUE__COATING_TYPES);
		createEReference(catalogueEClass, CATALOGUE__LINTEL_TYPES);
		createEReference(catalogueEClass, CATALOGUE__FINISH_TYPES);
		createEReference(catalogueEClass, CATALOGUE__CREW_TYPES);
		createEReference(catalogueEClass, CATALOGUE__PLANT);

		unitTypeEClass = createEClass(UNIT_TYPE);
		createEAttribute(unitTypeEClass, UNIT_TYPE__LENGTH);
		createEAttribute(unitTypeEClass, UNIT_TYPE__WIDTH);
		createEAttribute(unitTypeEClass, UNIT_TYPE__HEIGHT);
		createEAttribute(unitTypeEClass, UNIT_TYPE__MASS);
		createEAttribute(unitTypeEClass, UNIT_TYPE__SPECIAL_LENGTHS);
		createEAttribute(unitTypeEClass, UNIT_TYPE__SHORTEST_PIECE);
		createEAttribute(unitTypeEClass, UNIT_TYPE__CUT_STEP);
		createEAttribute(unitTypeEClass, UNIT_TYPE__KERF);
		createEAttribute(unitTypeEClass, UNIT_TYPE__SOURCE);
		createEAttribute(unitTypeEClass, UNIT_TYPE__DAYS_MOIST);
		createEAttribute(unitTypeEClass, UNIT_TYPE__DAYS_DRYING);
		createEAttribute(unitTypeEClass, UNIT_TYPE__BREAKAGE_SHARE);
		createEReference(unitTypeEClass, UNIT_TYPE__MIX);

		mixDesignEClass = createEClass(MIX_DESIGN);
		createEAttribute(mixDesignEClass, MIX_DESIGN__BASIS);
		createEAttribute(mixDesignEClass, MIX_DESIGN__YIELD_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__WATER_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__STABILISER_SHARE);
		createEReference(mixDesignEClass, MIX_DESIGN__PARTS);
		createEAttribute(mixDesignEClass, MIX_DESIGN__AIR_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__LEAST_WATER_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__MOST_WATER_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__WASTE_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__DRY_DENSITY);
		createEAttribute(mixDesignEClass, MIX_DESIGN__LOOSE_SHARE);
		createEAttribute(mixDesignEClass, MIX_DESIGN__SPOILED_SHARE);

		mixPartEClass = createEClass(MIX_PART);
		createEReference(mixPartEClass, MIX_PART__MATERIAL);
		createEAttribute(mixPartEClass, MIX_PART__PARTS);

		materialEClass = createEClass(MATERIAL);
		createEAttribute(materialEClass, MATERIAL__NAME);
		createEAttribute(materialEClass, MATERIAL__UNIT_CODE);
		createEAttribute(materialEClass, MATERIAL__DENSITY);
		createEAttribute(materialEClass, MATERIAL__PACK);
		createEAttribute(materialEClass, MATERIAL__WASTE_SHARE);
		createEAttribute(materialEClass, MATERIAL__COMPACTED_DENSITY);
		createEAttribute(materialEClass, MATERIAL__PARTICLE_DENSITY);
		createEAttribute(materialEClass, MATERIAL__MOISTURE_SHARE);
		createEAttribute(materialEClass, MATERIAL__ABSORBED_SHARE);
		createEAttribute(materialEClass, MATERIAL__BULKING_SHARE);
		createEAttribute(materialEClass, MATERIAL__LARGEST_PARTICLE);
		createEAttribute(materialEClass, MATERIAL__BINDER);
		createEAttribute(materialEClass, MATERIAL__DUG_ON_SITE);

		coatingTypeEClass = createEClass(COATING_TYPE);
		createEReference(coatingTypeEClass, COATING_TYPE__MATERIAL);
		createEAttribute(coatingTypeEClass, COATING_TYPE__COVERAGE);
		createEAttribute(coatingTypeEClass, COATING_TYPE__COATS);

		lintelTypeEClass = createEClass(LINTEL_TYPE);
		createEAttribute(lintelTypeEClass, LINTEL_TYPE__HEIGHT);
		createEAttribute(lintelTypeEClass, LINTEL_TYPE__WIDTH);
		createEAttribute(lintelTypeEClass, LINTEL_TYPE__BEARING);
		createEReference(lintelTypeEClass, LINTEL_TYPE__MATERIAL);

		finishTypeEClass = createEClass(FINISH_TYPE);
		createEReference(finishTypeEClass, FINISH_TYPE__MIX);
		createEAttribute(finishTypeEClass, FINISH_TYPE__THICKNESS);
		createEAttribute(finishTypeEClass, FINISH_TYPE__COATS);

		crewTypeEClass = createEClass(CREW_TYPE);
		createEReference(crewTypeEClass, CREW_TYPE__MEMBERS);

		crewMemberEClass = createEClass(CREW_MEMBER);
		createEAttribute(crewMemberEClass, CREW_MEMBER__TRADE);
		createEAttribute(crewMemberEClass, CREW_MEMBER__COUNT);
		createEAttribute(crewMemberEClass, CREW_MEMBER__RATE);

		plantEClass = createEClass(PLANT);
		createEAttribute(plantEClass, PLANT__KIND);
		createEAttribute(plantEClass, PLANT__OUTPUT);
		createEAttribute(plantEClass, PLANT__RATE);
		createEAttribute(plantEClass, PLANT__LOST_SHARE);
		createEAttribute(plantEClass, PLANT__CAPACITY);

		// Create enums
		unitSourceEEnum = createEEnum(UNIT_SOURCE);
		mixBasisEEnum = createEEnum(MIX_BASIS);
		plantKindEEnum = createEEnum(PLANT_KIND);
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

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		unitTypeEClass.getESuperTypes().add(theProjectPackage.getMarked());
		mixDesignEClass.getESuperTypes().add(theProjectPackage.getMarked());
		materialEClass.getESuperTypes().add(theProjectPackage.getMarked());
		coatingTypeEClass.getESuperTypes().add(theProjectPackage.getMarked());
		lintelTypeEClass.getESuperTypes().add(theProjectPackage.getMarked());
		finishTypeEClass.getESuperTypes().add(theProjectPackage.getMarked());
		crewTypeEClass.getESuperTypes().add(theProjectPackage.getMarked());
		plantEClass.getESuperTypes().add(theProjectPackage.getMarked());

		// Initialize classes, features, and operations; add parameters
		initEClass(catalogueEClass, Catalogue.class, "Catalogue", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getCatalogue_UnitTypes(), this.getUnitType(), null, "unitTypes", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_MixDesigns(), this.getMixDesign(), null, "mixDesigns", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_Materials(), this.getMaterial(), null, "materials", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_CoatingTypes(), this.getCoatingType(), null, "coatingTypes", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_LintelTypes(), this.getLintelType(), null, "lintelTypes", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_FinishTypes(), this.getFinishType(), null, "finishTypes", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_CrewTypes(), this.getCrewType(), null, "crewTypes", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCatalogue_Plant(), this.getPlant(), null, "plant", null, 0, -1, Catalogue.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(unitTypeEClass, UnitType.class, "UnitType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUnitType_Length(), theTypesPackage.getLength(), "length", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_Width(), theTypesPackage.getLength(), "width", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_Height(), theTypesPackage.getLength(), "height", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_Mass(), ecorePackage.getEBigDecimal(), "mass", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_SpecialLengths(), theTypesPackage.getLength(), "specialLengths", null, 0, -1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_ShortestPiece(), theTypesPackage.getLength(), "shortestPiece", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_CutStep(), theTypesPackage.getLength(), "cutStep", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_Kerf(), theTypesPackage.getLength(), "kerf", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_Source(), this.getUnitSource(), "source", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_DaysMoist(), ecorePackage.getEInt(), "daysMoist", "0", 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_DaysDrying(), ecorePackage.getEInt(), "daysDrying", "0", 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnitType_BreakageShare(), ecorePackage.getEBigDecimal(), "breakageShare", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUnitType_Mix(), this.getMixDesign(), null, "mix", null, 0, 1, UnitType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mixDesignEClass, MixDesign.class, "MixDesign", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMixDesign_Basis(), this.getMixBasis(), "basis", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_YieldShare(), ecorePackage.getEBigDecimal(), "yieldShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_WaterShare(), ecorePackage.getEBigDecimal(), "waterShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_StabiliserShare(), ecorePackage.getEBigDecimal(), "stabiliserShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMixDesign_Parts(), this.getMixPart(), null, "parts", null, 0, -1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_AirShare(), ecorePackage.getEBigDecimal(), "airShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_LeastWaterShare(), ecorePackage.getEBigDecimal(), "leastWaterShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_MostWaterShare(), ecorePackage.getEBigDecimal(), "mostWaterShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_WasteShare(), ecorePackage.getEBigDecimal(), "wasteShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_DryDensity(), ecorePackage.getEBigDecimal(), "dryDensity", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_LooseShare(), ecorePackage.getEBigDecimal(), "looseShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDesign_SpoiledShare(), ecorePackage.getEBigDecimal(), "spoiledShare", null, 0, 1, MixDesign.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mixPartEClass, MixPart.class, "MixPart", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMixPart_Material(), this.getMaterial(), null, "material", null, 0, 1, MixPart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixPart_Parts(), ecorePackage.getEBigDecimal(), "parts", null, 0, 1, MixPart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(materialEClass, Material.class, "Material", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMaterial_Name(), ecorePackage.getEString(), "name", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_UnitCode(), ecorePackage.getEString(), "unitCode", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_Density(), ecorePackage.getEBigDecimal(), "density", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_Pack(), theTypesPackage.getQuantity(), "pack", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_WasteShare(), ecorePackage.getEBigDecimal(), "wasteShare", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_CompactedDensity(), ecorePackage.getEBigDecimal(), "compactedDensity", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_ParticleDensity(), ecorePackage.getEBigDecimal(), "particleDensity", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_MoistureShare(), ecorePackage.getEBigDecimal(), "moistureShare", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_AbsorbedShare(), ecorePackage.getEBigDecimal(), "absorbedShare", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_BulkingShare(), ecorePackage.getEBigDecimal(), "bulkingShare", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_LargestParticle(), theTypesPackage.getLength(), "largestParticle", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_Binder(), ecorePackage.getEBoolean(), "binder", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMaterial_DugOnSite(), ecorePackage.getEBoolean(), "dugOnSite", null, 0, 1, Material.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(coatingTypeEClass, CoatingType.class, "CoatingType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getCoatingType_Material(), this.getMaterial(), null, "material", null, 0, 1, CoatingType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCoatingType_Coverage(), ecorePackage.getEBigDecimal(), "coverage", null, 0, 1, CoatingType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCoatingType_Coats(), ecorePackage.getEInt(), "coats", "1", 0, 1, CoatingType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lintelTypeEClass, LintelType.class, "LintelType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLintelType_Height(), theTypesPackage.getLength(), "height", null, 0, 1, LintelType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLintelType_Width(), theTypesPackage.getLength(), "width", null, 0, 1, LintelType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLintelType_Bearing(), theTypesPackage.getLength(), "bearing", null, 0, 1, LintelType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLintelType_Material(), this.getMaterial(), null, "material", null, 0, 1, LintelType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(finishTypeEClass, FinishType.class, "FinishType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFinishType_Mix(), this.getMixDesign(), null, "mix", null, 0, 1, FinishType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinishType_Thickness(), theTypesPackage.getLength(), "thickness", null, 0, 1, FinishType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFinishType_Coats(), ecorePackage.getEInt(), "coats", "1", 0, 1, FinishType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(crewTypeEClass, CrewType.class, "CrewType", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getCrewType_Members(), this.getCrewMember(), null, "members", null, 0, -1, CrewType.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(crewMemberEClass, CrewMember.class, "CrewMember", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCrewMember_Trade(), ecorePackage.getEString(), "trade", null, 0, 1, CrewMember.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrewMember_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, CrewMember.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrewMember_Rate(), theTypesPackage.getMoney(), "rate", null, 0, 1, CrewMember.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(plantEClass, Plant.class, "Plant", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlant_Kind(), this.getPlantKind(), "kind", null, 0, 1, Plant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlant_Output(), theTypesPackage.getQuantity(), "output", null, 0, 1, Plant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlant_Rate(), theTypesPackage.getMoney(), "rate", null, 0, 1, Plant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlant_LostShare(), ecorePackage.getEBigDecimal(), "lostShare", null, 0, 1, Plant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlant_Capacity(), theTypesPackage.getQuantity(), "capacity", null, 0, 1, Plant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(unitSourceEEnum, UnitSource.class, "UnitSource");
		addEEnumLiteral(unitSourceEEnum, UnitSource.BOUGHT);
		addEEnumLiteral(unitSourceEEnum, UnitSource.MADE_ON_SITE);

		initEEnum(mixBasisEEnum, MixBasis.class, "MixBasis");
		addEEnumLiteral(mixBasisEEnum, MixBasis.VOLUME);
		addEEnumLiteral(mixBasisEEnum, MixBasis.MASS);

		initEEnum(plantKindEEnum, PlantKind.class, "PlantKind");
		addEEnumLiteral(plantKindEEnum, PlantKind.PRESS);
		addEEnumLiteral(plantKindEEnum, PlantKind.MIXER);
		addEEnumLiteral(plantKindEEnum, PlantKind.SAW);
		addEEnumLiteral(plantKindEEnum, PlantKind.OTHER);

		// Create resource
		createResource(eNS_URI);
	}

} //CataloguePackageImpl
