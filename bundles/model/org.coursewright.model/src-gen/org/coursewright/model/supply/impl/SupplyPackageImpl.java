/**
 */
package org.coursewright.model.supply.impl;

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

import org.coursewright.model.register.RegisterPackage;

import org.coursewright.model.register.impl.RegisterPackageImpl;

import org.coursewright.model.supply.Delivery;
import org.coursewright.model.supply.DeliveryLine;
import org.coursewright.model.supply.Offer;
import org.coursewright.model.supply.Order;
import org.coursewright.model.supply.OrderLine;
import org.coursewright.model.supply.PriceBreak;
import org.coursewright.model.supply.StockCount;
import org.coursewright.model.supply.Supplier;
import org.coursewright.model.supply.Supply;
import org.coursewright.model.supply.SupplyFactory;
import org.coursewright.model.supply.SupplyPackage;

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
public class SupplyPackageImpl extends EPackageImpl implements SupplyPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass supplyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass supplierEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass offerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass priceBreakEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass orderEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass orderLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deliveryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deliveryLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockCountEClass = null;

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
	 * @see org.coursewright.model.supply.SupplyPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private SupplyPackageImpl() {
		super(eNS_URI, SupplyFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link SupplyPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static SupplyPackage init() {
		if (isInited) return (SupplyPackage)EPackage.Registry.INSTANCE.getEPackage(SupplyPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredSupplyPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		SupplyPackageImpl theSupplyPackage = registeredSupplyPackage instanceof SupplyPackageImpl ? (SupplyPackageImpl)registeredSupplyPackage : new SupplyPackageImpl();

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
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(RegisterPackage.eNS_URI);
		RegisterPackageImpl theRegisterPackage = (RegisterPackageImpl)(registeredPackage instanceof RegisterPackageImpl ? registeredPackage : RegisterPackage.eINSTANCE);
		registeredPackage = EPackage.Registry.INSTANCE.getEPackage(ProposalPackage.eNS_URI);
		ProposalPackageImpl theProposalPackage = (ProposalPackageImpl)(registeredPackage instanceof ProposalPackageImpl ? registeredPackage : ProposalPackage.eINSTANCE);

		// Create package meta-data objects
		theSupplyPackage.createPackageContents();
		theTypesPackage.createPackageContents();
		theProjectPackage.createPackageContents();
		theCataloguePackage.createPackageContents();
		theBuildingPackage.createPackageContents();
		theEstimatePackage.createPackageContents();
		theProgrammePackage.createPackageContents();
		theRegisterPackage.createPackageContents();
		theProposalPackage.createPackageContents();

		// Initialize created meta-data
		theSupplyPackage.initializePackageContents();
		theTypesPackage.initializePackageContents();
		theProjectPackage.initializePackageContents();
		theCataloguePackage.initializePackageContents();
		theBuildingPackage.initializePackageContents();
		theEstimatePackage.initializePackageContents();
		theProgrammePackage.initializePackageContents();
		theRegisterPackage.initializePackageContents();
		theProposalPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theSupplyPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(SupplyPackage.eNS_URI, theSupplyPackage);
		return theSupplyPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSupply() {
		return supplyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupply_Suppliers() {
		return (EReference)supplyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupply_Offers() {
		return (EReference)supplyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupply_Orders() {
		return (EReference)supplyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupply_Deliveries() {
		return (EReference)supplyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupply_StockCounts() {
		return (EReference)supplyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSupplier() {
		return supplierEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplier_Name() {
		return (EAttribute)supplierEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplier_Contact() {
		return (EAttribute)supplierEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOffer() {
		return offerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOffer_Supplier() {
		return (EReference)offerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOffer_Material() {
		return (EReference)offerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOffer_UnitType() {
		return (EReference)offerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_LeastLot() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_LoadSize() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_Haulage() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_LeadDays() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_QuotedOn() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOffer_ValidUntil() {
		return (EAttribute)offerEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOffer_PriceBreaks() {
		return (EReference)offerEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPriceBreak() {
		return priceBreakEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBreak_From() {
		return (EAttribute)priceBreakEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBreak_Price() {
		return (EAttribute)priceBreakEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOrder() {
		return orderEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOrder_Supplier() {
		return (EReference)orderEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOrder_PlacedOn() {
		return (EAttribute)orderEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOrder_DueOn() {
		return (EAttribute)orderEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOrder_Lines() {
		return (EReference)orderEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOrderLine() {
		return orderLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOrderLine_Offer() {
		return (EReference)orderLineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOrderLine_Quantity() {
		return (EAttribute)orderLineEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDelivery() {
		return deliveryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDelivery_Order() {
		return (EReference)deliveryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDelivery_ArrivedOn() {
		return (EAttribute)deliveryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDelivery_Lines() {
		return (EReference)deliveryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDeliveryLine() {
		return deliveryLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeliveryLine_Line() {
		return (EReference)deliveryLineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeliveryLine_Quantity() {
		return (EAttribute)deliveryLineEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeliveryLine_Rejected() {
		return (EAttribute)deliveryLineEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockCount() {
		return stockCountEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStockCount_Material() {
		return (EReference)stockCountEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStockCount_UnitType() {
		return (EReference)stockCountEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockCount_Quantity() {
		return (EAttribute)stockCountEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockCount_CountedOn() {
		return (EAttribute)stockCountEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SupplyFactory getSupplyFactory() {
		return (SupplyFactory)getEFactoryInstance();
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
		supplyEClass = createEClass(SUPPLY);
		createEReference(supplyEClass, SUPPLY__SUPPLIERS);
		createEReference(supplyEClass, SUPPLY__OFFERS);
		createEReference(supplyEClass, SUPPLY__ORDERS);
		createEReference(supplyEClass, SUPPLY__DELIVERIES);
		createEReference(supplyEClass, SUPPLY__STOCK_COUNTS);

		supplierEClass = createEClass(SUPPLIER);
		createEAttribute(supplierEClass, SUPPLIER__NAME);
		createEAttribute(supplierEClass, SUPPLIER__CONTACT);

		offerEClass = createEClass(OFFER);
		createEReference(offerEClass, OFFER__SUPPLIER);
		createEReference(offerEClass, OFFER__MATERIAL);
		createEReference(offerEClass, OFFER__UNIT_TYPE);
		createEAttribute(offerEClass, OFFER__LEAST_LOT);
		createEAttribute(offerEClass, OFFER__LOAD_SIZE);
		createEAttribute(offerEClass, OFFER__HAULAGE);
		createEAttribute(offerEClass, OFFER__LEAD_DAYS);
		createEAttribute(offerEClass, OFFER__QUOTED_ON);
		createEAttribute(offerEClass, OFFER__VALID_UNTIL);
		createEReference(offerEClass, OFFER__PRICE_BREAKS);

		priceBreakEClass = createEClass(PRICE_BREAK);
		createEAttribute(priceBreakEClass, PRICE_BREAK__FROM);
		createEAttribute(priceBreakEClass, PRICE_BREAK__PRICE);

		orderEClass = createEClass(ORDER);
		createEReference(orderEClass, ORDER__SUPPLIER);
		createEAttribute(orderEClass, ORDER__PLACED_ON);
		createEAttribute(orderEClass, ORDER__DUE_ON);
		createEReference(orderEClass, ORDER__LINES);

		orderLineEClass = createEClass(ORDER_LINE);
		createEReference(orderLineEClass, ORDER_LINE__OFFER);
		createEAttribute(orderLineEClass, ORDER_LINE__QUANTITY);

		deliveryEClass = createEClass(DELIVERY);
		createEReference(deliveryEClass, DELIVERY__ORDER);
		createEAttribute(deliveryEClass, DELIVERY__ARRIVED_ON);
		createEReference(deliveryEClass, DELIVERY__LINES);

		deliveryLineEClass = createEClass(DELIVERY_LINE);
		createEReference(deliveryLineEClass, DELIVERY_LINE__LINE);
		createEAttribute(deliveryLineEClass, DELIVERY_LINE__QUANTITY);
		createEAttribute(deliveryLineEClass, DELIVERY_LINE__REJECTED);

		stockCountEClass = createEClass(STOCK_COUNT);
		createEReference(stockCountEClass, STOCK_COUNT__MATERIAL);
		createEReference(stockCountEClass, STOCK_COUNT__UNIT_TYPE);
		createEAttribute(stockCountEClass, STOCK_COUNT__QUANTITY);
		createEAttribute(stockCountEClass, STOCK_COUNT__COUNTED_ON);
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
		CataloguePackage theCataloguePackage = (CataloguePackage)EPackage.Registry.INSTANCE.getEPackage(CataloguePackage.eNS_URI);
		TypesPackage theTypesPackage = (TypesPackage)EPackage.Registry.INSTANCE.getEPackage(TypesPackage.eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		supplierEClass.getESuperTypes().add(theProjectPackage.getMarked());
		offerEClass.getESuperTypes().add(theProjectPackage.getMarked());
		orderEClass.getESuperTypes().add(theProjectPackage.getMarked());
		deliveryEClass.getESuperTypes().add(theProjectPackage.getMarked());

		// Initialize classes, features, and operations; add parameters
		initEClass(supplyEClass, Supply.class, "Supply", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSupply_Suppliers(), this.getSupplier(), null, "suppliers", null, 0, -1, Supply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupply_Offers(), this.getOffer(), null, "offers", null, 0, -1, Supply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupply_Orders(), this.getOrder(), null, "orders", null, 0, -1, Supply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupply_Deliveries(), this.getDelivery(), null, "deliveries", null, 0, -1, Supply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupply_StockCounts(), this.getStockCount(), null, "stockCounts", null, 0, -1, Supply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(supplierEClass, Supplier.class, "Supplier", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSupplier_Name(), ecorePackage.getEString(), "name", null, 0, 1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSupplier_Contact(), ecorePackage.getEString(), "contact", null, 0, 1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(offerEClass, Offer.class, "Offer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getOffer_Supplier(), this.getSupplier(), null, "supplier", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getOffer_Material(), theCataloguePackage.getMaterial(), null, "material", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getOffer_UnitType(), theCataloguePackage.getUnitType(), null, "unitType", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_LeastLot(), theTypesPackage.getQuantity(), "leastLot", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_LoadSize(), theTypesPackage.getQuantity(), "loadSize", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_Haulage(), theTypesPackage.getMoney(), "haulage", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_LeadDays(), ecorePackage.getEInt(), "leadDays", "0", 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_QuotedOn(), theTypesPackage.getDate(), "quotedOn", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOffer_ValidUntil(), theTypesPackage.getDate(), "validUntil", null, 0, 1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getOffer_PriceBreaks(), this.getPriceBreak(), null, "priceBreaks", null, 0, -1, Offer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(priceBreakEClass, PriceBreak.class, "PriceBreak", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPriceBreak_From(), theTypesPackage.getQuantity(), "from", null, 0, 1, PriceBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBreak_Price(), theTypesPackage.getMoney(), "price", null, 0, 1, PriceBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(orderEClass, Order.class, "Order", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getOrder_Supplier(), this.getSupplier(), null, "supplier", null, 0, 1, Order.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOrder_PlacedOn(), theTypesPackage.getDate(), "placedOn", null, 0, 1, Order.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOrder_DueOn(), theTypesPackage.getDate(), "dueOn", null, 0, 1, Order.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getOrder_Lines(), this.getOrderLine(), null, "lines", null, 0, -1, Order.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(orderLineEClass, OrderLine.class, "OrderLine", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getOrderLine_Offer(), this.getOffer(), null, "offer", null, 0, 1, OrderLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOrderLine_Quantity(), theTypesPackage.getQuantity(), "quantity", null, 0, 1, OrderLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(deliveryEClass, Delivery.class, "Delivery", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getDelivery_Order(), this.getOrder(), null, "order", null, 0, 1, Delivery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDelivery_ArrivedOn(), theTypesPackage.getDate(), "arrivedOn", null, 0, 1, Delivery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDelivery_Lines(), this.getDeliveryLine(), null, "lines", null, 0, -1, Delivery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(deliveryLineEClass, DeliveryLine.class, "DeliveryLine", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getDeliveryLine_Line(), this.getOrderLine(), null, "line", null, 0, 1, DeliveryLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeliveryLine_Quantity(), theTypesPackage.getQuantity(), "quantity", null, 0, 1, DeliveryLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeliveryLine_Rejected(), theTypesPackage.getQuantity(), "rejected", null, 0, 1, DeliveryLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stockCountEClass, StockCount.class, "StockCount", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStockCount_Material(), theCataloguePackage.getMaterial(), null, "material", null, 0, 1, StockCount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStockCount_UnitType(), theCataloguePackage.getUnitType(), null, "unitType", null, 0, 1, StockCount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockCount_Quantity(), theTypesPackage.getQuantity(), "quantity", null, 0, 1, StockCount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockCount_CountedOn(), theTypesPackage.getDate(), "countedOn", null, 0, 1, StockCount.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Create resource
		createResource(eNS_URI);
	}

} //SupplyPackageImpl
