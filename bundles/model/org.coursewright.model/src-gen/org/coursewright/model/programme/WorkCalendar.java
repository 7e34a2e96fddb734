/**
 */
package org.coursewright.model.programme;

import java.time.LocalDate;
import java.time.LocalTime;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Work Calendar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Working days and hours.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.WorkCalendar#getWorkDays <em>Work Days</em>}</li>
 *   <li>{@link org.coursewright.model.programme.WorkCalendar#getStart <em>Start</em>}</li>
 *   <li>{@link org.coursewright.model.programme.WorkCalendar#getEnd <em>End</em>}</li>
 *   <li>{@link org.coursewright.model.programme.WorkCalendar#getDaysOff <em>Days Off</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getWorkCalendar()
 * @model
 * @generated
 */
public interface WorkCalendar extends Marked {
	/**
	 * Returns the value of the '<em><b>Work Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ISO 8601 day numbers, such as 12345.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Work Days</em>' attribute.
	 * @see #setWorkDays(String)
	 * @see org.coursewright.model.programme.ProgrammePackage#getWorkCalendar_WorkDays()
	 * @model
	 * @generated
	 */
	String getWorkDays();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.WorkCalendar#getWorkDays <em>Work Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Work Days</em>' attribute.
	 * @see #getWorkDays()
	 * @generated
	 */
	void setWorkDays(String value);

	/**
	 * Returns the value of the '<em><b>Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Work begins.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Start</em>' attribute.
	 * @see #setStart(LocalTime)
	 * @see org.coursewright.model.programme.ProgrammePackage#getWorkCalendar_Start()
	 * @model dataType="org.coursewright.model.types.Time"
	 * @generated
	 */
	LocalTime getStart();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.WorkCalendar#getStart <em>Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Start</em>' attribute.
	 * @see #getStart()
	 * @generated
	 */
	void setStart(LocalTime value);

	/**
	 * Returns the value of the '<em><b>End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Work ends.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>End</em>' attribute.
	 * @see #setEnd(LocalTime)
	 * @see org.coursewright.model.programme.ProgrammePackage#getWorkCalendar_End()
	 * @model dataType="org.coursewright.model.types.Time"
	 * @generated
	 */
	LocalTime getEnd();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.WorkCalendar#getEnd <em>End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End</em>' attribute.
	 * @see #getEnd()
	 * @generated
	 */
	void setEnd(LocalTime value);

	/**
	 * Returns the value of the '<em><b>Days Off</b></em>' attribute list.
	 * The list contents are of type {@link java.time.LocalDate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Single days without work.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Days Off</em>' attribute list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getWorkCalendar_DaysOff()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	EList<LocalDate> getDaysOff();

} // WorkCalendar
