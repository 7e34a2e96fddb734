/**
 */
package org.coursewright.model.supply.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.supply.Offer;
import org.coursewright.model.supply.PriceBreak;
import org.coursewright.model.supply.Supplier;
import org.coursewright.model.supply.SupplyPackage;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Offer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getLeastLot <em>Least Lot</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getLoadSize <em>Load Size</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getHaulage <em>Haulage</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getLeadDays <em>Lead Days</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getQuotedOn <em>Quoted On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getValidUntil <em>Valid Until</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OfferImpl#getPriceBreaks <em>Price Breaks</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OfferImpl extends MinimalEObjectImpl.Container implements Offer {
	/**
	 * The default value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected static final String MARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected String mark = MARK_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSupplier() <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplier()
	 * @generated
	 * @ordered
	 */
	protected Supplier supplier;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material;

	/**
	 * The cached value of the '{@link #getUnitType() <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitType()
	 * @generated
	 * @ordered
	 */
	protected UnitType unitType;

	/**
	 * The default value of the '{@link #getLeastLot() <em>Least Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastLot()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity LEAST_LOT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeastLot() <em>Least Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastLot()
	 * @generated
	 * @ordered
	 */
	protected Quantity leastLot = LEAST_LOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLoadSize() <em>Load Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoadSize()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity LOAD_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLoadSize() <em>Load Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoadSize()
	 * @generated
	 * @ordered
	 */
	protected Quantity loadSize = LOAD_SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHaulage() <em>Haulage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHaulage()
	 * @generated
	 * @ordered
	 */
	protected static final Money HAULAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHaulage() <em>Haulage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHaulage()
	 * @generated
	 * @ordered
	 */
	protected Money haulage = HAULAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeadDays() <em>Lead Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeadDays()
	 * @generated
	 * @ordered
	 */
	protected static final int LEAD_DAYS_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getLeadDays() <em>Lead Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeadDays()
	 * @generated
	 * @ordered
	 */
	protected int leadDays = LEAD_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuotedOn() <em>Quoted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuotedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate QUOTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuotedOn() <em>Quoted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuotedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate quotedOn = QUOTED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getValidUntil() <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValidUntil()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate VALID_UNTIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValidUntil() <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValidUntil()
	 * @generated
	 * @ordered
	 */
	protected LocalDate validUntil = VALID_UNTIL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPriceBreaks() <em>Price Breaks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPriceBreaks()
	 * @generated
	 * @ordered
	 */
	protected EList<PriceBreak> priceBreaks;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OfferImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SupplyPackage.Literals.OFFER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMark() {
		return mark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMark(String newMark) {
		String oldMark = mark;
		mark = newMark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__MARK, oldMark, mark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supplier getSupplier() {
		if (supplier != null && supplier.eIsProxy()) {
			InternalEObject oldSupplier = (InternalEObject)supplier;
			supplier = (Supplier)eResolveProxy(oldSupplier);
			if (supplier != oldSupplier) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.OFFER__SUPPLIER, oldSupplier, supplier));
			}
		}
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Supplier basicGetSupplier() {
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplier(Supplier newSupplier) {
		Supplier oldSupplier = supplier;
		supplier = newSupplier;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__SUPPLIER, oldSupplier, supplier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		if (material != null && material.eIsProxy()) {
			InternalEObject oldMaterial = (InternalEObject)material;
			material = (Material)eResolveProxy(oldMaterial);
			if (material != oldMaterial) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.OFFER__MATERIAL, oldMaterial, material));
			}
		}
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Material basicGetMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitType getUnitType() {
		if (unitType != null && unitType.eIsProxy()) {
			InternalEObject oldUnitType = (InternalEObject)unitType;
			unitType = (UnitType)eResolveProxy(oldUnitType);
			if (unitType != oldUnitType) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.OFFER__UNIT_TYPE, oldUnitType, unitType));
			}
		}
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public UnitType basicGetUnitType() {
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitType(UnitType newUnitType) {
		UnitType oldUnitType = unitType;
		unitType = newUnitType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__UNIT_TYPE, oldUnitType, unitType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLeastLot() {
		return leastLot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeastLot(Quantity newLeastLot) {
		Quantity oldLeastLot = leastLot;
		leastLot = newLeastLot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__LEAST_LOT, oldLeastLot, leastLot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLoadSize() {
		return loadSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLoadSize(Quantity newLoadSize) {
		Quantity oldLoadSize = loadSize;
		loadSize = newLoadSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__LOAD_SIZE, oldLoadSize, loadSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Money getHaulage() {
		return haulage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHaulage(Money newHaulage) {
		Money oldHaulage = haulage;
		haulage = newHaulage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__HAULAGE, oldHaulage, haulage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLeadDays() {
		return leadDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeadDays(int newLeadDays) {
		int oldLeadDays = leadDays;
		leadDays = newLeadDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__LEAD_DAYS, oldLeadDays, leadDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getQuotedOn() {
		return quotedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuotedOn(LocalDate newQuotedOn) {
		LocalDate oldQuotedOn = quotedOn;
		quotedOn = newQuotedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__QUOTED_ON, oldQuotedOn, quotedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getValidUntil() {
		return validUntil;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValidUntil(LocalDate newValidUntil) {
		LocalDate oldValidUntil = validUntil;
		validUntil = newValidUntil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.OFFER__VALID_UNTIL, oldValidUntil, validUntil));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PriceBreak> getPriceBreaks() {
		if (priceBreaks == null) {
			priceBreaks = new EObjectContainmentEList<PriceBreak>(PriceBreak.class, this, SupplyPackage.OFFER__PRICE_BREAKS);
		}
		return priceBreaks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SupplyPackage.OFFER__PRICE_BREAKS:
				return ((InternalEList<?>)getPriceBreaks()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SupplyPackage.OFFER__MARK:
				return getMark();
			case SupplyPackage.OFFER__NOTE:
				return getNote();
			case SupplyPackage.OFFER__SUPPLIER:
				if (resolve) return getSupplier();
				return basicGetSupplier();
			case SupplyPackage.OFFER__MATERIAL:
				if (resolve) return getMaterial();
				return basicGetMaterial();
			case SupplyPackage.OFFER__UNIT_TYPE:
				if (resolve) return getUnitType();
				return basicGetUnitType();
			case SupplyPackage.OFFER__LEAST_LOT:
				return getLeastLot();
			case SupplyPackage.OFFER__LOAD_SIZE:
				return getLoadSize();
			case SupplyPackage.OFFER__HAULAGE:
				return getHaulage();
			case SupplyPackage.OFFER__LEAD_DAYS:
				return getLeadDays();
			case SupplyPackage.OFFER__QUOTED_ON:
				return getQuotedOn();
			case SupplyPackage.OFFER__VALID_UNTIL:
				return getValidUntil();
			case SupplyPackage.OFFER__PRICE_BREAKS:
				return getPriceBreaks();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SupplyPackage.OFFER__MARK:
				setMark((String)newValue);
				return;
			case SupplyPackage.OFFER__NOTE:
				setNote((String)newValue);
				return;
			case SupplyPackage.OFFER__SUPPLIER:
				setSupplier((Supplier)newValue);
				return;
			case SupplyPackage.OFFER__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case SupplyPackage.OFFER__UNIT_TYPE:
				setUnitType((UnitType)newValue);
				return;
			case SupplyPackage.OFFER__LEAST_LOT:
				setLeastLot((Quantity)newValue);
				return;
			case SupplyPackage.OFFER__LOAD_SIZE:
				setLoadSize((Quantity)newValue);
				return;
			case SupplyPackage.OFFER__HAULAGE:
				setHaulage((Money)newValue);
				return;
			case SupplyPackage.OFFER__LEAD_DAYS:
				setLeadDays((Integer)newValue);
				return;
			case SupplyPackage.OFFER__QUOTED_ON:
				setQuotedOn((LocalDate)newValue);
				return;
			case SupplyPackage.OFFER__VALID_UNTIL:
				setValidUntil((LocalDate)newValue);
				return;
			case SupplyPackage.OFFER__PRICE_BREAKS:
				getPriceBreaks().clear();
				getPriceBreaks().addAll((Collection<? extends PriceBreak>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SupplyPackage.OFFER__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case SupplyPackage.OFFER__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case SupplyPackage.OFFER__SUPPLIER:
				setSupplier((Supplier)null);
				return;
			case SupplyPackage.OFFER__MATERIAL:
				setMaterial((Material)null);
				return;
			case SupplyPackage.OFFER__UNIT_TYPE:
				setUnitType((UnitType)null);
				return;
			case SupplyPackage.OFFER__LEAST_LOT:
				setLeastLot(LEAST_LOT_EDEFAULT);
				return;
			case SupplyPackage.OFFER__LOAD_SIZE:
				setLoadSize(LOAD_SIZE_EDEFAULT);
				return;
			case SupplyPackage.OFFER__HAULAGE:
				setHaulage(HAULAGE_EDEFAULT);
				return;
			case SupplyPackage.OFFER__LEAD_DAYS:
				setLeadDays(LEAD_DAYS_EDEFAULT);
				return;
			case SupplyPackage.OFFER__QUOTED_ON:
				setQuotedOn(QUOTED_ON_EDEFAULT);
				return;
			case SupplyPackage.OFFER__VALID_UNTIL:
				setValidUntil(VALID_UNTIL_EDEFAULT);
				return;
			case SupplyPackage.OFFER__PRICE_BREAKS:
				getPriceBreaks().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SupplyPackage.OFFER__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case SupplyPackage.OFFER__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case SupplyPackage.OFFER__SUPPLIER:
				return supplier != null;
			case SupplyPackage.OFFER__MATERIAL:
				return material != null;
			case SupplyPackage.OFFER__UNIT_TYPE:
				return unitType != null;
			case SupplyPackage.OFFER__LEAST_LOT:
				return LEAST_LOT_EDEFAULT == null ? leastLot != null : !LEAST_LOT_EDEFAULT.equals(leastLot);
			case SupplyPackage.OFFER__LOAD_SIZE:
				return LOAD_SIZE_EDEFAULT == null ? loadSize != null : !LOAD_SIZE_EDEFAULT.equals(loadSize);
			case SupplyPackage.OFFER__HAULAGE:
				return HAULAGE_EDEFAULT == null ? haulage != null : !HAULAGE_EDEFAULT.equals(haulage);
			case SupplyPackage.OFFER__LEAD_DAYS:
				return leadDays != LEAD_DAYS_EDEFAULT;
			case SupplyPackage.OFFER__QUOTED_ON:
				return QUOTED_ON_EDEFAULT == null ? quotedOn != null : !QUOTED_ON_EDEFAULT.equals(quotedOn);
			case SupplyPackage.OFFER__VALID_UNTIL:
				return VALID_UNTIL_EDEFAULT == null ? validUntil != null : !VALID_UNTIL_EDEFAULT.equals(validUntil);
			case SupplyPackage.OFFER__PRICE_BREAKS:
				return priceBreaks != null && !priceBreaks.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (mark: ");
		result.append(mark);
		result.append(", note: ");
		result.append(note);
		result.append(", leastLot: ");
		result.append(leastLot);
		result.append(", loadSize: ");
		result.append(loadSize);
		result.append(", haulage: ");
		result.append(haulage);
		result.append(", leadDays: ");
		result.append(leadDays);
		result.append(", quotedOn: ");
		result.append(quotedOn);
		result.append(", validUntil: ");
		result.append(validUntil);
		result.append(')');
		return result.toString();
	}

} //OfferImpl
