/**
 */
package org.coursewright.model.building.impl;

import java.util.Collection;

import org.coursewright.measure.Length;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.GradeBeam;
import org.coursewright.model.building.Reinforcement;
import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.MixDesign;

import org.coursewright.model.types.TypesFactory;
import org.coursewright.model.types.TypesPackage;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Grade Beam</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getTop <em>Top</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getMix <em>Mix</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.GradeBeamImpl#getReinforcement <em>Reinforcement</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GradeBeamImpl extends MinimalEObjectImpl.Container implements GradeBeam {
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
	 * The cached value of the '{@link #getWalls() <em>Walls</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWalls()
	 * @generated
	 * @ordered
	 */
	protected EList<Wall> walls;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected Length width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getDepth() <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepth()
	 * @generated
	 * @ordered
	 */
	protected static final Length DEPTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDepth() <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepth()
	 * @generated
	 * @ordered
	 */
	protected Length depth = DEPTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getTop() <em>Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTop()
	 * @generated
	 * @ordered
	 */
	protected static final Length TOP_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getTop() <em>Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTop()
	 * @generated
	 * @ordered
	 */
	protected Length top = TOP_EDEFAULT;

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
	 * The cached value of the '{@link #getReinforcement() <em>Reinforcement</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReinforcement()
	 * @generated
	 * @ordered
	 */
	protected Reinforcement reinforcement;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GradeBeamImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.GRADE_BEAM;
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Wall> getWalls() {
		if (walls == null) {
			walls = new EObjectResolvingEList<Wall>(Wall.class, this, BuildingPackage.GRADE_BEAM__WALLS);
		}
		return walls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Length newWidth) {
		Length oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDepth() {
		return depth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepth(Length newDepth) {
		Length oldDepth = depth;
		depth = newDepth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__DEPTH, oldDepth, depth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTop() {
		return top;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTop(Length newTop) {
		Length oldTop = top;
		top = newTop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__TOP, oldTop, top));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, BuildingPackage.GRADE_BEAM__MIX, oldMix, mix));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__MIX, oldMix, mix));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reinforcement getReinforcement() {
		return reinforcement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetReinforcement(Reinforcement newReinforcement, NotificationChain msgs) {
		Reinforcement oldReinforcement = reinforcement;
		reinforcement = newReinforcement;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__REINFORCEMENT, oldReinforcement, newReinforcement);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReinforcement(Reinforcement newReinforcement) {
		if (newReinforcement != reinforcement) {
			NotificationChain msgs = null;
			if (reinforcement != null)
				msgs = ((InternalEObject)reinforcement).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - BuildingPackage.GRADE_BEAM__REINFORCEMENT, null, msgs);
			if (newReinforcement != null)
				msgs = ((InternalEObject)newReinforcement).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - BuildingPackage.GRADE_BEAM__REINFORCEMENT, null, msgs);
			msgs = basicSetReinforcement(newReinforcement, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.GRADE_BEAM__REINFORCEMENT, newReinforcement, newReinforcement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case BuildingPackage.GRADE_BEAM__REINFORCEMENT:
				return basicSetReinforcement(null, msgs);
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
			case BuildingPackage.GRADE_BEAM__MARK:
				return getMark();
			case BuildingPackage.GRADE_BEAM__NOTE:
				return getNote();
			case BuildingPackage.GRADE_BEAM__WALLS:
				return getWalls();
			case BuildingPackage.GRADE_BEAM__WIDTH:
				return getWidth();
			case BuildingPackage.GRADE_BEAM__DEPTH:
				return getDepth();
			case BuildingPackage.GRADE_BEAM__TOP:
				return getTop();
			case BuildingPackage.GRADE_BEAM__MIX:
				if (resolve) return getMix();
				return basicGetMix();
			case BuildingPackage.GRADE_BEAM__REINFORCEMENT:
				return getReinforcement();
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
			case BuildingPackage.GRADE_BEAM__MARK:
				setMark((String)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__NOTE:
				setNote((String)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__WALLS:
				getWalls().clear();
				getWalls().addAll((Collection<? extends Wall>)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__WIDTH:
				setWidth((Length)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__DEPTH:
				setDepth((Length)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__TOP:
				setTop((Length)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__MIX:
				setMix((MixDesign)newValue);
				return;
			case BuildingPackage.GRADE_BEAM__REINFORCEMENT:
				setReinforcement((Reinforcement)newValue);
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
			case BuildingPackage.GRADE_BEAM__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case BuildingPackage.GRADE_BEAM__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case BuildingPackage.GRADE_BEAM__WALLS:
				getWalls().clear();
				return;
			case BuildingPackage.GRADE_BEAM__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case BuildingPackage.GRADE_BEAM__DEPTH:
				setDepth(DEPTH_EDEFAULT);
				return;
			case BuildingPackage.GRADE_BEAM__TOP:
				setTop(TOP_EDEFAULT);
				return;
			case BuildingPackage.GRADE_BEAM__MIX:
				setMix((MixDesign)null);
				return;
			case BuildingPackage.GRADE_BEAM__REINFORCEMENT:
				setReinforcement((Reinforcement)null);
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
			case BuildingPackage.GRADE_BEAM__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case BuildingPackage.GRADE_BEAM__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case BuildingPackage.GRADE_BEAM__WALLS:
				return walls != null && !walls.isEmpty();
			case BuildingPackage.GRADE_BEAM__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case BuildingPackage.GRADE_BEAM__DEPTH:
				return DEPTH_EDEFAULT == null ? depth != null : !DEPTH_EDEFAULT.equals(depth);
			case BuildingPackage.GRADE_BEAM__TOP:
				return TOP_EDEFAULT == null ? top != null : !TOP_EDEFAULT.equals(top);
			case BuildingPackage.GRADE_BEAM__MIX:
				return mix != null;
			case BuildingPackage.GRADE_BEAM__REINFORCEMENT:
				return reinforcement != null;
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
		result.append(", width: ");
		result.append(width);
		result.append(", depth: ");
		result.append(depth);
		result.append(", top: ");
		result.append(top);
		result.append(')');
		return result.toString();
	}

} //GradeBeamImpl
