/**
 */
package org.coursewright.model.catalogue.impl;

import org.coursewright.measure.Money;

import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.CrewMember;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Crew Member</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.CrewMemberImpl#getTrade <em>Trade</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CrewMemberImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.CrewMemberImpl#getRate <em>Rate</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CrewMemberImpl extends MinimalEObjectImpl.Container implements CrewMember {
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
	 * The default value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected static final int COUNT_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected int count = COUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getRate() <em>Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRate()
	 * @generated
	 * @ordered
	 */
	protected static final Money RATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRate() <em>Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRate()
	 * @generated
	 * @ordered
	 */
	protected Money rate = RATE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CrewMemberImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.CREW_MEMBER;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.CREW_MEMBER__TRADE, oldTrade, trade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount() {
		return count;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount) {
		int oldCount = count;
		count = newCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.CREW_MEMBER__COUNT, oldCount, count));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Money getRate() {
		return rate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRate(Money newRate) {
		Money oldRate = rate;
		rate = newRate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.CREW_MEMBER__RATE, oldRate, rate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CataloguePackage.CREW_MEMBER__TRADE:
				return getTrade();
			case CataloguePackage.CREW_MEMBER__COUNT:
				return getCount();
			case CataloguePackage.CREW_MEMBER__RATE:
				return getRate();
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
			case CataloguePackage.CREW_MEMBER__TRADE:
				setTrade((String)newValue);
				return;
			case CataloguePackage.CREW_MEMBER__COUNT:
				setCount((Integer)newValue);
				return;
			case CataloguePackage.CREW_MEMBER__RATE:
				setRate((Money)newValue);
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
			case CataloguePackage.CREW_MEMBER__TRADE:
				setTrade(TRADE_EDEFAULT);
				return;
			case CataloguePackage.CREW_MEMBER__COUNT:
				setCount(COUNT_EDEFAULT);
				return;
			case CataloguePackage.CREW_MEMBER__RATE:
				setRate(RATE_EDEFAULT);
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
			case CataloguePackage.CREW_MEMBER__TRADE:
				return TRADE_EDEFAULT == null ? trade != null : !TRADE_EDEFAULT.equals(trade);
			case CataloguePackage.CREW_MEMBER__COUNT:
				return count != COUNT_EDEFAULT;
			case CataloguePackage.CREW_MEMBER__RATE:
				return RATE_EDEFAULT == null ? rate != null : !RATE_EDEFAULT.equals(rate);
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
		result.append(" (trade: ");
		result.append(trade);
		result.append(", count: ");
		result.append(count);
		result.append(", rate: ");
		result.append(rate);
		result.append(')');
		return result.toString();
	}

} //CrewMemberImpl
