/**
 */
package org.coursewright.model.supply.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.coursewright.model.supply.Order;
import org.coursewright.model.supply.OrderLine;
import org.coursewright.model.supply.Supplier;
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
 * An implementation of the model object '<em><b>Order</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getPlacedOn <em>Placed On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getDueOn <em>Due On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.impl.OrderImpl#getLines <em>Lines</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OrderImpl extends MinimalEObjectImpl.Container implements Order {
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
	 * The cached value of the '{@link #getSupplier() <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplier()
	 * @generated
	 * @ordered
	 */
	protected Supplier supplier;

	/**
	 * The default value of the '{@link #getPlacedOn() <em>Placed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate PLACED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlacedOn() <em>Placed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate placedOn = PLACED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getDueOn() <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDueOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DUE_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDueOn() <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDueOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate dueOn = DUE_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected EList<OrderLine> lines;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OrderImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SupplyPackage.Literals.ORDER;
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
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.ORDER__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.ORDER__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supplier getSupplier() {
		if (supplier != null && supplier.eIsProxy()) {
			InternalEObject oldSupplier = (InternalEObject)supplier;
			supplier = (Supplier)eResolveProxy(oldSupplier);
			if (supplier != oldSupplier) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, SupplyPackage.ORDER__SUPPLIER, oldSupplier, supplier));
			}
		}
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Supplier basicGetSupplier() {
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplier(Supplier newSupplier) {
		Supplier oldSupplier = supplier;
		supplier = newSupplier;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.ORDER__SUPPLIER, oldSupplier, supplier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getPlacedOn() {
		return placedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlacedOn(LocalDate newPlacedOn) {
		LocalDate oldPlacedOn = placedOn;
		placedOn = newPlacedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.ORDER__PLACED_ON, oldPlacedOn, placedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDueOn() {
		return dueOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDueOn(LocalDate newDueOn) {
		LocalDate oldDueOn = dueOn;
		dueOn = newDueOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SupplyPackage.ORDER__DUE_ON, oldDueOn, dueOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<OrderLine> getLines() {
		if (lines == null) {
			lines = new EObjectContainmentEList<OrderLine>(OrderLine.class, this, SupplyPackage.ORDER__LINES);
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
			case SupplyPackage.ORDER__LINES:
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
			case SupplyPackage.ORDER__MARK:
				return getMark();
			case SupplyPackage.ORDER__NOTE:
				return getNote();
			case SupplyPackage.ORDER__SUPPLIER:
				if (resolve) return getSupplier();
				return basicGetSupplier();
			case SupplyPackage.ORDER__PLACED_ON:
				return getPlacedOn();
			case SupplyPackage.ORDER__DUE_ON:
				return getDueOn();
			case SupplyPackage.ORDER__LINES:
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
			case SupplyPackage.ORDER__MARK:
				setMark((String)newValue);
				return;
			case SupplyPackage.ORDER__NOTE:
				setNote((String)newValue);
				return;
			case SupplyPackage.ORDER__SUPPLIER:
				setSupplier((Supplier)newValue);
				return;
			case SupplyPackage.ORDER__PLACED_ON:
				setPlacedOn((LocalDate)newValue);
				return;
			case SupplyPackage.ORDER__DUE_ON:
				setDueOn((LocalDate)newValue);
				return;
			case SupplyPackage.ORDER__LINES:
				getLines().clear();
				getLines().addAll((Collection<? extends OrderLine>)newValue);
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
			case SupplyPackage.ORDER__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case SupplyPackage.ORDER__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case SupplyPackage.ORDER__SUPPLIER:
				setSupplier((Supplier)null);
				return;
			case SupplyPackage.ORDER__PLACED_ON:
				setPlacedOn(PLACED_ON_EDEFAULT);
				return;
			case SupplyPackage.ORDER__DUE_ON:
				setDueOn(DUE_ON_EDEFAULT);
				return;
			case SupplyPackage.ORDER__LINES:
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
			case SupplyPackage.ORDER__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case SupplyPackage.ORDER__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case SupplyPackage.ORDER__SUPPLIER:
				return supplier != null;
			case SupplyPackage.ORDER__PLACED_ON:
				return PLACED_ON_EDEFAULT == null ? placedOn != null : !PLACED_ON_EDEFAULT.equals(placedOn);
			case SupplyPackage.ORDER__DUE_ON:
				return DUE_ON_EDEFAULT == null ? dueOn != null : !DUE_ON_EDEFAULT.equals(dueOn);
			case SupplyPackage.ORDER__LINES:
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
		result.append(", placedOn: ");
		result.append(placedOn);
		result.append(", dueOn: ");
		result.append(dueOn);
		result.append(')');
		return result.toString();
	}

} //OrderImpl
