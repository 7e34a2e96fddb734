/**
 */
package org.coursewright.model.estimate.impl;

import java.util.Collection;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.UnitChoice;
import org.coursewright.model.estimate.WallChoice;

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
 * An implementation of the model object '<em><b>Scenario</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.ScenarioImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.ScenarioImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.ScenarioImpl#getSpecials <em>Specials</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.ScenarioImpl#getWallChoices <em>Wall Choices</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.ScenarioImpl#getUnitChoices <em>Unit Choices</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ScenarioImpl extends MinimalEObjectImpl.Container implements Scenario {
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
	 * The default value of the '{@link #getSpecials() <em>Specials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecials()
	 * @generated
	 * @ordered
	 */
	protected static final SpecialChoice SPECIALS_EDEFAULT = SpecialChoice.AS_STOCKED;

	/**
	 * The cached value of the '{@link #getSpecials() <em>Specials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecials()
	 * @generated
	 * @ordered
	 */
	protected SpecialChoice specials = SPECIALS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWallChoices() <em>Wall Choices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWallChoices()
	 * @generated
	 * @ordered
	 */
	protected EList<WallChoice> wallChoices;

	/**
	 * The cached value of the '{@link #getUnitChoices() <em>Unit Choices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitChoices()
	 * @generated
	 * @ordered
	 */
	protected EList<UnitChoice> unitChoices;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ScenarioImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.SCENARIO;
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.SCENARIO__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.SCENARIO__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SpecialChoice getSpecials() {
		return specials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecials(SpecialChoice newSpecials) {
		SpecialChoice oldSpecials = specials;
		specials = newSpecials == null ? SPECIALS_EDEFAULT : newSpecials;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.SCENARIO__SPECIALS, oldSpecials, specials));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<WallChoice> getWallChoices() {
		if (wallChoices == null) {
			wallChoices = new EObjectContainmentEList<WallChoice>(WallChoice.class, this, EstimatePackage.SCENARIO__WALL_CHOICES);
		}
		return wallChoices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<UnitChoice> getUnitChoices() {
		if (unitChoices == null) {
			unitChoices = new EObjectContainmentEList<UnitChoice>(UnitChoice.class, this, EstimatePackage.SCENARIO__UNIT_CHOICES);
		}
		return unitChoices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case EstimatePackage.SCENARIO__WALL_CHOICES:
				return ((InternalEList<?>)getWallChoices()).basicRemove(otherEnd, msgs);
			case EstimatePackage.SCENARIO__UNIT_CHOICES:
				return ((InternalEList<?>)getUnitChoices()).basicRemove(otherEnd, msgs);
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
			case EstimatePackage.SCENARIO__MARK:
				return getMark();
			case EstimatePackage.SCENARIO__NOTE:
				return getNote();
			case EstimatePackage.SCENARIO__SPECIALS:
				return getSpecials();
			case EstimatePackage.SCENARIO__WALL_CHOICES:
				return getWallChoices();
			case EstimatePackage.SCENARIO__UNIT_CHOICES:
				return getUnitChoices();
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
			case EstimatePackage.SCENARIO__MARK:
				setMark((String)newValue);
				return;
			case EstimatePackage.SCENARIO__NOTE:
				setNote((String)newValue);
				return;
			case EstimatePackage.SCENARIO__SPECIALS:
				setSpecials((SpecialChoice)newValue);
				return;
			case EstimatePackage.SCENARIO__WALL_CHOICES:
				getWallChoices().clear();
				getWallChoices().addAll((Collection<? extends WallChoice>)newValue);
				return;
			case EstimatePackage.SCENARIO__UNIT_CHOICES:
				getUnitChoices().clear();
				getUnitChoices().addAll((Collection<? extends UnitChoice>)newValue);
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
			case EstimatePackage.SCENARIO__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case EstimatePackage.SCENARIO__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case EstimatePackage.SCENARIO__SPECIALS:
				setSpecials(SPECIALS_EDEFAULT);
				return;
			case EstimatePackage.SCENARIO__WALL_CHOICES:
				getWallChoices().clear();
				return;
			case EstimatePackage.SCENARIO__UNIT_CHOICES:
				getUnitChoices().clear();
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
			case EstimatePackage.SCENARIO__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case EstimatePackage.SCENARIO__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case EstimatePackage.SCENARIO__SPECIALS:
				return specials != SPECIALS_EDEFAULT;
			case EstimatePackage.SCENARIO__WALL_CHOICES:
				return wallChoices != null && !wallChoices.isEmpty();
			case EstimatePackage.SCENARIO__UNIT_CHOICES:
				return unitChoices != null && !unitChoices.isEmpty();
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
		result.append(", specials: ");
		result.append(specials);
		result.append(')');
		return result.toString();
	}

} //ScenarioImpl
