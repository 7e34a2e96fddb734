/**
 */
package org.coursewright.model.register.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.register.Sample;
import org.coursewright.model.register.Specimen;
import org.coursewright.model.register.TestPlan;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sample</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getTakenOn <em>Taken On</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.SampleImpl#getSpecimens <em>Specimens</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SampleImpl extends MinimalEObjectImpl.Container implements Sample {
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
	 * The cached value of the '{@link #getPlan() <em>Plan</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlan()
	 * @generated
	 * @ordered
	 */
	protected TestPlan plan;

	/**
	 * The default value of the '{@link #getTakenOn() <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakenOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate TAKEN_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTakenOn() <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakenOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate takenOn = TAKEN_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final String PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected String place = PLACE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSpecimens() <em>Specimens</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimens()
	 * @generated
	 * @ordered
	 */
	protected EList<Specimen> specimens;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SampleImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return RegisterPackage.Literals.SAMPLE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.SAMPLE__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.SAMPLE__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestPlan getPlan() {
		if (plan != null && plan.eIsProxy()) {
			InternalEObject oldPlan = (InternalEObject)plan;
			plan = (TestPlan)eResolveProxy(oldPlan);
			if (plan != oldPlan) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, RegisterPackage.SAMPLE__PLAN, oldPlan, plan));
			}
		}
		return plan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TestPlan basicGetPlan() {
		return plan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlan(TestPlan newPlan) {
		TestPlan oldPlan = plan;
		plan = newPlan;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.SAMPLE__PLAN, oldPlan, plan));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getTakenOn() {
		return takenOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTakenOn(LocalDate newTakenOn) {
		LocalDate oldTakenOn = takenOn;
		takenOn = newTakenOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.SAMPLE__TAKEN_ON, oldTakenOn, takenOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(String newPlace) {
		String oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.SAMPLE__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Specimen> getSpecimens() {
		if (specimens == null) {
			specimens = new EObjectContainmentEList<Specimen>(Specimen.class, this, RegisterPackage.SAMPLE__SPECIMENS);
		}
		return specimens;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case RegisterPackage.SAMPLE__SPECIMENS:
				return ((InternalEList<?>)getSpecimens()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case RegisterPackage.SAMPLE__MARK:
				return getMark();
			case RegisterPackage.SAMPLE__NOTE:
				return getNote();
			case RegisterPackage.SAMPLE__PLAN:
				if (resolve) return getPlan();
				return basicGetPlan();
			case RegisterPackage.SAMPLE__TAKEN_ON:
				return getTakenOn();
			case RegisterPackage.SAMPLE__PLACE:
				return getPlace();
			case RegisterPackage.SAMPLE__SPECIMENS:
				return getSpecimens();
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
			case RegisterPackage.SAMPLE__MARK:
				setMark((String)newValue);
				return;
			case RegisterPackage.SAMPLE__NOTE:
				setNote((String)newValue);
				return;
			case RegisterPackage.SAMPLE__PLAN:
				setPlan((TestPlan)newValue);
				return;
			case RegisterPackage.SAMPLE__TAKEN_ON:
				setTakenOn((LocalDate)newValue);
				return;
			case RegisterPackage.SAMPLE__PLACE:
				setPlace((String)newValue);
				return;
			case RegisterPackage.SAMPLE__SPECIMENS:
				getSpecimens().clear();
				getSpecimens().addAll((Collection<? extends Specimen>)newValue);
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
			case RegisterPackage.SAMPLE__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case RegisterPackage.SAMPLE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case RegisterPackage.SAMPLE__PLAN:
				setPlan((TestPlan)null);
				return;
			case RegisterPackage.SAMPLE__TAKEN_ON:
				setTakenOn(TAKEN_ON_EDEFAULT);
				return;
			case RegisterPackage.SAMPLE__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case RegisterPackage.SAMPLE__SPECIMENS:
				getSpecimens().clear();
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
			case RegisterPackage.SAMPLE__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case RegisterPackage.SAMPLE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case RegisterPackage.SAMPLE__PLAN:
				return plan != null;
			case RegisterPackage.SAMPLE__TAKEN_ON:
				return TAKEN_ON_EDEFAULT == null ? takenOn != null : !TAKEN_ON_EDEFAULT.equals(takenOn);
			case RegisterPackage.SAMPLE__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
			case RegisterPackage.SAMPLE__SPECIMENS:
				return specimens != null && !specimens.isEmpty();
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
		result.append(", takenOn: ");
		result.append(takenOn);
		result.append(", place: ");
		result.append(place);
		result.append(')');
		return result.toString();
	}

} //SampleImpl
