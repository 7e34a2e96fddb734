/**
 */
package org.coursewright.model.building.impl;

import org.coursewright.measure.Length;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;

import org.coursewright.model.catalogue.LintelType;

import org.coursewright.model.types.TypesFactory;
import org.coursewright.model.types.TypesPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getOffset <em>Offset</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getSill <em>Sill</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getLintelType <em>Lintel Type</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getMoveTolerance <em>Move Tolerance</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.OpeningImpl#getSizeTolerance <em>Size Tolerance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OpeningImpl extends MinimalEObjectImpl.Container implements Opening {
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
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final OpeningKind KIND_EDEFAULT = OpeningKind.DOOR;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected OpeningKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getOffset() <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffset()
	 * @generated
	 * @ordered
	 */
	protected static final Length OFFSET_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getOffset() <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffset()
	 * @generated
	 * @ordered
	 */
	protected Length offset = OFFSET_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length WIDTH_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

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
	 * The default value of the '{@link #getSill() <em>Sill</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSill()
	 * @generated
	 * @ordered
	 */
	protected static final Length SILL_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getSill() <em>Sill</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSill()
	 * @generated
	 * @ordered
	 */
	protected Length sill = SILL_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected Length height = HEIGHT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLintelType() <em>Lintel Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLintelType()
	 * @generated
	 * @ordered
	 */
	protected LintelType lintelType;

	/**
	 * The default value of the '{@link #getMoveTolerance() <em>Move Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoveTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Length MOVE_TOLERANCE_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getMoveTolerance() <em>Move Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoveTolerance()
	 * @generated
	 * @ordered
	 */
	protected Length moveTolerance = MOVE_TOLERANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSizeTolerance() <em>Size Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSizeTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Length SIZE_TOLERANCE_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getSizeTolerance() <em>Size Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSizeTolerance()
	 * @generated
	 * @ordered
	 */
	protected Length sizeTolerance = SIZE_TOLERANCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OpeningImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.OPENING;
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OpeningKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(OpeningKind newKind) {
		OpeningKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOffset() {
		return offset;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffset(Length newOffset) {
		Length oldOffset = offset;
		offset = newOffset;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__OFFSET, oldOffset, offset));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSill() {
		return sill;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSill(Length newSill) {
		Length oldSill = sill;
		sill = newSill;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__SILL, oldSill, sill));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Length newHeight) {
		Length oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LintelType getLintelType() {
		if (lintelType != null && lintelType.eIsProxy()) {
			InternalEObject oldLintelType = (InternalEObject)lintelType;
			lintelType = (LintelType)eResolveProxy(oldLintelType);
			if (lintelType != oldLintelType) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, BuildingPackage.OPENING__LINTEL_TYPE, oldLintelType, lintelType));
			}
		}
		return lintelType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LintelType basicGetLintelType() {
		return lintelType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLintelType(LintelType newLintelType) {
		LintelType oldLintelType = lintelType;
		lintelType = newLintelType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__LINTEL_TYPE, oldLintelType, lintelType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMoveTolerance() {
		return moveTolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoveTolerance(Length newMoveTolerance) {
		Length oldMoveTolerance = moveTolerance;
		moveTolerance = newMoveTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__MOVE_TOLERANCE, oldMoveTolerance, moveTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSizeTolerance() {
		return sizeTolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSizeTolerance(Length newSizeTolerance) {
		Length oldSizeTolerance = sizeTolerance;
		sizeTolerance = newSizeTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.OPENING__SIZE_TOLERANCE, oldSizeTolerance, sizeTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BuildingPackage.OPENING__MARK:
				return getMark();
			case BuildingPackage.OPENING__NOTE:
				return getNote();
			case BuildingPackage.OPENING__KIND:
				return getKind();
			case BuildingPackage.OPENING__OFFSET:
				return getOffset();
			case BuildingPackage.OPENING__WIDTH:
				return getWidth();
			case BuildingPackage.OPENING__SILL:
				return getSill();
			case BuildingPackage.OPENING__HEIGHT:
				return getHeight();
			case BuildingPackage.OPENING__LINTEL_TYPE:
				if (resolve) return getLintelType();
				return basicGetLintelType();
			case BuildingPackage.OPENING__MOVE_TOLERANCE:
				return getMoveTolerance();
			case BuildingPackage.OPENING__SIZE_TOLERANCE:
				return getSizeTolerance();
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
			case BuildingPackage.OPENING__MARK:
				setMark((String)newValue);
				return;
			case BuildingPackage.OPENING__NOTE:
				setNote((String)newValue);
				return;
			case BuildingPackage.OPENING__KIND:
				setKind((OpeningKind)newValue);
				return;
			case BuildingPackage.OPENING__OFFSET:
				setOffset((Length)newValue);
				return;
			case BuildingPackage.OPENING__WIDTH:
				setWidth((Length)newValue);
				return;
			case BuildingPackage.OPENING__SILL:
				setSill((Length)newValue);
				return;
			case BuildingPackage.OPENING__HEIGHT:
				setHeight((Length)newValue);
				return;
			case BuildingPackage.OPENING__LINTEL_TYPE:
				setLintelType((LintelType)newValue);
				return;
			case BuildingPackage.OPENING__MOVE_TOLERANCE:
				setMoveTolerance((Length)newValue);
				return;
			case BuildingPackage.OPENING__SIZE_TOLERANCE:
				setSizeTolerance((Length)newValue);
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
			case BuildingPackage.OPENING__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case BuildingPackage.OPENING__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case BuildingPackage.OPENING__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case BuildingPackage.OPENING__OFFSET:
				setOffset(OFFSET_EDEFAULT);
				return;
			case BuildingPackage.OPENING__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case BuildingPackage.OPENING__SILL:
				setSill(SILL_EDEFAULT);
				return;
			case BuildingPackage.OPENING__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case BuildingPackage.OPENING__LINTEL_TYPE:
				setLintelType((LintelType)null);
				return;
			case BuildingPackage.OPENING__MOVE_TOLERANCE:
				setMoveTolerance(MOVE_TOLERANCE_EDEFAULT);
				return;
			case BuildingPackage.OPENING__SIZE_TOLERANCE:
				setSizeTolerance(SIZE_TOLERANCE_EDEFAULT);
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
			case BuildingPackage.OPENING__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case BuildingPackage.OPENING__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case BuildingPackage.OPENING__KIND:
				return kind != KIND_EDEFAULT;
			case BuildingPackage.OPENING__OFFSET:
				return OFFSET_EDEFAULT == null ? offset != null : !OFFSET_EDEFAULT.equals(offset);
			case BuildingPackage.OPENING__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case BuildingPackage.OPENING__SILL:
				return SILL_EDEFAULT == null ? sill != null : !SILL_EDEFAULT.equals(sill);
			case BuildingPackage.OPENING__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case BuildingPackage.OPENING__LINTEL_TYPE:
				return lintelType != null;
			case BuildingPackage.OPENING__MOVE_TOLERANCE:
				return MOVE_TOLERANCE_EDEFAULT == null ? moveTolerance != null : !MOVE_TOLERANCE_EDEFAULT.equals(moveTolerance);
			case BuildingPackage.OPENING__SIZE_TOLERANCE:
				return SIZE_TOLERANCE_EDEFAULT == null ? sizeTolerance != null : !SIZE_TOLERANCE_EDEFAULT.equals(sizeTolerance);
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
		result.append(", kind: ");
		result.append(kind);
		result.append(", offset: ");
		result.append(offset);
		result.append(", width: ");
		result.append(width);
		result.append(", sill: ");
		result.append(sill);
		result.append(", height: ");
		result.append(height);
		result.append(", moveTolerance: ");
		result.append(moveTolerance);
		result.append(", sizeTolerance: ");
		result.append(sizeTolerance);
		result.append(')');
		return result.toString();
	}

} //OpeningImpl
