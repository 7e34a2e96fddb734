/**
 */
package org.coursewright.model.register.impl;

import java.util.Collection;

import org.coursewright.model.register.Certificate;
import org.coursewright.model.register.Register;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.register.Sample;
import org.coursewright.model.register.TestPlan;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Register</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.impl.RegisterImpl#getPlans <em>Plans</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.RegisterImpl#getSamples <em>Samples</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.RegisterImpl#getCertificates <em>Certificates</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RegisterImpl extends MinimalEObjectImpl.Container implements Register {
	/**
	 * The cached value of the '{@link #getPlans() <em>Plans</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlans()
	 * @generated
	 * @ordered
	 */
	protected EList<TestPlan> plans;

	/**
	 * The cached value of the '{@link #getSamples() <em>Samples</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamples()
	 * @generated
	 * @ordered
	 */
	protected EList<Sample> samples;

	/**
	 * The cached value of the '{@link #getCertificates() <em>Certificates</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCertificates()
	 * @generated
	 * @ordered
	 */
	protected EList<Certificate> certificates;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RegisterImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return RegisterPackage.Literals.REGISTER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TestPlan> getPlans() {
		if (plans == null) {
			plans = new EObjectContainmentEList<TestPlan>(TestPlan.class, this, RegisterPackage.REGISTER__PLANS);
		}
		return plans;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Sample> getSamples() {
		if (samples == null) {
			samples = new EObjectContainmentEList<Sample>(Sample.class, this, RegisterPackage.REGISTER__SAMPLES);
		}
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Certificate> getCertificates() {
		if (certificates == null) {
			certificates = new EObjectContainmentEList<Certificate>(Certificate.class, this, RegisterPackage.REGISTER__CERTIFICATES);
		}
		return certificates;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case RegisterPackage.REGISTER__PLANS:
				return ((InternalEList<?>)getPlans()).basicRemove(otherEnd, msgs);
			case RegisterPackage.REGISTER__SAMPLES:
				return ((InternalEList<?>)getSamples()).basicRemove(otherEnd, msgs);
			case RegisterPackage.REGISTER__CERTIFICATES:
				return ((InternalEList<?>)getCertificates()).basicRemove(otherEnd, msgs);
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
			case RegisterPackage.REGISTER__PLANS:
				return getPlans();
			case RegisterPackage.REGISTER__SAMPLES:
				return getSamples();
			case RegisterPackage.REGISTER__CERTIFICATES:
				return getCertificates();
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
			case RegisterPackage.REGISTER__PLANS:
				getPlans().clear();
				getPlans().addAll((Collection<? extends TestPlan>)newValue);
				return;
			case RegisterPackage.REGISTER__SAMPLES:
				getSamples().clear();
				getSamples().addAll((Collection<? extends Sample>)newValue);
				return;
			case RegisterPackage.REGISTER__CERTIFICATES:
				getCertificates().clear();
				getCertificates().addAll((Collection<? extends Certificate>)newValue);
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
			case RegisterPackage.REGISTER__PLANS:
				getPlans().clear();
				return;
			case RegisterPackage.REGISTER__SAMPLES:
				getSamples().clear();
				return;
			case RegisterPackage.REGISTER__CERTIFICATES:
				getCertificates().clear();
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
			case RegisterPackage.REGISTER__PLANS:
				return plans != null && !plans.isEmpty();
			case RegisterPackage.REGISTER__SAMPLES:
				return samples != null && !samples.isEmpty();
			case RegisterPackage.REGISTER__CERTIFICATES:
				return certificates != null && !certificates.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //RegisterImpl
