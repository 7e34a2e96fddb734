/**
 */
package org.coursewright.model.programme;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Programme</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Activities, their order, and what was agreed and done.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.Programme#getActivities <em>Activities</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Programme#getLinks <em>Links</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Programme#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Programme#getProgress <em>Progress</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Programme#getAgreed <em>Agreed</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme()
 * @model
 * @generated
 */
public interface Programme extends EObject {
	/**
	 * Returns the value of the '<em><b>Activities</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.programme.Activity}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Activities</em>' containment reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme_Activities()
	 * @model containment="true"
	 * @generated
	 */
	EList<Activity> getActivities();

	/**
	 * Returns the value of the '<em><b>Links</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.programme.Link}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What waits for what.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Links</em>' containment reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme_Links()
	 * @model containment="true"
	 * @generated
	 */
	EList<Link> getLinks();

	/**
	 * Returns the value of the '<em><b>Calendars</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.programme.WorkCalendar}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When work is possible.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calendars</em>' containment reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme_Calendars()
	 * @model containment="true"
	 * @generated
	 */
	EList<WorkCalendar> getCalendars();

	/**
	 * Returns the value of the '<em><b>Progress</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.programme.Progress}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was done when.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Progress</em>' containment reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme_Progress()
	 * @model containment="true"
	 * @generated
	 */
	EList<Progress> getProgress();

	/**
	 * Returns the value of the '<em><b>Agreed</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.programme.Agreed}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Dates that were agreed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Agreed</em>' containment reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getProgramme_Agreed()
	 * @model containment="true"
	 * @generated
	 */
	EList<Agreed> getAgreed();

} // Programme
