/**
 */
package org.coursewright.model.building.impl;

import org.coursewright.measure.Length;

import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bond Rule</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getLeastLap <em>Least Lap</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getHeadLeast <em>Head Least</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getHeadNominal <em>Head Nominal</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getHeadMost <em>Head Most</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getBedLeast <em>Bed Least</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getBedNominal <em>Bed Nominal</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getBedMost <em>Bed Most</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getShortestPiece <em>Shortest Piece</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.BondRuleImpl#getFatJointReserve <em>Fat Joint Reserve</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BondRuleImpl extends MinimalEObjectImpl.Container implements BondRule {
	/**
	 * The default value of the '{@link #getLeastLap() <em>Least Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastLap()
	 * @generated
	 * @ordered
	 */
	protected static final Length LEAST_LAP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeastLap() <em>Least Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeastLap()
	 * @generated
	 * @ordered
	 */
	protected Length leastLap = LEAST_LAP_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeadLeast() <em>Head Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadLeast()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEAD_LEAST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeadLeast() <em>Head Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadLeast()
	 * @generated
	 * @ordered
	 */
	protected Length headLeast = HEAD_LEAST_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeadNominal() <em>Head Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadNominal()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEAD_NOMINAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeadNominal() <em>Head Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadNominal()
	 * @generated
	 * @ordered
	 */
	protected Length headNominal = HEAD_NOMINAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeadMost() <em>Head Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadMost()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEAD_MOST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeadMost() <em>Head Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadMost()
	 * @generated
	 * @ordered
	 */
	protected Length headMost = HEAD_MOST_EDEFAULT;

	/**
	 * The default value of the '{@link #getBedLeast() <em>Bed Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedLeast()
	 * @generated
	 * @ordered
	 */
	protected static final Length BED_LEAST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBedLeast() <em>Bed Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedLeast()
	 * @generated
	 * @ordered
	 */
	protected Length bedLeast = BED_LEAST_EDEFAULT;

	/**
	 * The default value of the '{@link #getBedNominal() <em>Bed Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedNominal()
	 * @generated
	 * @ordered
	 */
	protected static final Length BED_NOMINAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBedNominal() <em>Bed Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedNominal()
	 * @generated
	 * @ordered
	 */
	protected Length bedNominal = BED_NOMINAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getBedMost() <em>Bed Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedMost()
	 * @generated
	 * @ordered
	 */
	protected static final Length BED_MOST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBedMost() <em>Bed Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedMost()
	 * @generated
	 * @ordered
	 */
	protected Length bedMost = BED_MOST_EDEFAULT;

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
	 * The default value of the '{@link #getFatJointReserve() <em>Fat Joint Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatJointReserve()
	 * @generated
	 * @ordered
	 */
	protected static final Length FAT_JOINT_RESERVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFatJointReserve() <em>Fat Joint Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatJointReserve()
	 * @generated
	 * @ordered
	 */
	protected Length fatJointReserve = FAT_JOINT_RESERVE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BondRuleImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.BOND_RULE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLeastLap() {
		return leastLap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeastLap(Length newLeastLap) {
		Length oldLeastLap = leastLap;
		leastLap = newLeastLap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__LEAST_LAP, oldLeastLap, leastLap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeadLeast() {
		return headLeast;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadLeast(Length newHeadLeast) {
		Length oldHeadLeast = headLeast;
		headLeast = newHeadLeast;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__HEAD_LEAST, oldHeadLeast, headLeast));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeadNominal() {
		return headNominal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadNominal(Length newHeadNominal) {
		Length oldHeadNominal = headNominal;
		headNominal = newHeadNominal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__HEAD_NOMINAL, oldHeadNominal, headNominal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeadMost() {
		return headMost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadMost(Length newHeadMost) {
		Length oldHeadMost = headMost;
		headMost = newHeadMost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__HEAD_MOST, oldHeadMost, headMost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBedLeast() {
		return bedLeast;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBedLeast(Length newBedLeast) {
		Length oldBedLeast = bedLeast;
		bedLeast = newBedLeast;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__BED_LEAST, oldBedLeast, bedLeast));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBedNominal() {
		return bedNominal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBedNominal(Length newBedNominal) {
		Length oldBedNominal = bedNominal;
		bedNominal = newBedNominal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__BED_NOMINAL, oldBedNominal, bedNominal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBedMost() {
		return bedMost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBedMost(Length newBedMost) {
		Length oldBedMost = bedMost;
		bedMost = newBedMost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__BED_MOST, oldBedMost, bedMost));
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
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__SHORTEST_PIECE, oldShortestPiece, shortestPiece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFatJointReserve() {
		return fatJointReserve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFatJointReserve(Length newFatJointReserve) {
		Length oldFatJointReserve = fatJointReserve;
		fatJointReserve = newFatJointReserve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.BOND_RULE__FAT_JOINT_RESERVE, oldFatJointReserve, fatJointReserve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BuildingPackage.BOND_RULE__LEAST_LAP:
				return getLeastLap();
			case BuildingPackage.BOND_RULE__HEAD_LEAST:
				return getHeadLeast();
			case BuildingPackage.BOND_RULE__HEAD_NOMINAL:
				return getHeadNominal();
			case BuildingPackage.BOND_RULE__HEAD_MOST:
				return getHeadMost();
			case BuildingPackage.BOND_RULE__BED_LEAST:
				return getBedLeast();
			case BuildingPackage.BOND_RULE__BED_NOMINAL:
				return getBedNominal();
			case BuildingPackage.BOND_RULE__BED_MOST:
				return getBedMost();
			case BuildingPackage.BOND_RULE__SHORTEST_PIECE:
				return getShortestPiece();
			case BuildingPackage.BOND_RULE__FAT_JOINT_RESERVE:
				return getFatJointReserve();
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
			case BuildingPackage.BOND_RULE__LEAST_LAP:
				setLeastLap((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__HEAD_LEAST:
				setHeadLeast((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__HEAD_NOMINAL:
				setHeadNominal((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__HEAD_MOST:
				setHeadMost((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__BED_LEAST:
				setBedLeast((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__BED_NOMINAL:
				setBedNominal((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__BED_MOST:
				setBedMost((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__SHORTEST_PIECE:
				setShortestPiece((Length)newValue);
				return;
			case BuildingPackage.BOND_RULE__FAT_JOINT_RESERVE:
				setFatJointReserve((Length)newValue);
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
			case BuildingPackage.BOND_RULE__LEAST_LAP:
				setLeastLap(LEAST_LAP_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__HEAD_LEAST:
				setHeadLeast(HEAD_LEAST_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__HEAD_NOMINAL:
				setHeadNominal(HEAD_NOMINAL_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__HEAD_MOST:
				setHeadMost(HEAD_MOST_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__BED_LEAST:
				setBedLeast(BED_LEAST_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__BED_NOMINAL:
				setBedNominal(BED_NOMINAL_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__BED_MOST:
				setBedMost(BED_MOST_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__SHORTEST_PIECE:
				setShortestPiece(SHORTEST_PIECE_EDEFAULT);
				return;
			case BuildingPackage.BOND_RULE__FAT_JOINT_RESERVE:
				setFatJointReserve(FAT_JOINT_RESERVE_EDEFAULT);
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
			case BuildingPackage.BOND_RULE__LEAST_LAP:
				return LEAST_LAP_EDEFAULT == null ? leastLap != null : !LEAST_LAP_EDEFAULT.equals(leastLap);
			case BuildingPackage.BOND_RULE__HEAD_LEAST:
				return HEAD_LEAST_EDEFAULT == null ? headLeast != null : !HEAD_LEAST_EDEFAULT.equals(headLeast);
			case BuildingPackage.BOND_RULE__HEAD_NOMINAL:
				return HEAD_NOMINAL_EDEFAULT == null ? headNominal != null : !HEAD_NOMINAL_EDEFAULT.equals(headNominal);
			case BuildingPackage.BOND_RULE__HEAD_MOST:
				return HEAD_MOST_EDEFAULT == null ? headMost != null : !HEAD_MOST_EDEFAULT.equals(headMost);
			case BuildingPackage.BOND_RULE__BED_LEAST:
				return BED_LEAST_EDEFAULT == null ? bedLeast != null : !BED_LEAST_EDEFAULT.equals(bedLeast);
			case BuildingPackage.BOND_RULE__BED_NOMINAL:
				return BED_NOMINAL_EDEFAULT == null ? bedNominal != null : !BED_NOMINAL_EDEFAULT.equals(bedNominal);
			case BuildingPackage.BOND_RULE__BED_MOST:
				return BED_MOST_EDEFAULT == null ? bedMost != null : !BED_MOST_EDEFAULT.equals(bedMost);
			case BuildingPackage.BOND_RULE__SHORTEST_PIECE:
				return SHORTEST_PIECE_EDEFAULT == null ? shortestPiece != null : !SHORTEST_PIECE_EDEFAULT.equals(shortestPiece);
			case BuildingPackage.BOND_RULE__FAT_JOINT_RESERVE:
				return FAT_JOINT_RESERVE_EDEFAULT == null ? fatJointReserve != null : !FAT_JOINT_RESERVE_EDEFAULT.equals(fatJointReserve);
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
		result.append(" (leastLap: ");
		result.append(leastLap);
		result.append(", headLeast: ");
		result.append(headLeast);
		result.append(", headNominal: ");
		result.append(headNominal);
		result.append(", headMost: ");
		result.append(headMost);
		result.append(", bedLeast: ");
		result.append(bedLeast);
		result.append(", bedNominal: ");
		result.append(bedNominal);
		result.append(", bedMost: ");
		result.append(bedMost);
		result.append(", shortestPiece: ");
		result.append(shortestPiece);
		result.append(", fatJointReserve: ");
		result.append(fatJointReserve);
		result.append(')');
		return result.toString();
	}

} //BondRuleImpl
