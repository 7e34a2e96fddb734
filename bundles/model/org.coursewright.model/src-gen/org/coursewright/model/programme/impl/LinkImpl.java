/**
 */
package org.coursewright.model.programme.impl;

import java.math.BigDecimal;

import org.coursewright.model.programme.Activity;
import org.coursewright.model.programme.LagKind;
import org.coursewright.model.programme.Link;
import org.coursewright.model.programme.LinkKind;
import org.coursewright.model.programme.ProgrammePackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Link</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.impl.LinkImpl#getPredecessor <em>Predecessor</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.LinkImpl#getSuccessor <em>Successor</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.LinkImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.LinkImpl#getLagHours <em>Lag Hours</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.LinkImpl#getLagKind <em>Lag Kind</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LinkImpl extends MinimalEObjectImpl.Container implements Link {
	/**
	 * The cached value of the '{@link #getPredecessor() <em>Predecessor</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPredecessor()
	 * @generated
	 * @ordered
	 */
	protected Activity predecessor;

	/**
	 * The cached value of the '{@link #getSuccessor() <em>Successor</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuccessor()
	 * @generated
	 * @ordered
	 */
	protected Activity successor;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final LinkKind KIND_EDEFAULT = LinkKind.FINISH_START;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected LinkKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getLagHours() <em>Lag Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLagHours()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LAG_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLagHours() <em>Lag Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLagHours()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal lagHours = LAG_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLagKind() <em>Lag Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLagKind()
	 * @generated
	 * @ordered
	 */
	protected static final LagKind LAG_KIND_EDEFAULT = LagKind.WORKING_TIME;

	/**
	 * The cached value of the '{@link #getLagKind() <em>Lag Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLagKind()
	 * @generated
	 * @ordered
	 */
	protected LagKind lagKind = LAG_KIND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LinkImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProgrammePackage.Literals.LINK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Activity getPredecessor() {
		if (predecessor != null && predecessor.eIsProxy()) {
			InternalEObject oldPredecessor = (InternalEObject)predecessor;
			predecessor = (Activity)eResolveProxy(oldPredecessor);
			if (predecessor != oldPredecessor) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProgrammePackage.LINK__PREDECESSOR, oldPredecessor, predecessor));
			}
		}
		return predecessor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Activity basicGetPredecessor() {
		return predecessor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPredecessor(Activity newPredecessor) {
		Activity oldPredecessor = predecessor;
		predecessor = newPredecessor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.LINK__PREDECESSOR, oldPredecessor, predecessor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Activity getSuccessor() {
		if (successor != null && successor.eIsProxy()) {
			InternalEObject oldSuccessor = (InternalEObject)successor;
			successor = (Activity)eResolveProxy(oldSuccessor);
			if (successor != oldSuccessor) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProgrammePackage.LINK__SUCCESSOR, oldSuccessor, successor));
			}
		}
		return successor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Activity basicGetSuccessor() {
		return successor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSuccessor(Activity newSuccessor) {
		Activity oldSuccessor = successor;
		successor = newSuccessor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.LINK__SUCCESSOR, oldSuccessor, successor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LinkKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(LinkKind newKind) {
		LinkKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.LINK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLagHours() {
		return lagHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLagHours(BigDecimal newLagHours) {
		BigDecimal oldLagHours = lagHours;
		lagHours = newLagHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.LINK__LAG_HOURS, oldLagHours, lagHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LagKind getLagKind() {
		return lagKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLagKind(LagKind newLagKind) {
		LagKind oldLagKind = lagKind;
		lagKind = newLagKind == null ? LAG_KIND_EDEFAULT : newLagKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProgrammePackage.LINK__LAG_KIND, oldLagKind, lagKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProgrammePackage.LINK__PREDECESSOR:
				if (resolve) return getPredecessor();
				return basicGetPredecessor();
			case ProgrammePackage.LINK__SUCCESSOR:
				if (resolve) return getSuccessor();
				return basicGetSuccessor();
			case ProgrammePackage.LINK__KIND:
				return getKind();
			case ProgrammePackage.LINK__LAG_HOURS:
				return getLagHours();
			case ProgrammePackage.LINK__LAG_KIND:
				return getLagKind();
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
			case ProgrammePackage.LINK__PREDECESSOR:
				setPredecessor((Activity)newValue);
				return;
			case ProgrammePackage.LINK__SUCCESSOR:
				setSuccessor((Activity)newValue);
				return;
			case ProgrammePackage.LINK__KIND:
				setKind((LinkKind)newValue);
				return;
			case ProgrammePackage.LINK__LAG_HOURS:
				setLagHours((BigDecimal)newValue);
				return;
			case ProgrammePackage.LINK__LAG_KIND:
				setLagKind((LagKind)newValue);
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
			case ProgrammePackage.LINK__PREDECESSOR:
				setPredecessor((Activity)null);
				return;
			case ProgrammePackage.LINK__SUCCESSOR:
				setSuccessor((Activity)null);
				return;
			case ProgrammePackage.LINK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ProgrammePackage.LINK__LAG_HOURS:
				setLagHours(LAG_HOURS_EDEFAULT);
				return;
			case ProgrammePackage.LINK__LAG_KIND:
				setLagKind(LAG_KIND_EDEFAULT);
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
			case ProgrammePackage.LINK__PREDECESSOR:
				return predecessor != null;
			case ProgrammePackage.LINK__SUCCESSOR:
				return successor != null;
			case ProgrammePackage.LINK__KIND:
				return kind != KIND_EDEFAULT;
			case ProgrammePackage.LINK__LAG_HOURS:
				return LAG_HOURS_EDEFAULT == null ? lagHours != null : !LAG_HOURS_EDEFAULT.equals(lagHours);
			case ProgrammePackage.LINK__LAG_KIND:
				return lagKind != LAG_KIND_EDEFAULT;
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", lagHours: ");
		result.append(lagHours);
		result.append(", lagKind: ");
		result.append(lagKind);
		result.append(')');
		return result.toString();
	}

} //LinkImpl
