/**
 */
package org.coursewright.model.building.impl;

import java.util.Collection;

import org.coursewright.measure.Length;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Finish;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Pin;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.types.TypesFactory;
import org.coursewright.model.types.TypesPackage;

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
 * An implementation of the model object '<em><b>Wall</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getFromX <em>From X</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getFromY <em>From Y</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getToX <em>To X</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getToY <em>To Y</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getBond <em>Bond</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getBase <em>Base</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getTopProfile <em>Top Profile</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getBondRule <em>Bond Rule</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getOpenings <em>Openings</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getPins <em>Pins</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getFinishes <em>Finishes</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getMoveTolerance <em>Move Tolerance</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.WallImpl#getSizeTolerance <em>Size Tolerance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WallImpl extends MinimalEObjectImpl.Container implements Wall {
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
	 * The default value of the '{@link #getFromX() <em>From X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromX()
	 * @generated
	 * @ordered
	 */
	protected static final Length FROM_X_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getFromX() <em>From X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromX()
	 * @generated
	 * @ordered
	 */
	protected Length fromX = FROM_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getFromY() <em>From Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromY()
	 * @generated
	 * @ordered
	 */
	protected static final Length FROM_Y_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getFromY() <em>From Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromY()
	 * @generated
	 * @ordered
	 */
	protected Length fromY = FROM_Y_EDEFAULT;

	/**
	 * The default value of the '{@link #getToX() <em>To X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToX()
	 * @generated
	 * @ordered
	 */
	protected static final Length TO_X_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getToX() <em>To X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToX()
	 * @generated
	 * @ordered
	 */
	protected Length toX = TO_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getToY() <em>To Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToY()
	 * @generated
	 * @ordered
	 */
	protected static final Length TO_Y_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getToY() <em>To Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToY()
	 * @generated
	 * @ordered
	 */
	protected Length toY = TO_Y_EDEFAULT;

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
	 * The default value of the '{@link #getBond() <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBond()
	 * @generated
	 * @ordered
	 */
	protected static final Bond BOND_EDEFAULT = Bond.STRETCHER;

	/**
	 * The cached value of the '{@link #getBond() <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBond()
	 * @generated
	 * @ordered
	 */
	protected Bond bond = BOND_EDEFAULT;

	/**
	 * The default value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected static final Length BASE_EDEFAULT = (Length)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getLength(), "0 mm");

	/**
	 * The cached value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected Length base = BASE_EDEFAULT;

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
	 * The cached value of the '{@link #getTopProfile() <em>Top Profile</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTopProfile()
	 * @generated
	 * @ordered
	 */
	protected EList<TopPoint> topProfile;

	/**
	 * The cached value of the '{@link #getBondRule() <em>Bond Rule</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondRule()
	 * @generated
	 * @ordered
	 */
	protected BondRule bondRule;

	/**
	 * The cached value of the '{@link #getOpenings() <em>Openings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenings()
	 * @generated
	 * @ordered
	 */
	protected EList<Opening> openings;

	/**
	 * The cached value of the '{@link #getPins() <em>Pins</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPins()
	 * @generated
	 * @ordered
	 */
	protected EList<Pin> pins;

	/**
	 * The cached value of the '{@link #getFinishes() <em>Finishes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFinishes()
	 * @generated
	 * @ordered
	 */
	protected EList<Finish> finishes;

	/**
	 * The default value of the '{@link #getElement() <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElement()
	 * @generated
	 * @ordered
	 */
	protected static final String ELEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElement() <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElement()
	 * @generated
	 * @ordered
	 */
	protected String element = ELEMENT_EDEFAULT;

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
	protected WallImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.WALL;
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFromX() {
		return fromX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFromX(Length newFromX) {
		Length oldFromX = fromX;
		fromX = newFromX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__FROM_X, oldFromX, fromX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFromY() {
		return fromY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFromY(Length newFromY) {
		Length oldFromY = fromY;
		fromY = newFromY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__FROM_Y, oldFromY, fromY));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getToX() {
		return toX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToX(Length newToX) {
		Length oldToX = toX;
		toX = newToX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__TO_X, oldToX, toX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getToY() {
		return toY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToY(Length newToY) {
		Length oldToY = toY;
		toY = newToY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__TO_Y, oldToY, toY));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, BuildingPackage.WALL__UNIT_TYPE, oldUnitType, unitType));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__UNIT_TYPE, oldUnitType, unitType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Bond getBond() {
		return bond;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBond(Bond newBond) {
		Bond oldBond = bond;
		bond = newBond == null ? BOND_EDEFAULT : newBond;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__BOND, oldBond, bond));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBase() {
		return base;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBase(Length newBase) {
		Length oldBase = base;
		base = newBase;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__BASE, oldBase, base));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TopPoint> getTopProfile() {
		if (topProfile == null) {
			topProfile = new EObjectContainmentEList<TopPoint>(TopPoint.class, this, BuildingPackage.WALL__TOP_PROFILE);
		}
		return topProfile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BondRule getBondRule() {
		return bondRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBondRule(BondRule newBondRule, NotificationChain msgs) {
		BondRule oldBondRule = bondRule;
		bondRule = newBondRule;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__BOND_RULE, oldBondRule, newBondRule);
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
	public void setBondRule(BondRule newBondRule) {
		if (newBondRule != bondRule) {
			NotificationChain msgs = null;
			if (bondRule != null)
				msgs = ((InternalEObject)bondRule).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - BuildingPackage.WALL__BOND_RULE, null, msgs);
			if (newBondRule != null)
				msgs = ((InternalEObject)newBondRule).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - BuildingPackage.WALL__BOND_RULE, null, msgs);
			msgs = basicSetBondRule(newBondRule, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__BOND_RULE, newBondRule, newBondRule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Opening> getOpenings() {
		if (openings == null) {
			openings = new EObjectContainmentEList<Opening>(Opening.class, this, BuildingPackage.WALL__OPENINGS);
		}
		return openings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Pin> getPins() {
		if (pins == null) {
			pins = new EObjectContainmentEList<Pin>(Pin.class, this, BuildingPackage.WALL__PINS);
		}
		return pins;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Finish> getFinishes() {
		if (finishes == null) {
			finishes = new EObjectContainmentEList<Finish>(Finish.class, this, BuildingPackage.WALL__FINISHES);
		}
		return finishes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getElement() {
		return element;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(String newElement) {
		String oldElement = element;
		element = newElement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__ELEMENT, oldElement, element));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__MOVE_TOLERANCE, oldMoveTolerance, moveTolerance));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.WALL__SIZE_TOLERANCE, oldSizeTolerance, sizeTolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case BuildingPackage.WALL__TOP_PROFILE:
				return ((InternalEList<?>)getTopProfile()).basicRemove(otherEnd, msgs);
			case BuildingPackage.WALL__BOND_RULE:
				return basicSetBondRule(null, msgs);
			case BuildingPackage.WALL__OPENINGS:
				return ((InternalEList<?>)getOpenings()).basicRemove(otherEnd, msgs);
			case BuildingPackage.WALL__PINS:
				return ((InternalEList<?>)getPins()).basicRemove(otherEnd, msgs);
			case BuildingPackage.WALL__FINISHES:
				return ((InternalEList<?>)getFinishes()).basicRemove(otherEnd, msgs);
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
			case BuildingPackage.WALL__MARK:
				return getMark();
			case BuildingPackage.WALL__NOTE:
				return getNote();
			case BuildingPackage.WALL__FROM_X:
				return getFromX();
			case BuildingPackage.WALL__FROM_Y:
				return getFromY();
			case BuildingPackage.WALL__TO_X:
				return getToX();
			case BuildingPackage.WALL__TO_Y:
				return getToY();
			case BuildingPackage.WALL__UNIT_TYPE:
				if (resolve) return getUnitType();
				return basicGetUnitType();
			case BuildingPackage.WALL__BOND:
				return getBond();
			case BuildingPackage.WALL__BASE:
				return getBase();
			case BuildingPackage.WALL__HEIGHT:
				return getHeight();
			case BuildingPackage.WALL__TOP_PROFILE:
				return getTopProfile();
			case BuildingPackage.WALL__BOND_RULE:
				return getBondRule();
			case BuildingPackage.WALL__OPENINGS:
				return getOpenings();
			case BuildingPackage.WALL__PINS:
				return getPins();
			case BuildingPackage.WALL__FINISHES:
				return getFinishes();
			case BuildingPackage.WALL__ELEMENT:
				return getElement();
			case BuildingPackage.WALL__MOVE_TOLERANCE:
				return getMoveTolerance();
			case BuildingPackage.WALL__SIZE_TOLERANCE:
				return getSizeTolerance();
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
			case BuildingPackage.WALL__MARK:
				setMark((String)newValue);
				return;
			case BuildingPackage.WALL__NOTE:
				setNote((String)newValue);
				return;
			case BuildingPackage.WALL__FROM_X:
				setFromX((Length)newValue);
				return;
			case BuildingPackage.WALL__FROM_Y:
				setFromY((Length)newValue);
				return;
			case BuildingPackage.WALL__TO_X:
				setToX((Length)newValue);
				return;
			case BuildingPackage.WALL__TO_Y:
				setToY((Length)newValue);
				return;
			case BuildingPackage.WALL__UNIT_TYPE:
				setUnitType((UnitType)newValue);
				return;
			case BuildingPackage.WALL__BOND:
				setBond((Bond)newValue);
				return;
			case BuildingPackage.WALL__BASE:
				setBase((Length)newValue);
				return;
			case BuildingPackage.WALL__HEIGHT:
				setHeight((Length)newValue);
				return;
			case BuildingPackage.WALL__TOP_PROFILE:
				getTopProfile().clear();
				getTopProfile().addAll((Collection<? extends TopPoint>)newValue);
				return;
			case BuildingPackage.WALL__BOND_RULE:
				setBondRule((BondRule)newValue);
				return;
			case BuildingPackage.WALL__OPENINGS:
				getOpenings().clear();
				getOpenings().addAll((Collection<? extends Opening>)newValue);
				return;
			case BuildingPackage.WALL__PINS:
				getPins().clear();
				getPins().addAll((Collection<? extends Pin>)newValue);
				return;
			case BuildingPackage.WALL__FINISHES:
				getFinishes().clear();
				getFinishes().addAll((Collection<? extends Finish>)newValue);
				return;
			case BuildingPackage.WALL__ELEMENT:
				setElement((String)newValue);
				return;
			case BuildingPackage.WALL__MOVE_TOLERANCE:
				setMoveTolerance((Length)newValue);
				return;
			case BuildingPackage.WALL__SIZE_TOLERANCE:
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
			case BuildingPackage.WALL__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case BuildingPackage.WALL__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case BuildingPackage.WALL__FROM_X:
				setFromX(FROM_X_EDEFAULT);
				return;
			case BuildingPackage.WALL__FROM_Y:
				setFromY(FROM_Y_EDEFAULT);
				return;
			case BuildingPackage.WALL__TO_X:
				setToX(TO_X_EDEFAULT);
				return;
			case BuildingPackage.WALL__TO_Y:
				setToY(TO_Y_EDEFAULT);
				return;
			case BuildingPackage.WALL__UNIT_TYPE:
				setUnitType((UnitType)null);
				return;
			case BuildingPackage.WALL__BOND:
				setBond(BOND_EDEFAULT);
				return;
			case BuildingPackage.WALL__BASE:
				setBase(BASE_EDEFAULT);
				return;
			case BuildingPackage.WALL__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case BuildingPackage.WALL__TOP_PROFILE:
				getTopProfile().clear();
				return;
			case BuildingPackage.WALL__BOND_RULE:
				setBondRule((BondRule)null);
				return;
			case BuildingPackage.WALL__OPENINGS:
				getOpenings().clear();
				return;
			case BuildingPackage.WALL__PINS:
				getPins().clear();
				return;
			case BuildingPackage.WALL__FINISHES:
				getFinishes().clear();
				return;
			case BuildingPackage.WALL__ELEMENT:
				setElement(ELEMENT_EDEFAULT);
				return;
			case BuildingPackage.WALL__MOVE_TOLERANCE:
				setMoveTolerance(MOVE_TOLERANCE_EDEFAULT);
				return;
			case BuildingPackage.WALL__SIZE_TOLERANCE:
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
			case BuildingPackage.WALL__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case BuildingPackage.WALL__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case BuildingPackage.WALL__FROM_X:
				return FROM_X_EDEFAULT == null ? fromX != null : !FROM_X_EDEFAULT.equals(fromX);
			case BuildingPackage.WALL__FROM_Y:
				return FROM_Y_EDEFAULT == null ? fromY != null : !FROM_Y_EDEFAULT.equals(fromY);
			case BuildingPackage.WALL__TO_X:
				return TO_X_EDEFAULT == null ? toX != null : !TO_X_EDEFAULT.equals(toX);
			case BuildingPackage.WALL__TO_Y:
				return TO_Y_EDEFAULT == null ? toY != null : !TO_Y_EDEFAULT.equals(toY);
			case BuildingPackage.WALL__UNIT_TYPE:
				return unitType != null;
			case BuildingPackage.WALL__BOND:
				return bond != BOND_EDEFAULT;
			case BuildingPackage.WALL__BASE:
				return BASE_EDEFAULT == null ? base != null : !BASE_EDEFAULT.equals(base);
			case BuildingPackage.WALL__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case BuildingPackage.WALL__TOP_PROFILE:
				return topProfile != null && !topProfile.isEmpty();
			case BuildingPackage.WALL__BOND_RULE:
				return bondRule != null;
			case BuildingPackage.WALL__OPENINGS:
				return openings != null && !openings.isEmpty();
			case BuildingPackage.WALL__PINS:
				return pins != null && !pins.isEmpty();
			case BuildingPackage.WALL__FINISHES:
				return finishes != null && !finishes.isEmpty();
			case BuildingPackage.WALL__ELEMENT:
				return ELEMENT_EDEFAULT == null ? element != null : !ELEMENT_EDEFAULT.equals(element);
			case BuildingPackage.WALL__MOVE_TOLERANCE:
				return MOVE_TOLERANCE_EDEFAULT == null ? moveTolerance != null : !MOVE_TOLERANCE_EDEFAULT.equals(moveTolerance);
			case BuildingPackage.WALL__SIZE_TOLERANCE:
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
		result.append(", fromX: ");
		result.append(fromX);
		result.append(", fromY: ");
		result.append(fromY);
		result.append(", toX: ");
		result.append(toX);
		result.append(", toY: ");
		result.append(toY);
		result.append(", bond: ");
		result.append(bond);
		result.append(", base: ");
		result.append(base);
		result.append(", height: ");
		result.append(height);
		result.append(", element: ");
		result.append(element);
		result.append(", moveTolerance: ");
		result.append(moveTolerance);
		result.append(", sizeTolerance: ");
		result.append(sizeTolerance);
		result.append(')');
		return result.toString();
	}

} //WallImpl
