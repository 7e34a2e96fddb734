/**
 */
package org.coursewright.model.estimate.impl;

import java.math.BigDecimal;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.Uncertain;
import org.coursewright.model.estimate.Uncertainty;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Uncertain</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.UncertainImpl#getLowShare <em>Low Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.UncertainImpl#getHighShare <em>High Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.UncertainImpl#getMovesWith <em>Moves With</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class UncertainImpl extends MinimalEObjectImpl.Container implements Uncertain {
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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UncertainImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.UNCERTAIN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.UNCERTAIN__LOW_SHARE, oldLowShare, lowShare));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.UNCERTAIN__HIGH_SHARE, oldHighShare, highShare));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.UNCERTAIN__MOVES_WITH, oldMovesWith, movesWith));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.UNCERTAIN__MOVES_WITH, oldMovesWith, movesWith));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case EstimatePackage.UNCERTAIN__LOW_SHARE:
				return getLowShare();
			case EstimatePackage.UNCERTAIN__HIGH_SHARE:
				return getHighShare();
			case EstimatePackage.UNCERTAIN__MOVES_WITH:
				if (resolve) return getMovesWith();
				return basicGetMovesWith();
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
			case EstimatePackage.UNCERTAIN__LOW_SHARE:
				setLowShare((BigDecimal)newValue);
				return;
			case EstimatePackage.UNCERTAIN__HIGH_SHARE:
				setHighShare((BigDecimal)newValue);
				return;
			case EstimatePackage.UNCERTAIN__MOVES_WITH:
				setMovesWith((Uncertainty)newValue);
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
			case EstimatePackage.UNCERTAIN__LOW_SHARE:
				setLowShare(LOW_SHARE_EDEFAULT);
				return;
			case EstimatePackage.UNCERTAIN__HIGH_SHARE:
				setHighShare(HIGH_SHARE_EDEFAULT);
				return;
			case EstimatePackage.UNCERTAIN__MOVES_WITH:
				setMovesWith((Uncertainty)null);
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
			case EstimatePackage.UNCERTAIN__LOW_SHARE:
				return LOW_SHARE_EDEFAULT == null ? lowShare != null : !LOW_SHARE_EDEFAULT.equals(lowShare);
			case EstimatePackage.UNCERTAIN__HIGH_SHARE:
				return HIGH_SHARE_EDEFAULT == null ? highShare != null : !HIGH_SHARE_EDEFAULT.equals(highShare);
			case EstimatePackage.UNCERTAIN__MOVES_WITH:
				return movesWith != null;
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
		result.append(" (lowShare: ");
		result.append(lowShare);
		result.append(", highShare: ");
		result.append(highShare);
		result.append(')');
		return result.toString();
	}

} //UncertainImpl
