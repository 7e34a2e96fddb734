/**
 */
package org.coursewright.model.catalogue.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Unit Type</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getMass <em>Mass</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getSpecialLengths <em>Special Lengths</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getShortestPiece <em>Shortest Piece</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getCutStep <em>Cut Step</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getKerf <em>Kerf</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getDaysMoist <em>Days Moist</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getDaysDrying <em>Days Drying</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getBreakageShare <em>Breakage Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.impl.UnitTypeImpl#getMix <em>Mix</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UnitTypeImpl extends MinimalEObjectImpl.Container implements UnitType {
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
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Length length = LENGTH_EDEFAULT;

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
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEIGHT_EDEFAULT = null;

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
	 * The default value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMass() <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMass()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal mass = MASS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSpecialLengths() <em>Special Lengths</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecialLengths()
	 * @generated
	 * @ordered
	 */
	protected EList<Length> specialLengths;

	/**
	 * The default value of the '{@link #getShortestPiece() <em>Shortest Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShortestPiece()
	 * @generated
	 * @ordered
	 */
	protected static final Length SHORTEST_PIECE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShortestPiece() <em>Shortest Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShortestPiece()
	 * @generated
	 * @ordered
	 */
	protected Length shortestPiece = SHORTEST_PIECE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCutStep() <em>Cut Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutStep()
	 * @generated
	 * @ordered
	 */
	protected static final Length CUT_STEP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCutStep() <em>Cut Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutStep()
	 * @generated
	 * @ordered
	 */
	protected Length cutStep = CUT_STEP_EDEFAULT;

	/**
	 * The default value of the '{@link #getKerf() <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKerf()
	 * @generated
	 * @ordered
	 */
	protected static final Length KERF_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKerf() <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKerf()
	 * @generated
	 * @ordered
	 */
	protected Length kerf = KERF_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final UnitSource SOURCE_EDEFAULT = UnitSource.BOUGHT;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected UnitSource source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDaysMoist() <em>Days Moist</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysMoist()
	 * @generated
	 * @ordered
	 */
	protected static final int DAYS_MOIST_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getDaysMoist() <em>Days Moist</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysMoist()
	 * @generated
	 * @ordered
	 */
	protected int daysMoist = DAYS_MOIST_EDEFAULT;

	/**
	 * The default value of the '{@link #getDaysDrying() <em>Days Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysDrying()
	 * @generated
	 * @ordered
	 */
	protected static final int DAYS_DRYING_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getDaysDrying() <em>Days Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysDrying()
	 * @generated
	 * @ordered
	 */
	protected int daysDrying = DAYS_DRYING_EDEFAULT;

	/**
	 * The default value of the '{@link #getBreakageShare() <em>Breakage Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBreakageShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal BREAKAGE_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBreakageShare() <em>Breakage Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBreakageShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal breakageShare = BREAKAGE_SHARE_EDEFAULT;

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
	protected UnitTypeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CataloguePackage.Literals.UNIT_TYPE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Length newLength) {
		Length oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__LENGTH, oldLength, length));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__WIDTH, oldWidth, width));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMass() {
		return mass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMass(BigDecimal newMass) {
		BigDecimal oldMass = mass;
		mass = newMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__MASS, oldMass, mass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Length> getSpecialLengths() {
		if (specialLengths == null) {
			specialLengths = new EDataTypeUniqueEList<Length>(Length.class, this, CataloguePackage.UNIT_TYPE__SPECIAL_LENGTHS);
		}
		return specialLengths;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getShortestPiece() {
		return shortestPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShortestPiece(Length newShortestPiece) {
		Length oldShortestPiece = shortestPiece;
		shortestPiece = newShortestPiece;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__SHORTEST_PIECE, oldShortestPiece, shortestPiece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getCutStep() {
		return cutStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutStep(Length newCutStep) {
		Length oldCutStep = cutStep;
		cutStep = newCutStep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__CUT_STEP, oldCutStep, cutStep));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getKerf() {
		return kerf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKerf(Length newKerf) {
		Length oldKerf = kerf;
		kerf = newKerf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__KERF, oldKerf, kerf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitSource getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(UnitSource newSource) {
		UnitSource oldSource = source;
		source = newSource == null ? SOURCE_EDEFAULT : newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getDaysMoist() {
		return daysMoist;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDaysMoist(int newDaysMoist) {
		int oldDaysMoist = daysMoist;
		daysMoist = newDaysMoist;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__DAYS_MOIST, oldDaysMoist, daysMoist));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getDaysDrying() {
		return daysDrying;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDaysDrying(int newDaysDrying) {
		int oldDaysDrying = daysDrying;
		daysDrying = newDaysDrying;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__DAYS_DRYING, oldDaysDrying, daysDrying));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getBreakageShare() {
		return breakageShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBreakageShare(BigDecimal newBreakageShare) {
		BigDecimal oldBreakageShare = breakageShare;
		breakageShare = newBreakageShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__BREAKAGE_SHARE, oldBreakageShare, breakageShare));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CataloguePackage.UNIT_TYPE__MIX, oldMix, mix));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CataloguePackage.UNIT_TYPE__MIX, oldMix, mix));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CataloguePackage.UNIT_TYPE__MARK:
				return getMark();
			case CataloguePackage.UNIT_TYPE__NOTE:
				return getNote();
			case CataloguePackage.UNIT_TYPE__LENGTH:
				return getLength();
			case CataloguePackage.UNIT_TYPE__WIDTH:
				return getWidth();
			case CataloguePackage.UNIT_TYPE__HEIGHT:
				return getHeight();
			case CataloguePackage.UNIT_TYPE__MASS:
				return getMass();
			case CataloguePackage.UNIT_TYPE__SPECIAL_LENGTHS:
				return getSpecialLengths();
			case CataloguePackage.UNIT_TYPE__SHORTEST_PIECE:
				return getShortestPiece();
			case CataloguePackage.UNIT_TYPE__CUT_STEP:
				return getCutStep();
			case CataloguePackage.UNIT_TYPE__KERF:
				return getKerf();
			case CataloguePackage.UNIT_TYPE__SOURCE:
				return getSource();
			case CataloguePackage.UNIT_TYPE__DAYS_MOIST:
				return getDaysMoist();
			case CataloguePackage.UNIT_TYPE__DAYS_DRYING:
				return getDaysDrying();
			case CataloguePackage.UNIT_TYPE__BREAKAGE_SHARE:
				return getBreakageShare();
			case CataloguePackage.UNIT_TYPE__MIX:
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
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CataloguePackage.UNIT_TYPE__MARK:
				setMark((String)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__NOTE:
				setNote((String)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__LENGTH:
				setLength((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__WIDTH:
				setWidth((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__HEIGHT:
				setHeight((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__MASS:
				setMass((BigDecimal)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__SPECIAL_LENGTHS:
				getSpecialLengths().clear();
				getSpecialLengths().addAll((Collection<? extends Length>)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__SHORTEST_PIECE:
				setShortestPiece((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__CUT_STEP:
				setCutStep((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__KERF:
				setKerf((Length)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__SOURCE:
				setSource((UnitSource)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__DAYS_MOIST:
				setDaysMoist((Integer)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__DAYS_DRYING:
				setDaysDrying((Integer)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__BREAKAGE_SHARE:
				setBreakageShare((BigDecimal)newValue);
				return;
			case CataloguePackage.UNIT_TYPE__MIX:
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
			case CataloguePackage.UNIT_TYPE__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__MASS:
				setMass(MASS_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__SPECIAL_LENGTHS:
				getSpecialLengths().clear();
				return;
			case CataloguePackage.UNIT_TYPE__SHORTEST_PIECE:
				setShortestPiece(SHORTEST_PIECE_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__CUT_STEP:
				setCutStep(CUT_STEP_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__KERF:
				setKerf(KERF_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__DAYS_MOIST:
				setDaysMoist(DAYS_MOIST_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__DAYS_DRYING:
				setDaysDrying(DAYS_DRYING_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__BREAKAGE_SHARE:
				setBreakageShare(BREAKAGE_SHARE_EDEFAULT);
				return;
			case CataloguePackage.UNIT_TYPE__MIX:
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
			case CataloguePackage.UNIT_TYPE__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case CataloguePackage.UNIT_TYPE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CataloguePackage.UNIT_TYPE__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case CataloguePackage.UNIT_TYPE__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case CataloguePackage.UNIT_TYPE__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case CataloguePackage.UNIT_TYPE__MASS:
				return MASS_EDEFAULT == null ? mass != null : !MASS_EDEFAULT.equals(mass);
			case CataloguePackage.UNIT_TYPE__SPECIAL_LENGTHS:
				return specialLengths != null && !specialLengths.isEmpty();
			case CataloguePackage.UNIT_TYPE__SHORTEST_PIECE:
				return SHORTEST_PIECE_EDEFAULT == null ? shortestPiece != null : !SHORTEST_PIECE_EDEFAULT.equals(shortestPiece);
			case CataloguePackage.UNIT_TYPE__CUT_STEP:
				return CUT_STEP_EDEFAULT == null ? cutStep != null : !CUT_STEP_EDEFAULT.equals(cutStep);
			case CataloguePackage.UNIT_TYPE__KERF:
				return KERF_EDEFAULT == null ? kerf != null : !KERF_EDEFAULT.equals(kerf);
			case CataloguePackage.UNIT_TYPE__SOURCE:
				return source != SOURCE_EDEFAULT;
			case CataloguePackage.UNIT_TYPE__DAYS_MOIST:
				return daysMoist != DAYS_MOIST_EDEFAULT;
			case CataloguePackage.UNIT_TYPE__DAYS_DRYING:
				return daysDrying != DAYS_DRYING_EDEFAULT;
			case CataloguePackage.UNIT_TYPE__BREAKAGE_SHARE:
				return BREAKAGE_SHARE_EDEFAULT == null ? breakageShare != null : !BREAKAGE_SHARE_EDEFAULT.equals(breakageShare);
			case CataloguePackage.UNIT_TYPE__MIX:
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
		result.append(", length: ");
		result.append(length);
		result.append(", width: ");
		result.append(width);
		result.append(", height: ");
		result.append(height);
		result.append(", mass: ");
		result.append(mass);
		result.append(", specialLengths: ");
		result.append(specialLengths);
		result.append(", shortestPiece: ");
		result.append(shortestPiece);
		result.append(", cutStep: ");
		result.append(cutStep);
		result.append(", kerf: ");
		result.append(kerf);
		result.append(", source: ");
		result.append(source);
		result.append(", daysMoist: ");
		result.append(daysMoist);
		result.append(", daysDrying: ");
		result.append(daysDrying);
		result.append(", breakageShare: ");
		result.append(breakageShare);
		result.append(')');
		return result.toString();
	}

} //UnitTypeImpl
