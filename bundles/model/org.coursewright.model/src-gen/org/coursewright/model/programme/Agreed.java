/**
 */
package org.coursewright.model.programme;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Agreed</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Dates that were agreed for an activity.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.Agreed#getActivity <em>Activity</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Agreed#getStart <em>Start</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Agreed#getFinish <em>Finish</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Agreed#getOn <em>On</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getAgreed()
 * @model
 * @generated
 */
public interface Agreed extends EObject {
	/**
	 * Returns the value of the '<em><b>Activity</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For what.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Activity</em>' reference.
	 * @see #setActivity(Activity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getAgreed_Activity()
	 * @model
	 * @generated
	 */
	Activity getActivity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Agreed#getActivity <em>Activity</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Activity</em>' reference.
	 * @see #getActivity()
	 * @generated
	 */
	void setActivity(Activity value);

	/**
	 * Returns the value of the '<em><b>Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Agreed start.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Start</em>' attribute.
	 * @see #setStart(LocalDate)
	 * @see org.coursewright.model.programme.ProgrammePackage#getAgreed_Start()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getStart();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Agreed#getStart <em>Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Start</em>' attribute.
	 * @see #getStart()
	 * @generated
	 */
	void setStart(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Finish</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Agreed finish.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Finish</em>' attribute.
	 * @see #setFinish(LocalDate)
	 * @see org.coursewright.model.programme.ProgrammePackage#getAgreed_Finish()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getFinish();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Agreed#getFinish <em>Finish</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Finish</em>' attribute.
	 * @see #getFinish()
	 * @generated
	 */
	void setFinish(LocalDate value);

	/**
	 * Returns the value of the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was agreed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>On</em>' attribute.
	 * @see #setOn(LocalDate)
	 * @see org.coursewright.model.programme.ProgrammePackage#getAgreed_On()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Agreed#getOn <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On</em>' attribute.
	 * @see #getOn()
	 * @generated
	 */
	void setOn(LocalDate value);

} // Agreed
