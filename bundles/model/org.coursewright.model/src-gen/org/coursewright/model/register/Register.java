/**
 */
package org.coursewright.model.register;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Register</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Test plans, samples, results and certificates.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.Register#getPlans <em>Plans</em>}</li>
 *   <li>{@link org.coursewright.model.register.Register#getSamples <em>Samples</em>}</li>
 *   <li>{@link org.coursewright.model.register.Register#getCertificates <em>Certificates</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getRegister()
 * @model
 * @generated
 */
public interface Register extends EObject {
	/**
	 * Returns the value of the '<em><b>Plans</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.register.TestPlan}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is to be tested how often.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plans</em>' containment reference list.
	 * @see org.coursewright.model.register.RegisterPackage#getRegister_Plans()
	 * @model containment="true"
	 * @generated
	 */
	EList<TestPlan> getPlans();

	/**
	 * Returns the value of the '<em><b>Samples</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.register.Sample}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was taken.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Samples</em>' containment reference list.
	 * @see org.coursewright.model.register.RegisterPackage#getRegister_Samples()
	 * @model containment="true"
	 * @generated
	 */
	EList<Sample> getSamples();

	/**
	 * Returns the value of the '<em><b>Certificates</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.register.Certificate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What laboratories issued.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Certificates</em>' containment reference list.
	 * @see org.coursewright.model.register.RegisterPackage#getRegister_Certificates()
	 * @model containment="true"
	 * @generated
	 */
	EList<Certificate> getCertificates();

} // Register
