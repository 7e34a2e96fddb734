/**
 */
package org.coursewright.model.programme;

import java.time.LocalDate;

import org.coursewright.measure.Quantity;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Progress</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was done by a date.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.Progress#getActivity <em>Activity</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Progress#getDate <em>Date</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Progress#getDone <em>Done</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Progress#isFinished <em>Finished</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getProgress()
 * @model
 * @generated
 */
public interface Progress extends EObject {
	/**
	 * Returns the value of the '<em><b>Activity</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of what.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Activity</em>' reference.
	 * @see #setActivity(Activity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgress_Activity()
	 * @model
	 * @generated
	 */
	Activity getActivity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Progress#getActivity <em>Activity</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Activity</em>' reference.
	 * @see #getActivity()
	 * @generated
	 */
	void setActivity(Activity value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By when.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgress_Date()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Progress#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much by then.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Done</em>' attribute.
	 * @see #setDone(Quantity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgress_Done()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getDone();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Progress#getDone <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Done</em>' attribute.
	 * @see #getDone()
	 * @generated
	 */
	void setDone(Quantity value);

	/**
	 * Returns the value of the '<em><b>Finished</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether nothing is left.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Finished</em>' attribute.
	 * @see #setFinished(boolean)
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgress_Finished()
	 * @model
	 * @generated
	 */
	boolean isFinished();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Progress#isFinished <em>Finished</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Finished</em>' attribute.
	 * @see #isFinished()
	 * @generated
	 */
	void setFinished(boolean value);

} // Progress
