/**
 */
package org.coursewright.model.catalogue.impl;

import java.math.BigDecimal;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.Material;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Material</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getUnitCode <em>Unit Code</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getDensity <em>Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getPack <em>Pack</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getWasteShare <em>Waste Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialImpl extends MinimalEObjectImpl.Container implements Material {
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
	 * The default value of the '{@link #getUnitCode() <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCode()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnitCode() <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitCode()
	 * @generated
	 * @ordered
	 */
	protected String unitCode = UNIT_CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensity() <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensity()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDensity() <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensity()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal density = DENSITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPack() <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPack()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity PACK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPack() <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPack()
	 * @generated
	 * @ordered
	 */
	protected Quantity pack = PACK_EDEFAULT;

	/**
	 * The default value of the '{@link #getWasteShare() <em>Waste Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWasteShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal WASTE_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWasteShare() <em>Waste Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWasteShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal wasteShare = WASTE_SHARE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MaterialImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.MATERIAL;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__NOTE, oldNote, note));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnitCode() {
		return unitCode;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitCode(String newUnitCode) {
		String oldUnitCode = unitCode;
		unitCode = newUnitCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__UNIT_CODE, oldUnitCode, unitCode));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getDensity() {
		return density;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensity(BigDecimal newDensity) {
		BigDecimal oldDensity = density;
		density = newDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__DENSITY, oldDensity, density));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPack() {
		return pack;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPack(Quantity newPack) {
		Quantity oldPack = pack;
		pack = newPack;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__PACK, oldPack, pack));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getWasteShare() {
		return wasteShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWasteShare(BigDecimal newWasteShare) {
		BigDecimal oldWasteShare = wasteShare;
		wasteShare = newWasteShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__WASTE_SHARE, oldWasteShare, wasteShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CataloguePackage.MATERIAL__MARK:
				return getMark();
			case CataloguePackage.MATERIAL__NOTE:
				return getNote();
			case CataloguePackage.MATERIAL__NAME:
				return getName();
			case CataloguePackage.MATERIAL__UNIT_CODE:
				return getUnitCode();
			case CataloguePackage.MATERIAL__DENSITY:
				return getDensity();
			case CataloguePackage.MATERIAL__PACK:
				return getPack();
			case CataloguePackage.MATERIAL__WASTE_SHARE:
				return getWasteShare();
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
			case CataloguePackage.MATERIAL__MARK:
				setMark((String)newValue);
				return;
			case CataloguePackage.MATERIAL__NOTE:
				setNote((String)newValue);
				return;
			case CataloguePackage.MATERIAL__NAME:
				setName((String)newValue);
				return;
			case CataloguePackage.MATERIAL__UNIT_CODE:
				setUnitCode((String)newValue);
				return;
			case CataloguePackage.MATERIAL__DENSITY:
				setDensity((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__PACK:
				setPack((Quantity)newValue);
				return;
			case CataloguePackage.MATERIAL__WASTE_SHARE:
				setWasteShare((BigDecimal)newValue);
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
			case CataloguePackage.MATERIAL__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__NAME:
				setName(NAME_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__UNIT_CODE:
				setUnitCode(UNIT_CODE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__DENSITY:
				setDensity(DENSITY_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__PACK:
				setPack(PACK_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__WASTE_SHARE:
				setWasteShare(WASTE_SHARE_EDEFAULT);
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
			case CataloguePackage.MATERIAL__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case CataloguePackage.MATERIAL__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CataloguePackage.MATERIAL__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case CataloguePackage.MATERIAL__UNIT_CODE:
				return UNIT_CODE_EDEFAULT == null ? unitCode != null : !UNIT_CODE_EDEFAULT.equals(unitCode);
			case CataloguePackage.MATERIAL__DENSITY:
				return DENSITY_EDEFAULT == null ? density != null : !DENSITY_EDEFAULT.equals(density);
			case CataloguePackage.MATERIAL__PACK:
				return PACK_EDEFAULT == null ? pack != null : !PACK_EDEFAULT.equals(pack);
			case CataloguePackage.MATERIAL__WASTE_SHARE:
				return WASTE_SHARE_EDEFAULT == null ? wasteShare != null : !WASTE_SHARE_EDEFAULT.equals(wasteShare);
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
		result.append(", unitCode: ");
		result.append(unitCode);
		result.append(", density: ");
		result.append(density);
		result.append(", pack: ");
		result.append(pack);
		result.append(", wasteShare: ");
		result.append(wasteShare);
		result.append(')');
		return result.toString();
	}

} //MaterialImpl
