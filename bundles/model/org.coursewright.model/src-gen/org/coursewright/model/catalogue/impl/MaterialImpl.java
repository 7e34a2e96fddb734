/**
 */
package org.coursewright.model.catalogue.impl;

import java.math.BigDecimal;

import org.coursewright.measure.Length;
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
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getCompactedDensity <em>Compacted Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getParticleDensity <em>Particle Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getMoistureShare <em>Moisture Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getAbsorbedShare <em>Absorbed Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getBulkingShare <em>Bulking Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#getLargestParticle <em>Largest Particle</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#isBinder <em>Binder</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.MaterialImpl#isDugOnSite <em>Dug On Site</em>}</li>
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
	 * The default value of the '{@link #getCompactedDensity() <em>Compacted Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompactedDensity()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal COMPACTED_DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCompactedDensity() <em>Compacted Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompactedDensity()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal compactedDensity = COMPACTED_DENSITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getParticleDensity() <em>Particle Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParticleDensity()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PARTICLE_DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getParticleDensity() <em>Particle Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParticleDensity()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal particleDensity = PARTICLE_DENSITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getMoistureShare() <em>Moisture Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoistureShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MOISTURE_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoistureShare() <em>Moisture Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoistureShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal moistureShare = MOISTURE_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAbsorbedShare() <em>Absorbed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAbsorbedShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal ABSORBED_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAbsorbedShare() <em>Absorbed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAbsorbedShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal absorbedShare = ABSORBED_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBulkingShare() <em>Bulking Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkingShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal BULKING_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBulkingShare() <em>Bulking Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkingShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal bulkingShare = BULKING_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLargestParticle() <em>Largest Particle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLargestParticle()
	 * @generated
	 * @ordered
	 */
	protected static final Length LARGEST_PARTICLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLargestParticle() <em>Largest Particle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLargestParticle()
	 * @generated
	 * @ordered
	 */
	protected Length largestParticle = LARGEST_PARTICLE_EDEFAULT;

	/**
	 * The default value of the '{@link #isBinder() <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBinder()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BINDER_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isBinder() <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBinder()
	 * @generated
	 * @ordered
	 */
	protected boolean binder = BINDER_EDEFAULT;

	/**
	 * The default value of the '{@link #isDugOnSite() <em>Dug On Site</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDugOnSite()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DUG_ON_SITE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDugOnSite() <em>Dug On Site</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDugOnSite()
	 * @generated
	 * @ordered
	 */
	protected boolean dugOnSite = DUG_ON_SITE_EDEFAULT;

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
	public BigDecimal getCompactedDensity() {
		return compactedDensity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCompactedDensity(BigDecimal newCompactedDensity) {
		BigDecimal oldCompactedDensity = compactedDensity;
		compactedDensity = newCompactedDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__COMPACTED_DENSITY, oldCompactedDensity, compactedDensity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getParticleDensity() {
		return particleDensity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setParticleDensity(BigDecimal newParticleDensity) {
		BigDecimal oldParticleDensity = particleDensity;
		particleDensity = newParticleDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__PARTICLE_DENSITY, oldParticleDensity, particleDensity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMoistureShare() {
		return moistureShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoistureShare(BigDecimal newMoistureShare) {
		BigDecimal oldMoistureShare = moistureShare;
		moistureShare = newMoistureShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__MOISTURE_SHARE, oldMoistureShare, moistureShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getAbsorbedShare() {
		return absorbedShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAbsorbedShare(BigDecimal newAbsorbedShare) {
		BigDecimal oldAbsorbedShare = absorbedShare;
		absorbedShare = newAbsorbedShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__ABSORBED_SHARE, oldAbsorbedShare, absorbedShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getBulkingShare() {
		return bulkingShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBulkingShare(BigDecimal newBulkingShare) {
		BigDecimal oldBulkingShare = bulkingShare;
		bulkingShare = newBulkingShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__BULKING_SHARE, oldBulkingShare, bulkingShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLargestParticle() {
		return largestParticle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLargestParticle(Length newLargestParticle) {
		Length oldLargestParticle = largestParticle;
		largestParticle = newLargestParticle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__LARGEST_PARTICLE, oldLargestParticle, largestParticle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBinder() {
		return binder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBinder(boolean newBinder) {
		boolean oldBinder = binder;
		binder = newBinder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__BINDER, oldBinder, binder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDugOnSite() {
		return dugOnSite;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDugOnSite(boolean newDugOnSite) {
		boolean oldDugOnSite = dugOnSite;
		dugOnSite = newDugOnSite;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.MATERIAL__DUG_ON_SITE, oldDugOnSite, dugOnSite));
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
			case CataloguePackage.MATERIAL__COMPACTED_DENSITY:
				return getCompactedDensity();
			case CataloguePackage.MATERIAL__PARTICLE_DENSITY:
				return getParticleDensity();
			case CataloguePackage.MATERIAL__MOISTURE_SHARE:
				return getMoistureShare();
			case CataloguePackage.MATERIAL__ABSORBED_SHARE:
				return getAbsorbedShare();
			case CataloguePackage.MATERIAL__BULKING_SHARE:
				return getBulkingShare();
			case CataloguePackage.MATERIAL__LARGEST_PARTICLE:
				return getLargestParticle();
			case CataloguePackage.MATERIAL__BINDER:
				return isBinder();
			case CataloguePackage.MATERIAL__DUG_ON_SITE:
				return isDugOnSite();
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
			case CataloguePackage.MATERIAL__COMPACTED_DENSITY:
				setCompactedDensity((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__PARTICLE_DENSITY:
				setParticleDensity((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__MOISTURE_SHARE:
				setMoistureShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__ABSORBED_SHARE:
				setAbsorbedShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__BULKING_SHARE:
				setBulkingShare((BigDecimal)newValue);
				return;
			case CataloguePackage.MATERIAL__LARGEST_PARTICLE:
				setLargestParticle((Length)newValue);
				return;
			case CataloguePackage.MATERIAL__BINDER:
				setBinder((Boolean)newValue);
				return;
			case CataloguePackage.MATERIAL__DUG_ON_SITE:
				setDugOnSite((Boolean)newValue);
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
			case CataloguePackage.MATERIAL__COMPACTED_DENSITY:
				setCompactedDensity(COMPACTED_DENSITY_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__PARTICLE_DENSITY:
				setParticleDensity(PARTICLE_DENSITY_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__MOISTURE_SHARE:
				setMoistureShare(MOISTURE_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__ABSORBED_SHARE:
				setAbsorbedShare(ABSORBED_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__BULKING_SHARE:
				setBulkingShare(BULKING_SHARE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__LARGEST_PARTICLE:
				setLargestParticle(LARGEST_PARTICLE_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__BINDER:
				setBinder(BINDER_EDEFAULT);
				return;
			case CataloguePackage.MATERIAL__DUG_ON_SITE:
				setDugOnSite(DUG_ON_SITE_EDEFAULT);
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
			case CataloguePackage.MATERIAL__COMPACTED_DENSITY:
				return COMPACTED_DENSITY_EDEFAULT == null ? compactedDensity != null : !COMPACTED_DENSITY_EDEFAULT.equals(compactedDensity);
			case CataloguePackage.MATERIAL__PARTICLE_DENSITY:
				return PARTICLE_DENSITY_EDEFAULT == null ? particleDensity != null : !PARTICLE_DENSITY_EDEFAULT.equals(particleDensity);
			case CataloguePackage.MATERIAL__MOISTURE_SHARE:
				return MOISTURE_SHARE_EDEFAULT == null ? moistureShare != null : !MOISTURE_SHARE_EDEFAULT.equals(moistureShare);
			case CataloguePackage.MATERIAL__ABSORBED_SHARE:
				return ABSORBED_SHARE_EDEFAULT == null ? absorbedShare != null : !ABSORBED_SHARE_EDEFAULT.equals(absorbedShare);
			case CataloguePackage.MATERIAL__BULKING_SHARE:
				return BULKING_SHARE_EDEFAULT == null ? bulkingShare != null : !BULKING_SHARE_EDEFAULT.equals(bulkingShare);
			case CataloguePackage.MATERIAL__LARGEST_PARTICLE:
				return LARGEST_PARTICLE_EDEFAULT == null ? largestParticle != null : !LARGEST_PARTICLE_EDEFAULT.equals(largestParticle);
			case CataloguePackage.MATERIAL__BINDER:
				return binder != BINDER_EDEFAULT;
			case CataloguePackage.MATERIAL__DUG_ON_SITE:
				return dugOnSite != DUG_ON_SITE_EDEFAULT;
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
		result.append(", compactedDensity: ");
		result.append(compactedDensity);
		result.append(", particleDensity: ");
		result.append(particleDensity);
		result.append(", moistureShare: ");
		result.append(moistureShare);
		result.append(", absorbedShare: ");
		result.append(absorbedShare);
		result.append(", bulkingShare: ");
		result.append(bulkingShare);
		result.append(", largestParticle: ");
		result.append(largestParticle);
		result.append(", binder: ");
		result.append(binder);
		result.append(", dugOnSite: ");
		result.append(dugOnSite);
		result.append(')');
		return result.toString();
	}

} //MaterialImpl
