/**
 */
package org.coursewright.model.supply.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.coursewright.model.supply.Delivery;
import org.coursewright.model.supply.DeliveryLine;
import org.coursewright.model.supply.Order;
import org.coursewright.model.supply.SupplyPackage;

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
 * An implementation of the model object '<em><b>Delivery</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.impl.DeliveryImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.DeliveryImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.DeliveryImpl#getOrder <em>Order</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.DeliveryImpl#getArrivedOn <em>Arrived On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.DeliveryImpl#getLines <em>Lines</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DeliveryImpl extends MinimalEObjectImpl.Container implements Delivery {
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
	 * The cached value of the '{@link #getOrder() <em>Order</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrder()
	 * @generated
	 * @ordered
	 */
	protected Order order;

	/**
	 * The default value of the '{@link #getArrivedOn() <em>Arrived On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArrivedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ARRIVED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getArrivedOn() <em>Arrived On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArrivedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate arrivedOn = ARRIVED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected EList<DeliveryLine> lines;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DeliveryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SupplyPackage.Literals.DELIVERY;
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
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.DELIVERY__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.DELIVERY__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Order getOrder() {
		if (order != null && order.eIsProxy()) {
			InternalEObject oldOrder = (InternalEObject)order;
			order = (Order)eResolveProxy(oldOrder);
			if (order != oldOrder) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.DELIVERY__ORDER, oldOrder, order));
			}
		}
		return order;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Order basicGetOrder() {
		return order;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrder(Order newOrder) {
		Order oldOrder = order;
		order = newOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.DELIVERY__ORDER, oldOrder, order));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getArrivedOn() {
		return arrivedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArrivedOn(LocalDate newArrivedOn) {
		LocalDate oldArrivedOn = arrivedOn;
		arrivedOn = newArrivedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.DELIVERY__ARRIVED_ON, oldArrivedOn, arrivedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeliveryLine> getLines() {
		if (lines == null) {
			lines = new EObjectContainmentEList<DeliveryLine>(DeliveryLine.class, this, SupplyPackage.DELIVERY__LINES);
		}
		return lines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SupplyPackage.DELIVERY__LINES:
				return ((InternalEList<?>)getLines()).basicRemove(otherEnd, msgs);
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
			case SupplyPackage.DELIVERY__MARK:
				return getMark();
			case SupplyPackage.DELIVERY__NOTE:
				return getNote();
			case SupplyPackage.DELIVERY__ORDER:
				if (resolve) return getOrder();
				return basicGetOrder();
			case SupplyPackage.DELIVERY__ARRIVED_ON:
				return getArrivedOn();
			case SupplyPackage.DELIVERY__LINES:
				return getLines();
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
			case SupplyPackage.DELIVERY__MARK:
				setMark((String)newValue);
				return;
			case SupplyPackage.DELIVERY__NOTE:
				setNote((String)newValue);
				return;
			case SupplyPackage.DELIVERY__ORDER:
				setOrder((Order)newValue);
				return;
			case SupplyPackage.DELIVERY__ARRIVED_ON:
				setArrivedOn((LocalDate)newValue);
				return;
			case SupplyPackage.DELIVERY__LINES:
				getLines().clear();
				getLines().addAll((Collection<? extends DeliveryLine>)newValue);
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
			case SupplyPackage.DELIVERY__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case SupplyPackage.DELIVERY__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case SupplyPackage.DELIVERY__ORDER:
				setOrder((Order)null);
				return;
			case SupplyPackage.DELIVERY__ARRIVED_ON:
				setArrivedOn(ARRIVED_ON_EDEFAULT);
				return;
			case SupplyPackage.DELIVERY__LINES:
				getLines().clear();
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
			case SupplyPackage.DELIVERY__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case SupplyPackage.DELIVERY__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case SupplyPackage.DELIVERY__ORDER:
				return order != null;
			case SupplyPackage.DELIVERY__ARRIVED_ON:
				return ARRIVED_ON_EDEFAULT == null ? arrivedOn != null : !ARRIVED_ON_EDEFAULT.equals(arrivedOn);
			case SupplyPackage.DELIVERY__LINES:
				return lines != null && !lines.isEmpty();
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
		result.append(", arrivedOn: ");
		result.append(arrivedOn);
		result.append(')');
		return result.toString();
	}

} //DeliveryImpl
