/**
 */
package org.coursewright.model.programme.impl;

import java.time.LocalDate;
import java.time.LocalTime;

import java.util.Collection;

import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.programme.WorkCalendar;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Work Calendar</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getWorkDays <em>Work Days</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getStart <em>Start</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getEnd <em>End</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.WorkCalendarImpl#getDaysOff <em>Days Off</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WorkCalendarImpl extends MinimalEObjectImpl.Container implements WorkCalendar {
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
	 * The default value of the '{@link #getWorkDays() <em>Work Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkDays()
	 * @generated
	 * @ordered
	 */
	protected static final String WORK_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkDays() <em>Work Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkDays()
	 * @generated
	 * @ordered
	 */
	protected String workDays = WORK_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getStart() <em>Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStart()
	 * @generated
	 * @ordered
	 */
	protected static final LocalTime START_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStart() <em>Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStart()
	 * @generated
	 * @ordered
	 */
	protected LocalTime start = START_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnd() <em>End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnd()
	 * @generated
	 * @ordered
	 */
	protected static final LocalTime END_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnd() <em>End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnd()
	 * @generated
	 * @ordered
	 */
	protected LocalTime end = END_EDEFAULT;

	/**
	 * The cached value of the '{@link #getDaysOff() <em>Days Off</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysOff()
	 * @generated
	 * @ordered
	 */
	protected EList<LocalDate> daysOff;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WorkCalendarImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProgrammePackage.Literals.WORK_CALENDAR;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.WORK_CALENDAR__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.WORK_CALENDAR__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWorkDays() {
		return workDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkDays(String newWorkDays) {
		String oldWorkDays = workDays;
		workDays = newWorkDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.WORK_CALENDAR__WORK_DAYS, oldWorkDays, workDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getStart() {
		return start;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStart(LocalTime newStart) {
		LocalTime oldStart = start;
		start = newStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.WORK_CALENDAR__START, oldStart, start));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getEnd() {
		return end;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnd(LocalTime newEnd) {
		LocalTime oldEnd = end;
		end = newEnd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.WORK_CALENDAR__END, oldEnd, end));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LocalDate> getDaysOff() {
		if (daysOff == null) {
			daysOff = new EDataTypeUniqueEList<LocalDate>(LocalDate.class, this, ProgrammePackage.WORK_CALENDAR__DAYS_OFF);
		}
		return daysOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProgrammePackage.WORK_CALENDAR__MARK:
				return getMark();
			case ProgrammePackage.WORK_CALENDAR__NOTE:
				return getNote();
			case ProgrammePackage.WORK_CALENDAR__WORK_DAYS:
				return getWorkDays();
			case ProgrammePackage.WORK_CALENDAR__START:
				return getStart();
			case ProgrammePackage.WORK_CALENDAR__END:
				return getEnd();
			case ProgrammePackage.WORK_CALENDAR__DAYS_OFF:
				return getDaysOff();
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
			case ProgrammePackage.WORK_CALENDAR__MARK:
				setMark((String)newValue);
				return;
			case ProgrammePackage.WORK_CALENDAR__NOTE:
				setNote((String)newValue);
				return;
			case ProgrammePackage.WORK_CALENDAR__WORK_DAYS:
				setWorkDays((String)newValue);
				return;
			case ProgrammePackage.WORK_CALENDAR__START:
				setStart((LocalTime)newValue);
				return;
			case ProgrammePackage.WORK_CALENDAR__END:
				setEnd((LocalTime)newValue);
				return;
			case ProgrammePackage.WORK_CALENDAR__DAYS_OFF:
				getDaysOff().clear();
				getDaysOff().addAll((Collection<? extends LocalDate>)newValue);
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
			case ProgrammePackage.WORK_CALENDAR__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case ProgrammePackage.WORK_CALENDAR__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case ProgrammePackage.WORK_CALENDAR__WORK_DAYS:
				setWorkDays(WORK_DAYS_EDEFAULT);
				return;
			case ProgrammePackage.WORK_CALENDAR__START:
				setStart(START_EDEFAULT);
				return;
			case ProgrammePackage.WORK_CALENDAR__END:
				setEnd(END_EDEFAULT);
				return;
			case ProgrammePackage.WORK_CALENDAR__DAYS_OFF:
				getDaysOff().clear();
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
			case ProgrammePackage.WORK_CALENDAR__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case ProgrammePackage.WORK_CALENDAR__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case ProgrammePackage.WORK_CALENDAR__WORK_DAYS:
				return WORK_DAYS_EDEFAULT == null ? workDays != null : !WORK_DAYS_EDEFAULT.equals(workDays);
			case ProgrammePackage.WORK_CALENDAR__START:
				return START_EDEFAULT == null ? start != null : !START_EDEFAULT.equals(start);
			case ProgrammePackage.WORK_CALENDAR__END:
				return END_EDEFAULT == null ? end != null : !END_EDEFAULT.equals(end);
			case ProgrammePackage.WORK_CALENDAR__DAYS_OFF:
				return daysOff != null && !daysOff.isEmpty();
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
		result.append(", workDays: ");
		result.append(workDays);
		result.append(", start: ");
		result.append(start);
		result.append(", end: ");
		result.append(end);
		result.append(", daysOff: ");
		result.append(daysOff);
		result.append(')');
		return result.toString();
	}

} //WorkCalendarImpl
