/**
 */
package org.coursewright.model.estimate.impl;

import java.math.BigDecimal;

import java.time.LocalDate;

import org.coursewright.measure.Money;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.Uncertain;
import org.coursewright.model.estimate.Uncertainty;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rate</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getLowShare <em>Low Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getHighShare <em>High Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getMovesWith <em>Moves With</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getUnitCode <em>Unit Code</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getAsOf <em>As Of</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getTrade <em>Trade</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.RateImpl#getElement <em>Element</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RateImpl extends MinimalEObjectImpl.Container implements Rate {
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
	 * The default value of the '{@link #getLowShare() <em>Low Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LOW_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLowShare() <em>Low Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal lowShare = LOW_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHighShare() <em>High Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal HIGH_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHighShare() <em>High Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal highShare = HIGH_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMovesWith() <em>Moves With</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovesWith()
	 * @generated
	 * @ordered
	 */
	protected Uncertainty movesWith;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final RateKind KIND_EDEFAULT = RateKind.MATERIAL;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected RateKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected static final Money PRICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected Money price = PRICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnitCode() <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCode()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnitCode() <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCode()
	 * @generated
	 * @ordered
	 */
	protected String unitCode = UNIT_CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAsOf() <em>As Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsOf()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate AS_OF_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAsOf() <em>As Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsOf()
	 * @generated
	 * @ordered
	 */
	protected LocalDate asOf = AS_OF_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrade() <em>Trade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrade()
	 * @generated
	 * @ordered
	 */
	protected static final String TRADE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTrade() <em>Trade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrade()
	 * @generated
	 * @ordered
	 */
	protected String trade = TRADE_EDEFAULT;

	/**
	 * The default value of the '{@link #getElement() <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElement()
	 * @generated
	 * @ordered
	 */
	protected static final String ELEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElement() <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElement()
	 * @generated
	 * @ordered
	 */
	protected String element = ELEMENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RateImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.RATE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLowShare() {
		return lowShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowShare(BigDecimal newLowShare) {
		BigDecimal oldLowShare = lowShare;
		lowShare = newLowShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__LOW_SHARE, oldLowShare, lowShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getHighShare() {
		return highShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighShare(BigDecimal newHighShare) {
		BigDecimal oldHighShare = highShare;
		highShare = newHighShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__HIGH_SHARE, oldHighShare, highShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Uncertainty getMovesWith() {
		if (movesWith != null && movesWith.eIsProxy()) {
			InternalEObject oldMovesWith = (InternalEObject)movesWith;
			movesWith = (Uncertainty)eResolveProxy(oldMovesWith);
			if (movesWith != oldMovesWith) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.RATE__MOVES_WITH, oldMovesWith, movesWith));
			}
		}
		return movesWith;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Uncertainty basicGetMovesWith() {
		return movesWith;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMovesWith(Uncertainty newMovesWith) {
		Uncertainty oldMovesWith = movesWith;
		movesWith = newMovesWith;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__MOVES_WITH, oldMovesWith, movesWith));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RateKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(RateKind newKind) {
		RateKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Money getPrice() {
		return price;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(Money newPrice) {
		Money oldPrice = price;
		price = newPrice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__PRICE, oldPrice, price));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnitCode() {
		return unitCode;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitCode(String newUnitCode) {
		String oldUnitCode = unitCode;
		unitCode = newUnitCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__UNIT_CODE, oldUnitCode, unitCode));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getAsOf() {
		return asOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAsOf(LocalDate newAsOf) {
		LocalDate oldAsOf = asOf;
		asOf = newAsOf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__AS_OF, oldAsOf, asOf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTrade() {
		return trade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrade(String newTrade) {
		String oldTrade = trade;
		trade = newTrade;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__TRADE, oldTrade, trade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getElement() {
		return element;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(String newElement) {
		String oldElement = element;
		element = newElement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.RATE__ELEMENT, oldElement, element));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case EstimatePackage.RATE__MARK:
				return getMark();
			case EstimatePackage.RATE__NOTE:
				return getNote();
			case EstimatePackage.RATE__LOW_SHARE:
				return getLowShare();
			case EstimatePackage.RATE__HIGH_SHARE:
				return getHighShare();
			case EstimatePackage.RATE__MOVES_WITH:
				if (resolve) return getMovesWith();
				return basicGetMovesWith();
			case EstimatePackage.RATE__KIND:
				return getKind();
			case EstimatePackage.RATE__PRICE:
				return getPrice();
			case EstimatePackage.RATE__UNIT_CODE:
				return getUnitCode();
			case EstimatePackage.RATE__AS_OF:
				return getAsOf();
			case EstimatePackage.RATE__SOURCE:
				return getSource();
			case EstimatePackage.RATE__TRADE:
				return getTrade();
			case EstimatePackage.RATE__ELEMENT:
				return getElement();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case EstimatePackage.RATE__MARK:
				setMark((String)newValue);
				return;
			case EstimatePackage.RATE__NOTE:
				setNote((String)newValue);
				return;
			case EstimatePackage.RATE__LOW_SHARE:
				setLowShare((BigDecimal)newValue);
				return;
			case EstimatePackage.RATE__HIGH_SHARE:
				setHighShare((BigDecimal)newValue);
				return;
			case EstimatePackage.RATE__MOVES_WITH:
				setMovesWith((Uncertainty)newValue);
				return;
			case EstimatePackage.RATE__KIND:
				setKind((RateKind)newValue);
				return;
			case EstimatePackage.RATE__PRICE:
				setPrice((Money)newValue);
				return;
			case EstimatePackage.RATE__UNIT_CODE:
				setUnitCode((String)newValue);
				return;
			case EstimatePackage.RATE__AS_OF:
				setAsOf((LocalDate)newValue);
				return;
			case EstimatePackage.RATE__SOURCE:
				setSource((String)newValue);
				return;
			case EstimatePackage.RATE__TRADE:
				setTrade((String)newValue);
				return;
			case EstimatePackage.RATE__ELEMENT:
				setElement((String)newValue);
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
			case EstimatePackage.RATE__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case EstimatePackage.RATE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case EstimatePackage.RATE__LOW_SHARE:
				setLowShare(LOW_SHARE_EDEFAULT);
				return;
			case EstimatePackage.RATE__HIGH_SHARE:
				setHighShare(HIGH_SHARE_EDEFAULT);
				return;
			case EstimatePackage.RATE__MOVES_WITH:
				setMovesWith((Uncertainty)null);
				return;
			case EstimatePackage.RATE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case EstimatePackage.RATE__PRICE:
				setPrice(PRICE_EDEFAULT);
				return;
			case EstimatePackage.RATE__UNIT_CODE:
				setUnitCode(UNIT_CODE_EDEFAULT);
				return;
			case EstimatePackage.RATE__AS_OF:
				setAsOf(AS_OF_EDEFAULT);
				return;
			case EstimatePackage.RATE__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case EstimatePackage.RATE__TRADE:
				setTrade(TRADE_EDEFAULT);
				return;
			case EstimatePackage.RATE__ELEMENT:
				setElement(ELEMENT_EDEFAULT);
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
			case EstimatePackage.RATE__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case EstimatePackage.RATE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case EstimatePackage.RATE__LOW_SHARE:
				return LOW_SHARE_EDEFAULT == null ? lowShare != null : !LOW_SHARE_EDEFAULT.equals(lowShare);
			case EstimatePackage.RATE__HIGH_SHARE:
				return HIGH_SHARE_EDEFAULT == null ? highShare != null : !HIGH_SHARE_EDEFAULT.equals(highShare);
			case EstimatePackage.RATE__MOVES_WITH:
				return movesWith != null;
			case EstimatePackage.RATE__KIND:
				return kind != KIND_EDEFAULT;
			case EstimatePackage.RATE__PRICE:
				return PRICE_EDEFAULT == null ? price != null : !PRICE_EDEFAULT.equals(price);
			case EstimatePackage.RATE__UNIT_CODE:
				return UNIT_CODE_EDEFAULT == null ? unitCode != null : !UNIT_CODE_EDEFAULT.equals(unitCode);
			case EstimatePackage.RATE__AS_OF:
				return AS_OF_EDEFAULT == null ? asOf != null : !AS_OF_EDEFAULT.equals(asOf);
			case EstimatePackage.RATE__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case EstimatePackage.RATE__TRADE:
				return TRADE_EDEFAULT == null ? trade != null : !TRADE_EDEFAULT.equals(trade);
			case EstimatePackage.RATE__ELEMENT:
				return ELEMENT_EDEFAULT == null ? element != null : !ELEMENT_EDEFAULT.equals(element);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass) {
		if (baseClass == Uncertain.class) {
			switch (derivedFeatureID) {
				case EstimatePackage.RATE__LOW_SHARE: return EstimatePackage.UNCERTAIN__LOW_SHARE;
				case EstimatePackage.RATE__HIGH_SHARE: return EstimatePackage.UNCERTAIN__HIGH_SHARE;
				case EstimatePackage.RATE__MOVES_WITH: return EstimatePackage.UNCERTAIN__MOVES_WITH;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass) {
		if (baseClass == Uncertain.class) {
			switch (baseFeatureID) {
				case EstimatePackage.UNCERTAIN__LOW_SHARE: return EstimatePackage.RATE__LOW_SHARE;
				case EstimatePackage.UNCERTAIN__HIGH_SHARE: return EstimatePackage.RATE__HIGH_SHARE;
				case EstimatePackage.UNCERTAIN__MOVES_WITH: return EstimatePackage.RATE__MOVES_WITH;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
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
		result.append(", lowShare: ");
		result.append(lowShare);
		result.append(", highShare: ");
		result.append(highShare);
		result.append(", kind: ");
		result.append(kind);
		result.append(", price: ");
		result.append(price);
		result.append(", unitCode: ");
		result.append(unitCode);
		result.append(", asOf: ");
		result.append(asOf);
		result.append(", source: ");
		result.append(source);
		result.append(", trade: ");
		result.append(trade);
		result.append(", element: ");
		result.append(element);
		result.append(')');
		return result.toString();
	}

} //RateImpl
