/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pin</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A decision about one place in one course.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Pin#getCourse <em>Course</em>}</li>
 *   <li>{@link org.coursewright.model.building.Pin#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getPin()
 * @model abstract="true"
 * @generated
 */
public interface Pin extends EObject {
	/**
	 * Returns the value of the '<em><b>Course</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Counted from the base, the first is 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Course</em>' attribute.
	 * @see #setCourse(int)
	 * @see org.coursewright.model.building.BuildingPackage#getPin_Course()
	 * @model default="1"
	 * @generated
	 */
	int getCourse();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Pin#getCourse <em>Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Course</em>' attribute.
	 * @see #getCourse()
	 * @generated
	 */
	void setCourse(int value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A position inside the run, from the outer start face.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getPin_At()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getAt();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Pin#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Length value);

} // Pin
