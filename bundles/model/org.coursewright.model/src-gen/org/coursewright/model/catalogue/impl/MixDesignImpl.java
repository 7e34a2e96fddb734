/**
 */
package org.coursewright.model.catalogue.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.MixBasis;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;

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
 * An implementation of the model object '<em><b>Mix Design</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getYieldShare <em>Yield Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getWaterShare <em>Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getStabiliserShare <em>Stabiliser Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MixDesignImpl extends MinimalEObjectImpl.Container implements MixDesign {
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
	 * The default value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected static final MixBasis BASIS_EDEFAULT = MixBasis.VOLUME;

	/**
	 * The cached value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected MixBasis basis = BASIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getYieldShare() <em>Yield Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYieldShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal YIELD_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getYieldShare() <em>Yield Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYieldShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal yieldShare = YIELD_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterShare() <em>Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal WATER_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWaterShare() <em>Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal waterShare = WATER_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getStabiliserShare() <em>Stabiliser Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStabiliserShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal STABILISER_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStabiliserShare() <em>Stabiliser Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStabiliserShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal stabiliserShare = STABILISER_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getParts() <em>Parts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected EList<MixPart> parts;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MixDesignImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.MIX_DESIGN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixBasis getBasis() {
		return basis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasis(MixBasis newBasis) {
		MixBasis oldBasis = basis;
		basis = newBasis == null ? BASIS_EDEFAULT : newBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__BASIS, oldBasis, basis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getYieldShare() {
		return yieldShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYieldShare(BigDecimal newYieldShare) {
		BigDecimal oldYieldShare = yieldShare;
		yieldShare = newYieldShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__YIELD_SHARE, oldYieldShare, yieldShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getWaterShare() {
		return waterShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterShare(BigDecimal newWaterShare) {
		BigDecimal oldWaterShare = waterShare;
		waterShare = newWaterShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__WATER_SHARE, oldWaterShare, waterShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getStabiliserShare() {
		return stabiliserShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStabiliserShare(BigDecimal newStabiliserShare) {
		BigDecimal oldStabiliserShare = stabiliserShare;
		stabiliserShare = newStabiliserShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__STABILISER_SHARE, oldStabiliserShare, stabiliserShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MixPart> getParts() {
		if (parts == null) {
			parts = new EObjectContainmentEList<MixPart>(MixPart.class, this, CataloguePackage.MIX_DESIGN__PARTS);
		}
		return parts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CataloguePackage.MIX_DESIGN__PARTS:
				return ((InternalEList<?>)getParts()).basicRemove(otherEnd, msgs);
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
			case CataloguePackage.MIX_DESIGN__MARK:
				return getMark();
			case CataloguePackage.MIX_DESIGN__NOTE:
				return getNote();
			case CataloguePackage.MIX_DESIGN__BASIS:
				return getBasis();
			case CataloguePackage.MIX_DESIGN__YIELD_SHARE:
				return getYieldShare();
			case CataloguePackage.MIX_DESIGN__WATER_SHARE:
				return getWaterShare();
			case CataloguePackage.MIX_DESIGN__STABILISER_SHARE:
				return getStabiliserShare();
			case CataloguePackage.MIX_DESIGN__PARTS:
				return getParts();
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
			case CataloguePackage.MIX_DESIGN__MARK:
				setMark((String)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__NOTE:
				setNote((String)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__BASIS:
				setBasis((MixBasis)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__YIELD_SHARE:
				setYieldShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__WATER_SHARE:
				setWaterShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__STABILISER_SHARE:
				setStabiliserShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__PARTS:
				getParts().clear();
				getParts().addAll((Collection<? extends MixPart>)newValue);
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
			case CataloguePackage.MIX_DESIGN__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__BASIS:
				setBasis(BASIS_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__YIELD_SHARE:
				setYieldShare(YIELD_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__WATER_SHARE:
				setWaterShare(WATER_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__STABILISER_SHARE:
				setStabiliserShare(STABILISER_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__PARTS:
				getParts().clear();
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
			case CataloguePackage.MIX_DESIGN__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case CataloguePackage.MIX_DESIGN__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CataloguePackage.MIX_DESIGN__BASIS:
				return basis != BASIS_EDEFAULT;
			case CataloguePackage.MIX_DESIGN__YIELD_SHARE:
				return YIELD_SHARE_EDEFAULT == null ? yieldShare != null : !YIELD_SHARE_EDEFAULT.equals(yieldShare);
			case CataloguePackage.MIX_DESIGN__WATER_SHARE:
				return WATER_SHARE_EDEFAULT == null ? waterShare != null : !WATER_SHARE_EDEFAULT.equals(waterShare);
			case CataloguePackage.MIX_DESIGN__STABILISER_SHARE:
				return STABILISER_SHARE_EDEFAULT == null ? stabiliserShare != null : !STABILISER_SHARE_EDEFAULT.equals(stabiliserShare);
			case CataloguePackage.MIX_DESIGN__PARTS:
				return parts != null && !parts.isEmpty();
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
		result.append(", basis: ");
		result.append(basis);
		result.append(", yieldShare: ");
		result.append(yieldShare);
		result.append(", waterShare: ");
		result.append(waterShare);
		result.append(", stabiliserShare: ");
		result.append(stabiliserShare);
		result.append(')');
		return result.toString();
	}

} //MixDesignImpl
