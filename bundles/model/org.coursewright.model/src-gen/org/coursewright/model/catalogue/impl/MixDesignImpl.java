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
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getAirShare <em>Air Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getLeastWaterShare <em>Least Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getMostWaterShare <em>Most Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getWasteShare <em>Waste Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getDryDensity <em>Dry Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getLooseShare <em>Loose Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MixDesignImpl#getSpoiledShare <em>Spoiled Share</em>}</li>
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
	 * The default value of the '{@link #getAirShare() <em>Air Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal AIR_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAirShare() <em>Air Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal airShare = AIR_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeastWaterShare() <em>Least Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastWaterShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LEAST_WATER_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeastWaterShare() <em>Least Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastWaterShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal leastWaterShare = LEAST_WATER_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMostWaterShare() <em>Most Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMostWaterShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MOST_WATER_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMostWaterShare() <em>Most Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMostWaterShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal mostWaterShare = MOST_WATER_SHARE_EDEFAULT;

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
	 * The default value of the '{@link #getDryDensity() <em>Dry Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryDensity()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal DRY_DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDryDensity() <em>Dry Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryDensity()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal dryDensity = DRY_DENSITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLooseShare() <em>Loose Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLooseShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LOOSE_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLooseShare() <em>Loose Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLooseShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal looseShare = LOOSE_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpoiledShare() <em>Spoiled Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpoiledShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal SPOILED_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpoiledShare() <em>Spoiled Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpoiledShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal spoiledShare = SPOILED_SHARE_EDEFAULT;

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
	public BigDecimal getAirShare() {
		return airShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAirShare(BigDecimal newAirShare) {
		BigDecimal oldAirShare = airShare;
		airShare = newAirShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__AIR_SHARE, oldAirShare, airShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLeastWaterShare() {
		return leastWaterShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeastWaterShare(BigDecimal newLeastWaterShare) {
		BigDecimal oldLeastWaterShare = leastWaterShare;
		leastWaterShare = newLeastWaterShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__LEAST_WATER_SHARE, oldLeastWaterShare, leastWaterShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMostWaterShare() {
		return mostWaterShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMostWaterShare(BigDecimal newMostWaterShare) {
		BigDecimal oldMostWaterShare = mostWaterShare;
		mostWaterShare = newMostWaterShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__MOST_WATER_SHARE, oldMostWaterShare, mostWaterShare));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__WASTE_SHARE, oldWasteShare, wasteShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getDryDensity() {
		return dryDensity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDryDensity(BigDecimal newDryDensity) {
		BigDecimal oldDryDensity = dryDensity;
		dryDensity = newDryDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__DRY_DENSITY, oldDryDensity, dryDensity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLooseShare() {
		return looseShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLooseShare(BigDecimal newLooseShare) {
		BigDecimal oldLooseShare = looseShare;
		looseShare = newLooseShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__LOOSE_SHARE, oldLooseShare, looseShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getSpoiledShare() {
		return spoiledShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpoiledShare(BigDecimal newSpoiledShare) {
		BigDecimal oldSpoiledShare = spoiledShare;
		spoiledShare = newSpoiledShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MIX_DESIGN__SPOILED_SHARE, oldSpoiledShare, spoiledShare));
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
			case CataloguePackage.MIX_DESIGN__AIR_SHARE:
				return getAirShare();
			case CataloguePackage.MIX_DESIGN__LEAST_WATER_SHARE:
				return getLeastWaterShare();
			case CataloguePackage.MIX_DESIGN__MOST_WATER_SHARE:
				return getMostWaterShare();
			case CataloguePackage.MIX_DESIGN__WASTE_SHARE:
				return getWasteShare();
			case CataloguePackage.MIX_DESIGN__DRY_DENSITY:
				return getDryDensity();
			case CataloguePackage.MIX_DESIGN__LOOSE_SHARE:
				return getLooseShare();
			case CataloguePackage.MIX_DESIGN__SPOILED_SHARE:
				return getSpoiledShare();
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
			case CataloguePackage.MIX_DESIGN__AIR_SHARE:
				setAirShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__LEAST_WATER_SHARE:
				setLeastWaterShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__MOST_WATER_SHARE:
				setMostWaterShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__WASTE_SHARE:
				setWasteShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__DRY_DENSITY:
				setDryDensity((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__LOOSE_SHARE:
				setLooseShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MIX_DESIGN__SPOILED_SHARE:
				setSpoiledShare((BigDecimal)newValue);
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
			case CataloguePackage.MIX_DESIGN__AIR_SHARE:
				setAirShare(AIR_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__LEAST_WATER_SHARE:
				setLeastWaterShare(LEAST_WATER_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__MOST_WATER_SHARE:
				setMostWaterShare(MOST_WATER_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__WASTE_SHARE:
				setWasteShare(WASTE_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__DRY_DENSITY:
				setDryDensity(DRY_DENSITY_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__LOOSE_SHARE:
				setLooseShare(LOOSE_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MIX_DESIGN__SPOILED_SHARE:
				setSpoiledShare(SPOILED_SHARE_EDEFAULT);
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
			case CataloguePackage.MIX_DESIGN__AIR_SHARE:
				return AIR_SHARE_EDEFAULT == null ? airShare != null : !AIR_SHARE_EDEFAULT.equals(airShare);
			case CataloguePackage.MIX_DESIGN__LEAST_WATER_SHARE:
				return LEAST_WATER_SHARE_EDEFAULT == null ? leastWaterShare != null : !LEAST_WATER_SHARE_EDEFAULT.equals(leastWaterShare);
			case CataloguePackage.MIX_DESIGN__MOST_WATER_SHARE:
				return MOST_WATER_SHARE_EDEFAULT == null ? mostWaterShare != null : !MOST_WATER_SHARE_EDEFAULT.equals(mostWaterShare);
			case CataloguePackage.MIX_DESIGN__WASTE_SHARE:
				return WASTE_SHARE_EDEFAULT == null ? wasteShare != null : !WASTE_SHARE_EDEFAULT.equals(wasteShare);
			case CataloguePackage.MIX_DESIGN__DRY_DENSITY:
				return DRY_DENSITY_EDEFAULT == null ? dryDensity != null : !DRY_DENSITY_EDEFAULT.equals(dryDensity);
			case CataloguePackage.MIX_DESIGN__LOOSE_SHARE:
				return LOOSE_SHARE_EDEFAULT == null ? looseShare != null : !LOOSE_SHARE_EDEFAULT.equals(looseShare);
			case CataloguePackage.MIX_DESIGN__SPOILED_SHARE:
				return SPOILED_SHARE_EDEFAULT == null ? spoiledShare != null : !SPOILED_SHARE_EDEFAULT.equals(spoiledShare);
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
		result.append(", airShare: ");
		result.append(airShare);
		result.append(", leastWaterShare: ");
		result.append(leastWaterShare);
		result.append(", mostWaterShare: ");
		result.append(mostWaterShare);
		result.append(", wasteShare: ");
		result.append(wasteShare);
		result.append(", dryDensity: ");
		result.append(dryDensity);
		result.append(", looseShare: ");
		result.append(looseShare);
		result.append(", spoiledShare: ");
		result.append(spoiledShare);
		result.append(')');
		return result.toString();
	}

} //MixDesignImpl
