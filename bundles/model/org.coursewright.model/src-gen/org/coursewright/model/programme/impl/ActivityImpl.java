/**
 */
package org.coursewright.model.programme.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.coursewright.measure.Quantity;

import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.CrewType;

import org.coursewright.model.programme.Activity;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.programme.WorkCalendar;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Activity</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getFromCourse <em>From Course</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getToCourse <em>To Course</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getCrew <em>Crew</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getWorkHours <em>Work Hours</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getWeatherRule <em>Weather Rule</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ActivityImpl#getCalendar <em>Calendar</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ActivityImpl extends MinimalEObjectImpl.Container implements Activity {
	/**
	 * The default value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected static final String MARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected String mark = MARK_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWalls() <em>Walls</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<Wall> walls;

	/**
	 * The default value of the '{@link #getFromCourse() <em>From Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromCourse()
	 * @generated
	 * @ordered
	 */
	protected static final int FROM_COURSE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getFromCourse() <em>From Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromCourse()
	 * @generated
	 * @ordered
	 */
	protected int fromCourse = FROM_COURSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getToCourse() <em>To Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToCourse()
	 * @generated
	 * @ordered
	 */
	protected static final int TO_COURSE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getToCourse() <em>To Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToCourse()
	 * @generated
	 * @ordered
	 */
	protected int toCourse = TO_COURSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity QUANTITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected Quantity quantity = QUANTITY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCrew() <em>Crew</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrew()
	 * @generated
	 * @ordered
	 */
	protected CrewType crew;

	/**
	 * The default value of the '{@link #getWorkHours() <em>Work Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkHours()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal WORK_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkHours() <em>Work Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkHours()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal workHours = WORK_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeatherRule() <em>Weather Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeatherRule()
	 * @generated
	 * @ordered
	 */
	protected static final String WEATHER_RULE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeatherRule() <em>Weather Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeatherRule()
	 * @generated
	 * @ordered
	 */
	protected String weatherRule = WEATHER_RULE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCalendar() <em>Calendar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalendar()
	 * @generated
	 * @ordered
	 */
	protected WorkCalendar calendar;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ActivityImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProgrammePackage.Literals.ACTIVITY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMark() {
		return mark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMark(String newMark) {
		String oldMark = mark;
		mark = newMark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__MARK, oldMark, mark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Wall> getWalls() {
		if (walls == null) {
			walls = new EObjectResolvingEList<Wall>(Wall.class, this, ProgrammePackage.ACTIVITY__WALLS);
		}
		return walls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFromCourse() {
		return fromCourse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFromCourse(int newFromCourse) {
		int oldFromCourse = fromCourse;
		fromCourse = newFromCourse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__FROM_COURSE, oldFromCourse, fromCourse));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getToCourse() {
		return toCourse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToCourse(int newToCourse) {
		int oldToCourse = toCourse;
		toCourse = newToCourse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__TO_COURSE, oldToCourse, toCourse));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(Quantity newQuantity) {
		Quantity oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__QUANTITY, oldQuantity, quantity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CrewType getCrew() {
		if (crew != null && crew.eIsProxy()) {
			InternalEObject oldCrew = (InternalEObject)crew;
			crew = (CrewType)eResolveProxy(oldCrew);
			if (crew != oldCrew) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProgrammePackage.ACTIVITY__CREW, oldCrew, crew));
			}
		}
		return crew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CrewType basicGetCrew() {
		return crew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrew(CrewType newCrew) {
		CrewType oldCrew = crew;
		crew = newCrew;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__CREW, oldCrew, crew));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getWorkHours() {
		return workHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkHours(BigDecimal newWorkHours) {
		BigDecimal oldWorkHours = workHours;
		workHours = newWorkHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__WORK_HOURS, oldWorkHours, workHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWeatherRule() {
		return weatherRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeatherRule(String newWeatherRule) {
		String oldWeatherRule = weatherRule;
		weatherRule = newWeatherRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__WEATHER_RULE, oldWeatherRule, weatherRule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WorkCalendar getCalendar() {
		if (calendar != null && calendar.eIsProxy()) {
			InternalEObject oldCalendar = (InternalEObject)calendar;
			calendar = (WorkCalendar)eResolveProxy(oldCalendar);
			if (calendar != oldCalendar) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProgrammePackage.ACTIVITY__CALENDAR, oldCalendar, calendar));
			}
		}
		return calendar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WorkCalendar basicGetCalendar() {
		return calendar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalendar(WorkCalendar newCalendar) {
		WorkCalendar oldCalendar = calendar;
		calendar = newCalendar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.ACTIVITY__CALENDAR, oldCalendar, calendar));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProgrammePackage.ACTIVITY__MARK:
				return getMark();
			case ProgrammePackage.ACTIVITY__NOTE:
				return getNote();
			case ProgrammePackage.ACTIVITY__NAME:
				return getName();
			case ProgrammePackage.ACTIVITY__WALLS:
				return getWalls();
			case ProgrammePackage.ACTIVITY__FROM_COURSE:
				return getFromCourse();
			case ProgrammePackage.ACTIVITY__TO_COURSE:
				return getToCourse();
			case ProgrammePackage.ACTIVITY__QUANTITY:
				return getQuantity();
			case ProgrammePackage.ACTIVITY__CREW:
				if (resolve) return getCrew();
				return basicGetCrew();
			case ProgrammePackage.ACTIVITY__WORK_HOURS:
				return getWorkHours();
			case ProgrammePackage.ACTIVITY__WEATHER_RULE:
				return getWeatherRule();
			case ProgrammePackage.ACTIVITY__CALENDAR:
				if (resolve) return getCalendar();
				return basicGetCalendar();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ProgrammePackage.ACTIVITY__MARK:
				setMark((String)newValue);
				return;
			case ProgrammePackage.ACTIVITY__NOTE:
				setNote((String)newValue);
				return;
			case ProgrammePackage.ACTIVITY__NAME:
				setName((String)newValue);
				return;
			case ProgrammePackage.ACTIVITY__WALLS:
				getWalls().clear();
				getWalls().addAll((Collection<? extends Wall>)newValue);
				return;
			case ProgrammePackage.ACTIVITY__FROM_COURSE:
				setFromCourse((Integer)newValue);
				return;
			case ProgrammePackage.ACTIVITY__TO_COURSE:
				setToCourse((Integer)newValue);
				return;
			case ProgrammePackage.ACTIVITY__QUANTITY:
				setQuantity((Quantity)newValue);
				return;
			case ProgrammePackage.ACTIVITY__CREW:
				setCrew((CrewType)newValue);
				return;
			case ProgrammePackage.ACTIVITY__WORK_HOURS:
				setWorkHours((BigDecimal)newValue);
				return;
			case ProgrammePackage.ACTIVITY__WEATHER_RULE:
				setWeatherRule((String)newValue);
				return;
			case ProgrammePackage.ACTIVITY__CALENDAR:
				setCalendar((WorkCalendar)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ProgrammePackage.ACTIVITY__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__WALLS:
				getWalls().clear();
				return;
			case ProgrammePackage.ACTIVITY__FROM_COURSE:
				setFromCourse(FROM_COURSE_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__TO_COURSE:
				setToCourse(TO_COURSE_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__CREW:
				setCrew((CrewType)null);
				return;
			case ProgrammePackage.ACTIVITY__WORK_HOURS:
				setWorkHours(WORK_HOURS_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__WEATHER_RULE:
				setWeatherRule(WEATHER_RULE_EDEFAULT);
				return;
			case ProgrammePackage.ACTIVITY__CALENDAR:
				setCalendar((WorkCalendar)null);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ProgrammePackage.ACTIVITY__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case ProgrammePackage.ACTIVITY__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case ProgrammePackage.ACTIVITY__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ProgrammePackage.ACTIVITY__WALLS:
				return walls != null && !walls.isEmpty();
			case ProgrammePackage.ACTIVITY__FROM_COURSE:
				return fromCourse != FROM_COURSE_EDEFAULT;
			case ProgrammePackage.ACTIVITY__TO_COURSE:
				return toCourse != TO_COURSE_EDEFAULT;
			case ProgrammePackage.ACTIVITY__QUANTITY:
				return QUANTITY_EDEFAULT == null ? quantity != null : !QUANTITY_EDEFAULT.equals(quantity);
			case ProgrammePackage.ACTIVITY__CREW:
				return crew != null;
			case ProgrammePackage.ACTIVITY__WORK_HOURS:
				return WORK_HOURS_EDEFAULT == null ? workHours != null : !WORK_HOURS_EDEFAULT.equals(workHours);
			case ProgrammePackage.ACTIVITY__WEATHER_RULE:
				return WEATHER_RULE_EDEFAULT == null ? weatherRule != null : !WEATHER_RULE_EDEFAULT.equals(weatherRule);
			case ProgrammePackage.ACTIVITY__CALENDAR:
				return calendar != null;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (mark: ");
		result.append(mark);
		result.append(", note: ");
		result.append(note);
		result.append(", name: ");
		result.append(name);
		result.append(", fromCourse: ");
		result.append(fromCourse);
		result.append(", toCourse: ");
		result.append(toCourse);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", workHours: ");
		result.append(workHours);
		result.append(", weatherRule: ");
		result.append(weatherRule);
		result.append(')');
		return result.toString();
	}

} //ActivityImpl
