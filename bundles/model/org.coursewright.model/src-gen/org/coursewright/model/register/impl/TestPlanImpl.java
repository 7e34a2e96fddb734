/**
 */
package org.coursewright.model.register.impl;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.register.TestPlan;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Test Plan</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getProperty <em>Property</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getEvery <em>Every</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getSpecimens <em>Specimens</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getAgeDays <em>Age Days</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.TestPlanImpl#getMix <em>Mix</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TestPlanImpl extends MinimalEObjectImpl.Container implements TestPlan {
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
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final String METHOD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected String method = METHOD_EDEFAULT;

	/**
	 * The default value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected static final String PROPERTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected String property = PROPERTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getEvery() <em>Every</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvery()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity EVERY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEvery() <em>Every</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvery()
	 * @generated
	 * @ordered
	 */
	protected Quantity every = EVERY_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecimens() <em>Specimens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimens()
	 * @generated
	 * @ordered
	 */
	protected static final int SPECIMENS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getSpecimens() <em>Specimens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimens()
	 * @generated
	 * @ordered
	 */
	protected int specimens = SPECIMENS_EDEFAULT;

	/**
	 * The default value of the '{@link #getAgeDays() <em>Age Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeDays()
	 * @generated
	 * @ordered
	 */
	protected static final int AGE_DAYS_EDEFAULT = 28;

	/**
	 * The cached value of the '{@link #getAgeDays() <em>Age Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeDays()
	 * @generated
	 * @ordered
	 */
	protected int ageDays = AGE_DAYS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getUnitType() <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitType()
	 * @generated
	 * @ordered
	 */
	protected UnitType unitType;

	/**
	 * The cached value of the '{@link #getMix() <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMix()
	 * @generated
	 * @ordered
	 */
	protected MixDesign mix;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TestPlanImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return RegisterPackage.Literals.TEST_PLAN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(String newMethod) {
		String oldMethod = method;
		method = newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__METHOD, oldMethod, method));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProperty() {
		return property;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProperty(String newProperty) {
		String oldProperty = property;
		property = newProperty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__PROPERTY, oldProperty, property));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEvery() {
		return every;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEvery(Quantity newEvery) {
		Quantity oldEvery = every;
		every = newEvery;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__EVERY, oldEvery, every));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSpecimens() {
		return specimens;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecimens(int newSpecimens) {
		int oldSpecimens = specimens;
		specimens = newSpecimens;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__SPECIMENS, oldSpecimens, specimens));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getAgeDays() {
		return ageDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAgeDays(int newAgeDays) {
		int oldAgeDays = ageDays;
		ageDays = newAgeDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__AGE_DAYS, oldAgeDays, ageDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitType getUnitType() {
		if (unitType != null && unitType.eIsProxy()) {
			InternalEObject oldUnitType = (InternalEObject)unitType;
			unitType = (UnitType)eResolveProxy(oldUnitType);
			if (unitType != oldUnitType) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, RegisterPackage.TEST_PLAN__UNIT_TYPE, oldUnitType, unitType));
			}
		}
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public UnitType basicGetUnitType() {
		return unitType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitType(UnitType newUnitType) {
		UnitType oldUnitType = unitType;
		unitType = newUnitType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__UNIT_TYPE, oldUnitType, unitType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixDesign getMix() {
		if (mix != null && mix.eIsProxy()) {
			InternalEObject oldMix = (InternalEObject)mix;
			mix = (MixDesign)eResolveProxy(oldMix);
			if (mix != oldMix) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, RegisterPackage.TEST_PLAN__MIX, oldMix, mix));
			}
		}
		return mix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MixDesign basicGetMix() {
		return mix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMix(MixDesign newMix) {
		MixDesign oldMix = mix;
		mix = newMix;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.TEST_PLAN__MIX, oldMix, mix));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case RegisterPackage.TEST_PLAN__MARK:
				return getMark();
			case RegisterPackage.TEST_PLAN__NOTE:
				return getNote();
			case RegisterPackage.TEST_PLAN__METHOD:
				return getMethod();
			case RegisterPackage.TEST_PLAN__PROPERTY:
				return getProperty();
			case RegisterPackage.TEST_PLAN__EVERY:
				return getEvery();
			case RegisterPackage.TEST_PLAN__SPECIMENS:
				return getSpecimens();
			case RegisterPackage.TEST_PLAN__AGE_DAYS:
				return getAgeDays();
			case RegisterPackage.TEST_PLAN__UNIT_TYPE:
				if (resolve) return getUnitType();
				return basicGetUnitType();
			case RegisterPackage.TEST_PLAN__MIX:
				if (resolve) return getMix();
				return basicGetMix();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case RegisterPackage.TEST_PLAN__MARK:
				setMark((String)newValue);
				return;
			case RegisterPackage.TEST_PLAN__NOTE:
				setNote((String)newValue);
				return;
			case RegisterPackage.TEST_PLAN__METHOD:
				setMethod((String)newValue);
				return;
			case RegisterPackage.TEST_PLAN__PROPERTY:
				setProperty((String)newValue);
				return;
			case RegisterPackage.TEST_PLAN__EVERY:
				setEvery((Quantity)newValue);
				return;
			case RegisterPackage.TEST_PLAN__SPECIMENS:
				setSpecimens((Integer)newValue);
				return;
			case RegisterPackage.TEST_PLAN__AGE_DAYS:
				setAgeDays((Integer)newValue);
				return;
			case RegisterPackage.TEST_PLAN__UNIT_TYPE:
				setUnitType((UnitType)newValue);
				return;
			case RegisterPackage.TEST_PLAN__MIX:
				setMix((MixDesign)newValue);
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
			case RegisterPackage.TEST_PLAN__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__PROPERTY:
				setProperty(PROPERTY_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__EVERY:
				setEvery(EVERY_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__SPECIMENS:
				setSpecimens(SPECIMENS_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__AGE_DAYS:
				setAgeDays(AGE_DAYS_EDEFAULT);
				return;
			case RegisterPackage.TEST_PLAN__UNIT_TYPE:
				setUnitType((UnitType)null);
				return;
			case RegisterPackage.TEST_PLAN__MIX:
				setMix((MixDesign)null);
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
			case RegisterPackage.TEST_PLAN__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case RegisterPackage.TEST_PLAN__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case RegisterPackage.TEST_PLAN__METHOD:
				return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
			case RegisterPackage.TEST_PLAN__PROPERTY:
				return PROPERTY_EDEFAULT == null ? property != null : !PROPERTY_EDEFAULT.equals(property);
			case RegisterPackage.TEST_PLAN__EVERY:
				return EVERY_EDEFAULT == null ? every != null : !EVERY_EDEFAULT.equals(every);
			case RegisterPackage.TEST_PLAN__SPECIMENS:
				return specimens != SPECIMENS_EDEFAULT;
			case RegisterPackage.TEST_PLAN__AGE_DAYS:
				return ageDays != AGE_DAYS_EDEFAULT;
			case RegisterPackage.TEST_PLAN__UNIT_TYPE:
				return unitType != null;
			case RegisterPackage.TEST_PLAN__MIX:
				return mix != null;
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
		result.append(", method: ");
		result.append(method);
		result.append(", property: ");
		result.append(property);
		result.append(", every: ");
		result.append(every);
		result.append(", specimens: ");
		result.append(specimens);
		result.append(", ageDays: ");
		result.append(ageDays);
		result.append(')');
		return result.toString();
	}

} //TestPlanImpl
