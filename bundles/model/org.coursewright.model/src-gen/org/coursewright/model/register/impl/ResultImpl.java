/**
 */
package org.coursewright.model.register.impl;

import java.time.LocalDate;

import org.coursewright.measure.Quantity;

import org.coursewright.model.register.Certificate;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.register.Result;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Result</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.impl.ResultImpl#getProperty <em>Property</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.ResultImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.ResultImpl#getTestedOn <em>Tested On</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.ResultImpl#getCertificate <em>Certificate</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ResultImpl extends MinimalEObjectImpl.Container implements Result {
	/**
	 * The default value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected static final String PROPERTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected String property = PROPERTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected Quantity value = VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestedOn() <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate TESTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTestedOn() <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate testedOn = TESTED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCertificate() <em>Certificate</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCertificate()
	 * @generated
	 * @ordered
	 */
	protected Certificate certificate;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ResultImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return RegisterPackage.Literals.RESULT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProperty() {
		return property;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProperty(String newProperty) {
		String oldProperty = property;
		property = newProperty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.RESULT__PROPERTY, oldProperty, property));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getValue() {
		return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Quantity newValue) {
		Quantity oldValue = value;
		value = newValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.RESULT__VALUE, oldValue, value));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getTestedOn() {
		return testedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestedOn(LocalDate newTestedOn) {
		LocalDate oldTestedOn = testedOn;
		testedOn = newTestedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.RESULT__TESTED_ON, oldTestedOn, testedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Certificate getCertificate() {
		if (certificate != null && certificate.eIsProxy()) {
			InternalEObject oldCertificate = (InternalEObject)certificate;
			certificate = (Certificate)eResolveProxy(oldCertificate);
			if (certificate != oldCertificate) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, RegisterPackage.RESULT__CERTIFICATE, oldCertificate, certificate));
			}
		}
		return certificate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Certificate basicGetCertificate() {
		return certificate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCertificate(Certificate newCertificate) {
		Certificate oldCertificate = certificate;
		certificate = newCertificate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.RESULT__CERTIFICATE, oldCertificate, certificate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case RegisterPackage.RESULT__PROPERTY:
				return getProperty();
			case RegisterPackage.RESULT__VALUE:
				return getValue();
			case RegisterPackage.RESULT__TESTED_ON:
				return getTestedOn();
			case RegisterPackage.RESULT__CERTIFICATE:
				if (resolve) return getCertificate();
				return basicGetCertificate();
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
			case RegisterPackage.RESULT__PROPERTY:
				setProperty((String)newValue);
				return;
			case RegisterPackage.RESULT__VALUE:
				setValue((Quantity)newValue);
				return;
			case RegisterPackage.RESULT__TESTED_ON:
				setTestedOn((LocalDate)newValue);
				return;
			case RegisterPackage.RESULT__CERTIFICATE:
				setCertificate((Certificate)newValue);
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
			case RegisterPackage.RESULT__PROPERTY:
				setProperty(PROPERTY_EDEFAULT);
				return;
			case RegisterPackage.RESULT__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case RegisterPackage.RESULT__TESTED_ON:
				setTestedOn(TESTED_ON_EDEFAULT);
				return;
			case RegisterPackage.RESULT__CERTIFICATE:
				setCertificate((Certificate)null);
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
			case RegisterPackage.RESULT__PROPERTY:
				return PROPERTY_EDEFAULT == null ? property != null : !PROPERTY_EDEFAULT.equals(property);
			case RegisterPackage.RESULT__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case RegisterPackage.RESULT__TESTED_ON:
				return TESTED_ON_EDEFAULT == null ? testedOn != null : !TESTED_ON_EDEFAULT.equals(testedOn);
			case RegisterPackage.RESULT__CERTIFICATE:
				return certificate != null;
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
		result.append(" (property: ");
		result.append(property);
		result.append(", value: ");
		result.append(value);
		result.append(", testedOn: ");
		result.append(testedOn);
		result.append(')');
		return result.toString();
	}

} //ResultImpl
