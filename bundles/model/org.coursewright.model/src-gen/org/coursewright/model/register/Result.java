/**
 */
package org.coursewright.model.register;

import java.time.LocalDate;

import org.coursewright.measure.Quantity;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Result</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One finding of a test.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.Result#getProperty <em>Property</em>}</li>
 *   <li>{@link org.coursewright.model.register.Result#getValue <em>Value</em>}</li>
 *   <li>{@link org.coursewright.model.register.Result#getTestedOn <em>Tested On</em>}</li>
 *   <li>{@link org.coursewright.model.register.Result#getCertificate <em>Certificate</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getResult()
 * @model
 * @generated
 */
public interface Result extends EObject {
	/**
	 * Returns the value of the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Property</em>' attribute.
	 * @see #setProperty(String)
	 * @see org.coursewright.model.register.RegisterPackage#getResult_Property()
	 * @model
	 * @generated
	 */
	String getProperty();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Result#getProperty <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Property</em>' attribute.
	 * @see #getProperty()
	 * @generated
	 */
	void setProperty(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Quantity)
	 * @see org.coursewright.model.register.RegisterPackage#getResult_Value()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getValue();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Result#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Quantity value);

	/**
	 * Returns the value of the '<em><b>Tested On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tested On</em>' attribute.
	 * @see #setTestedOn(LocalDate)
	 * @see org.coursewright.model.register.RegisterPackage#getResult_TestedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getTestedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Result#getTestedOn <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tested On</em>' attribute.
	 * @see #getTestedOn()
	 * @generated
	 */
	void setTestedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Certificate</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is attested.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Certificate</em>' reference.
	 * @see #setCertificate(Certificate)
	 * @see org.coursewright.model.register.RegisterPackage#getResult_Certificate()
	 * @model
	 * @generated
	 */
	Certificate getCertificate();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Result#getCertificate <em>Certificate</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Certificate</em>' reference.
	 * @see #getCertificate()
	 * @generated
	 */
	void setCertificate(Certificate value);

} // Result
