/**
 */
package org.coursewright.model.register;

import java.time.LocalDate;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Certificate</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a laboratory issued.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.Certificate#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link org.coursewright.model.register.Certificate#getIssuedOn <em>Issued On</em>}</li>
 *   <li>{@link org.coursewright.model.register.Certificate#getFile <em>File</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getCertificate()
 * @model
 * @generated
 */
public interface Certificate extends Marked {
	/**
	 * Returns the value of the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whose.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Laboratory</em>' attribute.
	 * @see #setLaboratory(String)
	 * @see org.coursewright.model.register.RegisterPackage#getCertificate_Laboratory()
	 * @model
	 * @generated
	 */
	String getLaboratory();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Certificate#getLaboratory <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Laboratory</em>' attribute.
	 * @see #getLaboratory()
	 * @generated
	 */
	void setLaboratory(String value);

	/**
	 * Returns the value of the '<em><b>Issued On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Issued On</em>' attribute.
	 * @see #setIssuedOn(LocalDate)
	 * @see org.coursewright.model.register.RegisterPackage#getCertificate_IssuedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getIssuedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Certificate#getIssuedOn <em>Issued On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Issued On</em>' attribute.
	 * @see #getIssuedOn()
	 * @generated
	 */
	void setIssuedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is kept.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see org.coursewright.model.register.RegisterPackage#getCertificate_File()
	 * @model
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Certificate#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

} // Certificate
