/**
 */
package org.coursewright.model.estimate.impl;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.HeightBand;

import org.coursewright.model.types.TypesFactory;
import org.coursewright.model.types.TypesPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Height Band</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.HeightBandImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.HeightBandImpl#getOutputShare <em>Output Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HeightBandImpl extends MinimalEObjectImpl.Container implements HeightBand {
	/**
	 * The default value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Length FROM_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Length from = FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutputShare() <em>Output Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutputShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal OUTPUT_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutputShare() <em>Output Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutputShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal outputShare = OUTPUT_SHARE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HeightBandImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.HEIGHT_BAND;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFrom() {
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Length newFrom) {
		Length oldFrom = from;
		from = newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.HEIGHT_BAND__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getOutputShare() {
		return outputShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutputShare(BigDecimal newOutputShare) {
		BigDecimal oldOutputShare = outputShare;
		outputShare = newOutputShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.HEIGHT_BAND__OUTPUT_SHARE, oldOutputShare, outputShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case EstimatePackage.HEIGHT_BAND__FROM:
				return getFrom();
			case EstimatePackage.HEIGHT_BAND__OUTPUT_SHARE:
				return getOutputShare();
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
			case EstimatePackage.HEIGHT_BAND__FROM:
				setFrom((Length)newValue);
				return;
			case EstimatePackage.HEIGHT_BAND__OUTPUT_SHARE:
				setOutputShare((BigDecimal)newValue);
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
			case EstimatePackage.HEIGHT_BAND__FROM:
				setFrom(FROM_EDEFAULT);
				return;
			case EstimatePackage.HEIGHT_BAND__OUTPUT_SHARE:
				setOutputShare(OUTPUT_SHARE_EDEFAULT);
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
			case EstimatePackage.HEIGHT_BAND__FROM:
				return FROM_EDEFAULT == null ? from != null : !FROM_EDEFAULT.equals(from);
			case EstimatePackage.HEIGHT_BAND__OUTPUT_SHARE:
				return OUTPUT_SHARE_EDEFAULT == null ? outputShare != null : !OUTPUT_SHARE_EDEFAULT.equals(outputShare);
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
		result.append(" (from: ");
		result.append(from);
		result.append(", outputShare: ");
		result.append(outputShare);
		result.append(')');
		return result.toString();
	}

} //HeightBandImpl
