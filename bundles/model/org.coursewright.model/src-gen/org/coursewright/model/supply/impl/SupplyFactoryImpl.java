/**
 */
package org.coursewright.model.supply.impl;

import org.coursewright.model.supply.*;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class SupplyFactoryImpl extends EFactoryImpl implements SupplyFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static SupplyFactory init() {
		try {
			SupplyFactory theSupplyFactory = (SupplyFactory)EPackage.Registry.INSTANCE.getEFactory(SupplyPackage.eNS_URI);
			if (theSupplyFactory != null) {
				return theSupplyFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new SupplyFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SupplyFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case SupplyPackage.SUPPLY: return createSupply();
			case SupplyPackage.SUPPLIER: return createSupplier();
			case SupplyPackage.OFFER: return createOffer();
			case SupplyPackage.PRICE_BREAK: return createPriceBreak();
			case SupplyPackage.ORDER: return createOrder();
			case SupplyPackage.ORDER_LINE: return createOrderLine();
			case SupplyPackage.DELIVERY: return createDelivery();
			case SupplyPackage.DELIVERY_LINE: return createDeliveryLine();
			case SupplyPackage.STOCK_COUNT: return createStockCount();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supply createSupply() {
		SupplyImpl supply = new SupplyImpl();
		return supply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supplier createSupplier() {
		SupplierImpl supplier = new SupplierImpl();
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Offer createOffer() {
		OfferImpl offer = new OfferImpl();
		return offer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceBreak createPriceBreak() {
		PriceBreakImpl priceBreak = new PriceBreakImpl();
		return priceBreak;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Order createOrder() {
		OrderImpl order = new OrderImpl();
		return order;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OrderLine createOrderLine() {
		OrderLineImpl orderLine = new OrderLineImpl();
		return orderLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Delivery createDelivery() {
		DeliveryImpl delivery = new DeliveryImpl();
		return delivery;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DeliveryLine createDeliveryLine() {
		DeliveryLineImpl deliveryLine = new DeliveryLineImpl();
		return deliveryLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockCount createStockCount() {
		StockCountImpl stockCount = new StockCountImpl();
		return stockCount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SupplyPackage getSupplyPackage() {
		return (SupplyPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static SupplyPackage getPackage() {
		return SupplyPackage.eINSTANCE;
	}

} //SupplyFactoryImpl
