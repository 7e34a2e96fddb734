/**
 */
package org.coursewright.model.programme;

import java.math.BigDecimal;

import org.coursewright.measure.Quantity;

import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.CrewType;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Activity</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece of work.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.Activity#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getFromCourse <em>From Course</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getToCourse <em>To Course</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getCrew <em>Crew</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getWorkHours <em>Work Hours</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getWeatherRule <em>Weather Rule</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Activity#getCalendar <em>Calendar</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getActivity()
 * @model
 * @generated
 */
public interface Activity extends Marked {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Walls</b></em>' reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Wall}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On which walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' reference list.
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_Walls()
	 * @model
	 * @generated
	 */
	EList<Wall> getWalls();

	/**
	 * Returns the value of the '<em><b>From Course</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First course, or 0 for none in particular.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From Course</em>' attribute.
	 * @see #setFromCourse(int)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_FromCourse()
	 * @model default="0"
	 * @generated
	 */
	int getFromCourse();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getFromCourse <em>From Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From Course</em>' attribute.
	 * @see #getFromCourse()
	 * @generated
	 */
	void setFromCourse(int value);

	/**
	 * Returns the value of the '<em><b>To Course</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Last course, or 0 for none in particular.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Course</em>' attribute.
	 * @see #setToCourse(int)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_ToCourse()
	 * @model default="0"
	 * @generated
	 */
	int getToCourse();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getToCourse <em>To Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Course</em>' attribute.
	 * @see #getToCourse()
	 * @generated
	 */
	void setToCourse(int value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much, where it does not follow from the walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Quantity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_Quantity()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getQuantity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Crew</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who does it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Crew</em>' reference.
	 * @see #setCrew(CrewType)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_Crew()
	 * @model
	 * @generated
	 */
	CrewType getCrew();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getCrew <em>Crew</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Crew</em>' reference.
	 * @see #getCrew()
	 * @generated
	 */
	void setCrew(CrewType value);

	/**
	 * Returns the value of the '<em><b>Work Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Own estimate of the duration in working hours, or unset to compute it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Work Hours</em>' attribute.
	 * @see #setWorkHours(BigDecimal)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_WorkHours()
	 * @model
	 * @generated
	 */
	BigDecimal getWorkHours();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getWorkHours <em>Work Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Work Hours</em>' attribute.
	 * @see #getWorkHours()
	 * @generated
	 */
	void setWorkHours(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Weather Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the rule that says when weather allows it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weather Rule</em>' attribute.
	 * @see #setWeatherRule(String)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_WeatherRule()
	 * @model
	 * @generated
	 */
	String getWeatherRule();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getWeatherRule <em>Weather Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weather Rule</em>' attribute.
	 * @see #getWeatherRule()
	 * @generated
	 */
	void setWeatherRule(String value);

	/**
	 * Returns the value of the '<em><b>Calendar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it can be done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calendar</em>' reference.
	 * @see #setCalendar(WorkCalendar)
	 * @see org.coursewright.model.programme.ProgrammePackage#getActivity_Calendar()
	 * @model
	 * @generated
	 */
	WorkCalendar getCalendar();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Activity#getCalendar <em>Calendar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calendar</em>' reference.
	 * @see #getCalendar()
	 * @generated
	 */
	void setCalendar(WorkCalendar value);

} // Activity
