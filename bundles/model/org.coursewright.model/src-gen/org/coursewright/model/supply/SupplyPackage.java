/**
 */
package org.coursewright.model.supply;

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
 * What is bought, from whom, and what is in stock.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.supply.SupplyFactory
 * @model kind="package"
 * @generated
 */
public interface SupplyPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "supply";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/supply";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "supply";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	SupplyPackage eINSTANCE = org.coursewright.model.supply.impl.SupplyPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.SupplyImpl <em>Supply</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.SupplyImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getSupply()
	 * @generated
	 */
	int SUPPLY = 0;

	/**
	 * The feature id for the '<em><b>Suppliers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY__SUPPLIERS = 0;

	/**
	 * The feature id for the '<em><b>Offers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY__OFFERS = 1;

	/**
	 * The feature id for the '<em><b>Orders</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY__ORDERS = 2;

	/**
	 * The feature id for the '<em><b>Deliveries</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY__DELIVERIES = 3;

	/**
	 * The feature id for the '<em><b>Stock Counts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY__STOCK_COUNTS = 4;

	/**
	 * The number of structural features of the '<em>Supply</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Supply</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.SupplierImpl <em>Supplier</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.SupplierImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getSupplier()
	 * @generated
	 */
	int SUPPLIER = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__NAME = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__CONTACT = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Supplier</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Supplier</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.OfferImpl <em>Offer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.OfferImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOffer()
	 * @generated
	 */
	int OFFER = 2;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__SUPPLIER = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__MATERIAL = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__UNIT_TYPE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Least Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__LEAST_LOT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Load Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__LOAD_SIZE = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Haulage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__HAULAGE = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Lead Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__LEAD_DAYS = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Quoted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__QUOTED_ON = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Valid Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__VALID_UNTIL = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Price Breaks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER__PRICE_BREAKS = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Offer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Offer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OFFER_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.PriceBreakImpl <em>Price Break</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.PriceBreakImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getPriceBreak()
	 * @generated
	 */
	int PRICE_BREAK = 3;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BREAK__FROM = 0;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BREAK__PRICE = 1;

	/**
	 * The number of structural features of the '<em>Price Break</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BREAK_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Price Break</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BREAK_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.OrderImpl <em>Order</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.OrderImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOrder()
	 * @generated
	 */
	int ORDER = 4;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__SUPPLIER = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Placed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__PLACED_ON = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Due On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__DUE_ON = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER__LINES = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Order</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Order</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.OrderLineImpl <em>Order Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.OrderLineImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOrderLine()
	 * @generated
	 */
	int ORDER_LINE = 5;

	/**
	 * The feature id for the '<em><b>Offer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_LINE__OFFER = 0;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_LINE__QUANTITY = 1;

	/**
	 * The number of structural features of the '<em>Order Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_LINE_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Order Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ORDER_LINE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.DeliveryImpl <em>Delivery</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.DeliveryImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getDelivery()
	 * @generated
	 */
	int DELIVERY = 6;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Order</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY__ORDER = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Arrived On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY__ARRIVED_ON = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY__LINES = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Delivery</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Delivery</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.DeliveryLineImpl <em>Delivery Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.DeliveryLineImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getDeliveryLine()
	 * @generated
	 */
	int DELIVERY_LINE = 7;

	/**
	 * The feature id for the '<em><b>Line</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_LINE__LINE = 0;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_LINE__QUANTITY = 1;

	/**
	 * The feature id for the '<em><b>Rejected</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_LINE__REJECTED = 2;

	/**
	 * The number of structural features of the '<em>Delivery Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_LINE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Delivery Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DELIVERY_LINE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.supply.impl.StockCountImpl <em>Stock Count</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.supply.impl.StockCountImpl
	 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getStockCount()
	 * @generated
	 */
	int STOCK_COUNT = 8;

	/**
	 * The feature id for the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT__MATERIAL = 0;

	/**
	 * The feature id for the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT__UNIT_TYPE = 1;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT__QUANTITY = 2;

	/**
	 * The feature id for the '<em><b>Counted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT__COUNTED_ON = 3;

	/**
	 * The number of structural features of the '<em>Stock Count</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Stock Count</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_COUNT_OPERATION_COUNT = 0;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.Supply <em>Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Supply</em>'.
	 * @see org.coursewright.model.supply.Supply
	 * @generated
	 */
	EClass getSupply();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Supply#getSuppliers <em>Suppliers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Suppliers</em>'.
	 * @see org.coursewright.model.supply.Supply#getSuppliers()
	 * @see #getSupply()
	 * @generated
	 */
	EReference getSupply_Suppliers();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Supply#getOffers <em>Offers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Offers</em>'.
	 * @see org.coursewright.model.supply.Supply#getOffers()
	 * @see #getSupply()
	 * @generated
	 */
	EReference getSupply_Offers();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Supply#getOrders <em>Orders</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Orders</em>'.
	 * @see org.coursewright.model.supply.Supply#getOrders()
	 * @see #getSupply()
	 * @generated
	 */
	EReference getSupply_Orders();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Supply#getDeliveries <em>Deliveries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Deliveries</em>'.
	 * @see org.coursewright.model.supply.Supply#getDeliveries()
	 * @see #getSupply()
	 * @generated
	 */
	EReference getSupply_Deliveries();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Supply#getStockCounts <em>Stock Counts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stock Counts</em>'.
	 * @see org.coursewright.model.supply.Supply#getStockCounts()
	 * @see #getSupply()
	 * @generated
	 */
	EReference getSupply_StockCounts();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.Supplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Supplier</em>'.
	 * @see org.coursewright.model.supply.Supplier
	 * @generated
	 */
	EClass getSupplier();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Supplier#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.coursewright.model.supply.Supplier#getName()
	 * @see #getSupplier()
	 * @generated
	 */
	EAttribute getSupplier_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Supplier#getContact <em>Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact</em>'.
	 * @see org.coursewright.model.supply.Supplier#getContact()
	 * @see #getSupplier()
	 * @generated
	 */
	EAttribute getSupplier_Contact();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.Offer <em>Offer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Offer</em>'.
	 * @see org.coursewright.model.supply.Offer
	 * @generated
	 */
	EClass getOffer();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.Offer#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Supplier</em>'.
	 * @see org.coursewright.model.supply.Offer#getSupplier()
	 * @see #getOffer()
	 * @generated
	 */
	EReference getOffer_Supplier();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.Offer#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Material</em>'.
	 * @see org.coursewright.model.supply.Offer#getMaterial()
	 * @see #getOffer()
	 * @generated
	 */
	EReference getOffer_Material();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.Offer#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.supply.Offer#getUnitType()
	 * @see #getOffer()
	 * @generated
	 */
	EReference getOffer_UnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getLeastLot <em>Least Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Least Lot</em>'.
	 * @see org.coursewright.model.supply.Offer#getLeastLot()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_LeastLot();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getLoadSize <em>Load Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Load Size</em>'.
	 * @see org.coursewright.model.supply.Offer#getLoadSize()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_LoadSize();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getHaulage <em>Haulage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Haulage</em>'.
	 * @see org.coursewright.model.supply.Offer#getHaulage()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_Haulage();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getLeadDays <em>Lead Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lead Days</em>'.
	 * @see org.coursewright.model.supply.Offer#getLeadDays()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_LeadDays();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getQuotedOn <em>Quoted On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quoted On</em>'.
	 * @see org.coursewright.model.supply.Offer#getQuotedOn()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_QuotedOn();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Offer#getValidUntil <em>Valid Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valid Until</em>'.
	 * @see org.coursewright.model.supply.Offer#getValidUntil()
	 * @see #getOffer()
	 * @generated
	 */
	EAttribute getOffer_ValidUntil();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Offer#getPriceBreaks <em>Price Breaks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Price Breaks</em>'.
	 * @see org.coursewright.model.supply.Offer#getPriceBreaks()
	 * @see #getOffer()
	 * @generated
	 */
	EReference getOffer_PriceBreaks();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.PriceBreak <em>Price Break</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Price Break</em>'.
	 * @see org.coursewright.model.supply.PriceBreak
	 * @generated
	 */
	EClass getPriceBreak();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.PriceBreak#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.coursewright.model.supply.PriceBreak#getFrom()
	 * @see #getPriceBreak()
	 * @generated
	 */
	EAttribute getPriceBreak_From();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.PriceBreak#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.coursewright.model.supply.PriceBreak#getPrice()
	 * @see #getPriceBreak()
	 * @generated
	 */
	EAttribute getPriceBreak_Price();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.Order <em>Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Order</em>'.
	 * @see org.coursewright.model.supply.Order
	 * @generated
	 */
	EClass getOrder();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.Order#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Supplier</em>'.
	 * @see org.coursewright.model.supply.Order#getSupplier()
	 * @see #getOrder()
	 * @generated
	 */
	EReference getOrder_Supplier();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Order#getPlacedOn <em>Placed On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Placed On</em>'.
	 * @see org.coursewright.model.supply.Order#getPlacedOn()
	 * @see #getOrder()
	 * @generated
	 */
	EAttribute getOrder_PlacedOn();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Order#getDueOn <em>Due On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Due On</em>'.
	 * @see org.coursewright.model.supply.Order#getDueOn()
	 * @see #getOrder()
	 * @generated
	 */
	EAttribute getOrder_DueOn();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Order#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see org.coursewright.model.supply.Order#getLines()
	 * @see #getOrder()
	 * @generated
	 */
	EReference getOrder_Lines();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.OrderLine <em>Order Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Order Line</em>'.
	 * @see org.coursewright.model.supply.OrderLine
	 * @generated
	 */
	EClass getOrderLine();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.OrderLine#getOffer <em>Offer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Offer</em>'.
	 * @see org.coursewright.model.supply.OrderLine#getOffer()
	 * @see #getOrderLine()
	 * @generated
	 */
	EReference getOrderLine_Offer();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.OrderLine#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.coursewright.model.supply.OrderLine#getQuantity()
	 * @see #getOrderLine()
	 * @generated
	 */
	EAttribute getOrderLine_Quantity();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.Delivery <em>Delivery</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Delivery</em>'.
	 * @see org.coursewright.model.supply.Delivery
	 * @generated
	 */
	EClass getDelivery();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.Delivery#getOrder <em>Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Order</em>'.
	 * @see org.coursewright.model.supply.Delivery#getOrder()
	 * @see #getDelivery()
	 * @generated
	 */
	EReference getDelivery_Order();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.Delivery#getArrivedOn <em>Arrived On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arrived On</em>'.
	 * @see org.coursewright.model.supply.Delivery#getArrivedOn()
	 * @see #getDelivery()
	 * @generated
	 */
	EAttribute getDelivery_ArrivedOn();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.supply.Delivery#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see org.coursewright.model.supply.Delivery#getLines()
	 * @see #getDelivery()
	 * @generated
	 */
	EReference getDelivery_Lines();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.DeliveryLine <em>Delivery Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Delivery Line</em>'.
	 * @see org.coursewright.model.supply.DeliveryLine
	 * @generated
	 */
	EClass getDeliveryLine();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.DeliveryLine#getLine <em>Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Line</em>'.
	 * @see org.coursewright.model.supply.DeliveryLine#getLine()
	 * @see #getDeliveryLine()
	 * @generated
	 */
	EReference getDeliveryLine_Line();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.DeliveryLine#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.coursewright.model.supply.DeliveryLine#getQuantity()
	 * @see #getDeliveryLine()
	 * @generated
	 */
	EAttribute getDeliveryLine_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.DeliveryLine#getRejected <em>Rejected</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rejected</em>'.
	 * @see org.coursewright.model.supply.DeliveryLine#getRejected()
	 * @see #getDeliveryLine()
	 * @generated
	 */
	EAttribute getDeliveryLine_Rejected();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.supply.StockCount <em>Stock Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock Count</em>'.
	 * @see org.coursewright.model.supply.StockCount
	 * @generated
	 */
	EClass getStockCount();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.StockCount#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Material</em>'.
	 * @see org.coursewright.model.supply.StockCount#getMaterial()
	 * @see #getStockCount()
	 * @generated
	 */
	EReference getStockCount_Material();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.supply.StockCount#getUnitType <em>Unit Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Unit Type</em>'.
	 * @see org.coursewright.model.supply.StockCount#getUnitType()
	 * @see #getStockCount()
	 * @generated
	 */
	EReference getStockCount_UnitType();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.StockCount#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.coursewright.model.supply.StockCount#getQuantity()
	 * @see #getStockCount()
	 * @generated
	 */
	EAttribute getStockCount_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.supply.StockCount#getCountedOn <em>Counted On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Counted On</em>'.
	 * @see org.coursewright.model.supply.StockCount#getCountedOn()
	 * @see #getStockCount()
	 * @generated
	 */
	EAttribute getStockCount_CountedOn();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	SupplyFactory getSupplyFactory();

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
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.SupplyImpl <em>Supply</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.SupplyImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getSupply()
		 * @generated
		 */
		EClass SUPPLY = eINSTANCE.getSupply();

		/**
		 * The meta object literal for the '<em><b>Suppliers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLY__SUPPLIERS = eINSTANCE.getSupply_Suppliers();

		/**
		 * The meta object literal for the '<em><b>Offers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLY__OFFERS = eINSTANCE.getSupply_Offers();

		/**
		 * The meta object literal for the '<em><b>Orders</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLY__ORDERS = eINSTANCE.getSupply_Orders();

		/**
		 * The meta object literal for the '<em><b>Deliveries</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLY__DELIVERIES = eINSTANCE.getSupply_Deliveries();

		/**
		 * The meta object literal for the '<em><b>Stock Counts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLY__STOCK_COUNTS = eINSTANCE.getSupply_StockCounts();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.SupplierImpl <em>Supplier</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.SupplierImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getSupplier()
		 * @generated
		 */
		EClass SUPPLIER = eINSTANCE.getSupplier();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLIER__NAME = eINSTANCE.getSupplier_Name();

		/**
		 * The meta object literal for the '<em><b>Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLIER__CONTACT = eINSTANCE.getSupplier_Contact();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.OfferImpl <em>Offer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.OfferImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOffer()
		 * @generated
		 */
		EClass OFFER = eINSTANCE.getOffer();

		/**
		 * The meta object literal for the '<em><b>Supplier</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OFFER__SUPPLIER = eINSTANCE.getOffer_Supplier();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OFFER__MATERIAL = eINSTANCE.getOffer_Material();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OFFER__UNIT_TYPE = eINSTANCE.getOffer_UnitType();

		/**
		 * The meta object literal for the '<em><b>Least Lot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__LEAST_LOT = eINSTANCE.getOffer_LeastLot();

		/**
		 * The meta object literal for the '<em><b>Load Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__LOAD_SIZE = eINSTANCE.getOffer_LoadSize();

		/**
		 * The meta object literal for the '<em><b>Haulage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__HAULAGE = eINSTANCE.getOffer_Haulage();

		/**
		 * The meta object literal for the '<em><b>Lead Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__LEAD_DAYS = eINSTANCE.getOffer_LeadDays();

		/**
		 * The meta object literal for the '<em><b>Quoted On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__QUOTED_ON = eINSTANCE.getOffer_QuotedOn();

		/**
		 * The meta object literal for the '<em><b>Valid Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OFFER__VALID_UNTIL = eINSTANCE.getOffer_ValidUntil();

		/**
		 * The meta object literal for the '<em><b>Price Breaks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OFFER__PRICE_BREAKS = eINSTANCE.getOffer_PriceBreaks();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.PriceBreakImpl <em>Price Break</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.PriceBreakImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getPriceBreak()
		 * @generated
		 */
		EClass PRICE_BREAK = eINSTANCE.getPriceBreak();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BREAK__FROM = eINSTANCE.getPriceBreak_From();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BREAK__PRICE = eINSTANCE.getPriceBreak_Price();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.OrderImpl <em>Order</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.OrderImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOrder()
		 * @generated
		 */
		EClass ORDER = eINSTANCE.getOrder();

		/**
		 * The meta object literal for the '<em><b>Supplier</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ORDER__SUPPLIER = eINSTANCE.getOrder_Supplier();

		/**
		 * The meta object literal for the '<em><b>Placed On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ORDER__PLACED_ON = eINSTANCE.getOrder_PlacedOn();

		/**
		 * The meta object literal for the '<em><b>Due On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ORDER__DUE_ON = eINSTANCE.getOrder_DueOn();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ORDER__LINES = eINSTANCE.getOrder_Lines();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.OrderLineImpl <em>Order Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.OrderLineImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getOrderLine()
		 * @generated
		 */
		EClass ORDER_LINE = eINSTANCE.getOrderLine();

		/**
		 * The meta object literal for the '<em><b>Offer</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ORDER_LINE__OFFER = eINSTANCE.getOrderLine_Offer();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ORDER_LINE__QUANTITY = eINSTANCE.getOrderLine_Quantity();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.DeliveryImpl <em>Delivery</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.DeliveryImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getDelivery()
		 * @generated
		 */
		EClass DELIVERY = eINSTANCE.getDelivery();

		/**
		 * The meta object literal for the '<em><b>Order</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DELIVERY__ORDER = eINSTANCE.getDelivery_Order();

		/**
		 * The meta object literal for the '<em><b>Arrived On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DELIVERY__ARRIVED_ON = eINSTANCE.getDelivery_ArrivedOn();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DELIVERY__LINES = eINSTANCE.getDelivery_Lines();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.DeliveryLineImpl <em>Delivery Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.DeliveryLineImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getDeliveryLine()
		 * @generated
		 */
		EClass DELIVERY_LINE = eINSTANCE.getDeliveryLine();

		/**
		 * The meta object literal for the '<em><b>Line</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DELIVERY_LINE__LINE = eINSTANCE.getDeliveryLine_Line();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DELIVERY_LINE__QUANTITY = eINSTANCE.getDeliveryLine_Quantity();

		/**
		 * The meta object literal for the '<em><b>Rejected</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DELIVERY_LINE__REJECTED = eINSTANCE.getDeliveryLine_Rejected();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.supply.impl.StockCountImpl <em>Stock Count</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.supply.impl.StockCountImpl
		 * @see org.coursewright.model.supply.impl.SupplyPackageImpl#getStockCount()
		 * @generated
		 */
		EClass STOCK_COUNT = eINSTANCE.getStockCount();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK_COUNT__MATERIAL = eINSTANCE.getStockCount_Material();

		/**
		 * The meta object literal for the '<em><b>Unit Type</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK_COUNT__UNIT_TYPE = eINSTANCE.getStockCount_UnitType();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_COUNT__QUANTITY = eINSTANCE.getStockCount_Quantity();

		/**
		 * The meta object literal for the '<em><b>Counted On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_COUNT__COUNTED_ON = eINSTANCE.getStockCount_CountedOn();

	}

} //SupplyPackage
