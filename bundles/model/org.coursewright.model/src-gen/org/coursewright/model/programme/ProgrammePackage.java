/**
 */
package org.coursewright.model.programme;

import org.coursewright.model.project.ProjectPackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Work in time.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.programme.ProgrammeFactory
 * @model kind="package"
 * @generated
 */
public interface ProgrammePackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "programme";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/programme";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "programme";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ProgrammePackage eINSTANCE = org.coursewright.model.programme.impl.ProgrammePackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.ProgrammeImpl <em>Programme</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.ProgrammeImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getProgramme()
	 * @generated
	 */
	int PROGRAMME = 0;

	/**
	 * The feature id for the '<em><b>Activities</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME__ACTIVITIES = 0;

	/**
	 * The feature id for the '<em><b>Links</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME__LINKS = 1;

	/**
	 * The feature id for the '<em><b>Calendars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME__CALENDARS = 2;

	/**
	 * The feature id for the '<em><b>Progress</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME__PROGRESS = 3;

	/**
	 * The feature id for the '<em><b>Agreed</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME__AGREED = 4;

	/**
	 * The number of structural features of the '<em>Programme</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Programme</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRAMME_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.ActivityImpl <em>Activity</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.ActivityImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getActivity()
	 * @generated
	 */
	int ACTIVITY = 1;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__NAME = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Walls</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__WALLS = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>From Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__FROM_COURSE = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>To Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__TO_COURSE = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__QUANTITY = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Crew</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__CREW = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Work Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__WORK_HOURS = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Weather Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__WEATHER_RULE = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Calendar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY__CALENDAR = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Activity</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Activity</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACTIVITY_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.LinkImpl <em>Link</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.LinkImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLink()
	 * @generated
	 */
	int LINK = 2;

	/**
	 * The feature id for the '<em><b>Predecessor</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK__PREDECESSOR = 0;

	/**
	 * The feature id for the '<em><b>Successor</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK__SUCCESSOR = 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK__KIND = 2;

	/**
	 * The feature id for the '<em><b>Lag Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK__LAG_HOURS = 3;

	/**
	 * The feature id for the '<em><b>Lag Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK__LAG_KIND = 4;

	/**
	 * The number of structural features of the '<em>Link</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Link</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LINK_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.WorkCalendarImpl <em>Work Calendar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.WorkCalendarImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getWorkCalendar()
	 * @generated
	 */
	int WORK_CALENDAR = 3;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Work Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__WORK_DAYS = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__START = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__END = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Days Off</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR__DAYS_OFF = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Work Calendar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Work Calendar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WORK_CALENDAR_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.ProgressImpl <em>Progress</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.ProgressImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getProgress()
	 * @generated
	 */
	int PROGRESS = 4;

	/**
	 * The feature id for the '<em><b>Activity</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS__ACTIVITY = 0;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS__DATE = 1;

	/**
	 * The feature id for the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS__DONE = 2;

	/**
	 * The feature id for the '<em><b>Finished</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS__FINISHED = 3;

	/**
	 * The number of structural features of the '<em>Progress</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Progress</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROGRESS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.impl.AgreedImpl <em>Agreed</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.impl.AgreedImpl
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getAgreed()
	 * @generated
	 */
	int AGREED = 5;

	/**
	 * The feature id for the '<em><b>Activity</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED__ACTIVITY = 0;

	/**
	 * The feature id for the '<em><b>Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED__START = 1;

	/**
	 * The feature id for the '<em><b>Finish</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED__FINISH = 2;

	/**
	 * The feature id for the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED__ON = 3;

	/**
	 * The number of structural features of the '<em>Agreed</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED_FEATURE_COUNT = 4;

	/**
	 * The number of operations of the '<em>Agreed</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AGREED_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.LinkKind <em>Link Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.LinkKind
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLinkKind()
	 * @generated
	 */
	int LINK_KIND = 6;

	/**
	 * The meta object id for the '{@link org.coursewright.model.programme.LagKind <em>Lag Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.programme.LagKind
	 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLagKind()
	 * @generated
	 */
	int LAG_KIND = 7;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.Programme <em>Programme</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Programme</em>'.
	 * @see org.coursewright.model.programme.Programme
	 * @generated
	 */
	EClass getProgramme();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.programme.Programme#getActivities <em>Activities</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Activities</em>'.
	 * @see org.coursewright.model.programme.Programme#getActivities()
	 * @see #getProgramme()
	 * @generated
	 */
	EReference getProgramme_Activities();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.programme.Programme#getLinks <em>Links</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Links</em>'.
	 * @see org.coursewright.model.programme.Programme#getLinks()
	 * @see #getProgramme()
	 * @generated
	 */
	EReference getProgramme_Links();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.programme.Programme#getCalendars <em>Calendars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Calendars</em>'.
	 * @see org.coursewright.model.programme.Programme#getCalendars()
	 * @see #getProgramme()
	 * @generated
	 */
	EReference getProgramme_Calendars();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.programme.Programme#getProgress <em>Progress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Progress</em>'.
	 * @see org.coursewright.model.programme.Programme#getProgress()
	 * @see #getProgramme()
	 * @generated
	 */
	EReference getProgramme_Progress();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.programme.Programme#getAgreed <em>Agreed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Agreed</em>'.
	 * @see org.coursewright.model.programme.Programme#getAgreed()
	 * @see #getProgramme()
	 * @generated
	 */
	EReference getProgramme_Agreed();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.Activity <em>Activity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Activity</em>'.
	 * @see org.coursewright.model.programme.Activity
	 * @generated
	 */
	EClass getActivity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.coursewright.model.programme.Activity#getName()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_Name();

	/**
	 * Returns the meta object for the reference list '{@link org.coursewright.model.programme.Activity#getWalls <em>Walls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Walls</em>'.
	 * @see org.coursewright.model.programme.Activity#getWalls()
	 * @see #getActivity()
	 * @generated
	 */
	EReference getActivity_Walls();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getFromCourse <em>From Course</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From Course</em>'.
	 * @see org.coursewright.model.programme.Activity#getFromCourse()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_FromCourse();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getToCourse <em>To Course</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Course</em>'.
	 * @see org.coursewright.model.programme.Activity#getToCourse()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_ToCourse();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.coursewright.model.programme.Activity#getQuantity()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_Quantity();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Activity#getCrew <em>Crew</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Crew</em>'.
	 * @see org.coursewright.model.programme.Activity#getCrew()
	 * @see #getActivity()
	 * @generated
	 */
	EReference getActivity_Crew();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getWorkHours <em>Work Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Work Hours</em>'.
	 * @see org.coursewright.model.programme.Activity#getWorkHours()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_WorkHours();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Activity#getWeatherRule <em>Weather Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weather Rule</em>'.
	 * @see org.coursewright.model.programme.Activity#getWeatherRule()
	 * @see #getActivity()
	 * @generated
	 */
	EAttribute getActivity_WeatherRule();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Activity#getCalendar <em>Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Calendar</em>'.
	 * @see org.coursewright.model.programme.Activity#getCalendar()
	 * @see #getActivity()
	 * @generated
	 */
	EReference getActivity_Calendar();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.Link <em>Link</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Link</em>'.
	 * @see org.coursewright.model.programme.Link
	 * @generated
	 */
	EClass getLink();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Link#getPredecessor <em>Predecessor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Predecessor</em>'.
	 * @see org.coursewright.model.programme.Link#getPredecessor()
	 * @see #getLink()
	 * @generated
	 */
	EReference getLink_Predecessor();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Link#getSuccessor <em>Successor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Successor</em>'.
	 * @see org.coursewright.model.programme.Link#getSuccessor()
	 * @see #getLink()
	 * @generated
	 */
	EReference getLink_Successor();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Link#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.coursewright.model.programme.Link#getKind()
	 * @see #getLink()
	 * @generated
	 */
	EAttribute getLink_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Link#getLagHours <em>Lag Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lag Hours</em>'.
	 * @see org.coursewright.model.programme.Link#getLagHours()
	 * @see #getLink()
	 * @generated
	 */
	EAttribute getLink_LagHours();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Link#getLagKind <em>Lag Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lag Kind</em>'.
	 * @see org.coursewright.model.programme.Link#getLagKind()
	 * @see #getLink()
	 * @generated
	 */
	EAttribute getLink_LagKind();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.WorkCalendar <em>Work Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Work Calendar</em>'.
	 * @see org.coursewright.model.programme.WorkCalendar
	 * @generated
	 */
	EClass getWorkCalendar();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.WorkCalendar#getWorkDays <em>Work Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Work Days</em>'.
	 * @see org.coursewright.model.programme.WorkCalendar#getWorkDays()
	 * @see #getWorkCalendar()
	 * @generated
	 */
	EAttribute getWorkCalendar_WorkDays();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.WorkCalendar#getStart <em>Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start</em>'.
	 * @see org.coursewright.model.programme.WorkCalendar#getStart()
	 * @see #getWorkCalendar()
	 * @generated
	 */
	EAttribute getWorkCalendar_Start();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.WorkCalendar#getEnd <em>End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End</em>'.
	 * @see org.coursewright.model.programme.WorkCalendar#getEnd()
	 * @see #getWorkCalendar()
	 * @generated
	 */
	EAttribute getWorkCalendar_End();

	/**
	 * Returns the meta object for the attribute list '{@link org.coursewright.model.programme.WorkCalendar#getDaysOff <em>Days Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Days Off</em>'.
	 * @see org.coursewright.model.programme.WorkCalendar#getDaysOff()
	 * @see #getWorkCalendar()
	 * @generated
	 */
	EAttribute getWorkCalendar_DaysOff();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.Progress <em>Progress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Progress</em>'.
	 * @see org.coursewright.model.programme.Progress
	 * @generated
	 */
	EClass getProgress();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Progress#getActivity <em>Activity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Activity</em>'.
	 * @see org.coursewright.model.programme.Progress#getActivity()
	 * @see #getProgress()
	 * @generated
	 */
	EReference getProgress_Activity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Progress#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.coursewright.model.programme.Progress#getDate()
	 * @see #getProgress()
	 * @generated
	 */
	EAttribute getProgress_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Progress#getDone <em>Done</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Done</em>'.
	 * @see org.coursewright.model.programme.Progress#getDone()
	 * @see #getProgress()
	 * @generated
	 */
	EAttribute getProgress_Done();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Progress#isFinished <em>Finished</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Finished</em>'.
	 * @see org.coursewright.model.programme.Progress#isFinished()
	 * @see #getProgress()
	 * @generated
	 */
	EAttribute getProgress_Finished();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.programme.Agreed <em>Agreed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Agreed</em>'.
	 * @see org.coursewright.model.programme.Agreed
	 * @generated
	 */
	EClass getAgreed();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.programme.Agreed#getActivity <em>Activity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Activity</em>'.
	 * @see org.coursewright.model.programme.Agreed#getActivity()
	 * @see #getAgreed()
	 * @generated
	 */
	EReference getAgreed_Activity();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Agreed#getStart <em>Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start</em>'.
	 * @see org.coursewright.model.programme.Agreed#getStart()
	 * @see #getAgreed()
	 * @generated
	 */
	EAttribute getAgreed_Start();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Agreed#getFinish <em>Finish</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Finish</em>'.
	 * @see org.coursewright.model.programme.Agreed#getFinish()
	 * @see #getAgreed()
	 * @generated
	 */
	EAttribute getAgreed_Finish();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.programme.Agreed#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On</em>'.
	 * @see org.coursewright.model.programme.Agreed#getOn()
	 * @see #getAgreed()
	 * @generated
	 */
	EAttribute getAgreed_On();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.programme.LinkKind <em>Link Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Link Kind</em>'.
	 * @see org.coursewright.model.programme.LinkKind
	 * @generated
	 */
	EEnum getLinkKind();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.programme.LagKind <em>Lag Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lag Kind</em>'.
	 * @see org.coursewright.model.programme.LagKind
	 * @generated
	 */
	EEnum getLagKind();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ProgrammeFactory getProgrammeFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.ProgrammeImpl <em>Programme</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.ProgrammeImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getProgramme()
		 * @generated
		 */
		EClass PROGRAMME = eINSTANCE.getProgramme();

		/**
		 * The meta object literal for the '<em><b>Activities</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRAMME__ACTIVITIES = eINSTANCE.getProgramme_Activities();

		/**
		 * The meta object literal for the '<em><b>Links</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRAMME__LINKS = eINSTANCE.getProgramme_Links();

		/**
		 * The meta object literal for the '<em><b>Calendars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRAMME__CALENDARS = eINSTANCE.getProgramme_Calendars();

		/**
		 * The meta object literal for the '<em><b>Progress</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRAMME__PROGRESS = eINSTANCE.getProgramme_Progress();

		/**
		 * The meta object literal for the '<em><b>Agreed</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRAMME__AGREED = eINSTANCE.getProgramme_Agreed();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.ActivityImpl <em>Activity</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.ActivityImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getActivity()
		 * @generated
		 */
		EClass ACTIVITY = eINSTANCE.getActivity();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__NAME = eINSTANCE.getActivity_Name();

		/**
		 * The meta object literal for the '<em><b>Walls</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACTIVITY__WALLS = eINSTANCE.getActivity_Walls();

		/**
		 * The meta object literal for the '<em><b>From Course</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__FROM_COURSE = eINSTANCE.getActivity_FromCourse();

		/**
		 * The meta object literal for the '<em><b>To Course</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__TO_COURSE = eINSTANCE.getActivity_ToCourse();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__QUANTITY = eINSTANCE.getActivity_Quantity();

		/**
		 * The meta object literal for the '<em><b>Crew</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACTIVITY__CREW = eINSTANCE.getActivity_Crew();

		/**
		 * The meta object literal for the '<em><b>Work Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__WORK_HOURS = eINSTANCE.getActivity_WorkHours();

		/**
		 * The meta object literal for the '<em><b>Weather Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACTIVITY__WEATHER_RULE = eINSTANCE.getActivity_WeatherRule();

		/**
		 * The meta object literal for the '<em><b>Calendar</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACTIVITY__CALENDAR = eINSTANCE.getActivity_Calendar();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.LinkImpl <em>Link</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.LinkImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLink()
		 * @generated
		 */
		EClass LINK = eINSTANCE.getLink();

		/**
		 * The meta object literal for the '<em><b>Predecessor</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LINK__PREDECESSOR = eINSTANCE.getLink_Predecessor();

		/**
		 * The meta object literal for the '<em><b>Successor</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LINK__SUCCESSOR = eINSTANCE.getLink_Successor();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINK__KIND = eINSTANCE.getLink_Kind();

		/**
		 * The meta object literal for the '<em><b>Lag Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINK__LAG_HOURS = eINSTANCE.getLink_LagHours();

		/**
		 * The meta object literal for the '<em><b>Lag Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LINK__LAG_KIND = eINSTANCE.getLink_LagKind();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.WorkCalendarImpl <em>Work Calendar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.WorkCalendarImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getWorkCalendar()
		 * @generated
		 */
		EClass WORK_CALENDAR = eINSTANCE.getWorkCalendar();

		/**
		 * The meta object literal for the '<em><b>Work Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_CALENDAR__WORK_DAYS = eINSTANCE.getWorkCalendar_WorkDays();

		/**
		 * The meta object literal for the '<em><b>Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_CALENDAR__START = eINSTANCE.getWorkCalendar_Start();

		/**
		 * The meta object literal for the '<em><b>End</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_CALENDAR__END = eINSTANCE.getWorkCalendar_End();

		/**
		 * The meta object literal for the '<em><b>Days Off</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WORK_CALENDAR__DAYS_OFF = eINSTANCE.getWorkCalendar_DaysOff();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.ProgressImpl <em>Progress</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.ProgressImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getProgress()
		 * @generated
		 */
		EClass PROGRESS = eINSTANCE.getProgress();

		/**
		 * The meta object literal for the '<em><b>Activity</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROGRESS__ACTIVITY = eINSTANCE.getProgress_Activity();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROGRESS__DATE = eINSTANCE.getProgress_Date();

		/**
		 * The meta object literal for the '<em><b>Done</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROGRESS__DONE = eINSTANCE.getProgress_Done();

		/**
		 * The meta object literal for the '<em><b>Finished</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROGRESS__FINISHED = eINSTANCE.getProgress_Finished();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.impl.AgreedImpl <em>Agreed</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.impl.AgreedImpl
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getAgreed()
		 * @generated
		 */
		EClass AGREED = eINSTANCE.getAgreed();

		/**
		 * The meta object literal for the '<em><b>Activity</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference AGREED__ACTIVITY = eINSTANCE.getAgreed_Activity();

		/**
		 * The meta object literal for the '<em><b>Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGREED__START = eINSTANCE.getAgreed_Start();

		/**
		 * The meta object literal for the '<em><b>Finish</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGREED__FINISH = eINSTANCE.getAgreed_Finish();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AGREED__ON = eINSTANCE.getAgreed_On();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.LinkKind <em>Link Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.LinkKind
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLinkKind()
		 * @generated
		 */
		EEnum LINK_KIND = eINSTANCE.getLinkKind();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.programme.LagKind <em>Lag Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.programme.LagKind
		 * @see org.coursewright.model.programme.impl.ProgrammePackageImpl#getLagKind()
		 * @generated
		 */
		EEnum LAG_KIND = eINSTANCE.getLagKind();

	}

} //ProgrammePackage
