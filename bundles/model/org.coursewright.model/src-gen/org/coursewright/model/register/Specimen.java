/**
 */
package org.coursewright.model.register;

import org.coursewright.measure.Length;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Specimen</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One piece that is tested.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.Specimen#getLength <em>Length</em>}</li>
 *   <li>{@link org.coursewright.model.register.Specimen#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.register.Specimen#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.register.Specimen#getResults <em>Results</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getSpecimen()
 * @model
 * @generated
 */
public interface Specimen extends Marked {
	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see org.coursewright.model.register.RegisterPackage#getSpecimen_Length()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Specimen#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see org.coursewright.model.register.RegisterPackage#getSpecimen_Width()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Specimen#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.register.RegisterPackage#getSpecimen_Height()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Specimen#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Results</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.register.Result}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Results</em>' containment reference list.
	 * @see org.coursewright.model.register.RegisterPackage#getSpecimen_Results()
	 * @model containment="true"
	 * @generated
	 */
	EList<Result> getResults();

} // Specimen
