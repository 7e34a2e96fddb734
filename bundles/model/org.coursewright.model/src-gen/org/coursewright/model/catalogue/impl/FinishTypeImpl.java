/**
 */
package org.coursewright.model.catalogue.impl;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.FinishType;
import org.coursewright.model.catalogue.MixDesign;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Finish Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.FinishTypeImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.FinishTypeImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.FinishTypeImpl#getMix <em>Mix</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.FinishTypeImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.FinishTypeImpl#getCoats <em>Coats</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FinishTypeImpl extends MinimalEObjectImpl.Container implements FinishType {
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
	 * The cached value of the '{@link #getMix() <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMix()
	 * @generated
	 * @ordered
	 */
	protected MixDesign mix;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Length THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Length thickness = THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoats() <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoats()
	 * @generated
	 * @ordered
	 */
	protected static final int COATS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getCoats() <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoats()
	 * @generated
	 * @ordered
	 */
	protected int coats = COATS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FinishTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.FINISH_TYPE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FINISH_TYPE__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FINISH_TYPE__NOTE, oldNote, note));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CataloguePackage.FINISH_TYPE__MIX, oldMix, mix));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FINISH_TYPE__MIX, oldMix, mix));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Length newThickness) {
		Length oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FINISH_TYPE__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCoats() {
		return coats;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoats(int newCoats) {
		int oldCoats = coats;
		coats = newCoats;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.FINISH_TYPE__COATS, oldCoats, coats));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CataloguePackage.FINISH_TYPE__MARK:
				return getMark();
			case CataloguePackage.FINISH_TYPE__NOTE:
				return getNote();
			case CataloguePackage.FINISH_TYPE__MIX:
				if (resolve) return getMix();
				return basicGetMix();
			case CataloguePackage.FINISH_TYPE__THICKNESS:
				return getThickness();
			case CataloguePackage.FINISH_TYPE__COATS:
				return getCoats();
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
			case CataloguePackage.FINISH_TYPE__MARK:
				setMark((String)newValue);
				return;
			case CataloguePackage.FINISH_TYPE__NOTE:
				setNote((String)newValue);
				return;
			case CataloguePackage.FINISH_TYPE__MIX:
				setMix((MixDesign)newValue);
				return;
			case CataloguePackage.FINISH_TYPE__THICKNESS:
				setThickness((Length)newValue);
				return;
			case CataloguePackage.FINISH_TYPE__COATS:
				setCoats((Integer)newValue);
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
			case CataloguePackage.FINISH_TYPE__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case CataloguePackage.FINISH_TYPE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CataloguePackage.FINISH_TYPE__MIX:
				setMix((MixDesign)null);
				return;
			case CataloguePackage.FINISH_TYPE__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case CataloguePackage.FINISH_TYPE__COATS:
				setCoats(COATS_EDEFAULT);
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
			case CataloguePackage.FINISH_TYPE__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case CataloguePackage.FINISH_TYPE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CataloguePackage.FINISH_TYPE__MIX:
				return mix != null;
			case CataloguePackage.FINISH_TYPE__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case CataloguePackage.FINISH_TYPE__COATS:
				return coats != COATS_EDEFAULT;
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
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", coats: ");
		result.append(coats);
		result.append(')');
		return result.toString();
	}

} //FinishTypeImpl
