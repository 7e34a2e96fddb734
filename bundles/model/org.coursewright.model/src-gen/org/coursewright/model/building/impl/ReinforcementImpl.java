/**
 */
package org.coursewright.model.building.impl;

import org.coursewright.measure.Length;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Reinforcement;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reinforcement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.impl.ReinforcementImpl#getBar <em>Bar</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.ReinforcementImpl#getLines <em>Lines</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.ReinforcementImpl#getStock <em>Stock</em>}</li>
 *   <li>{@link org.coursewright.model.building.impl.ReinforcementImpl#getLap <em>Lap</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReinforcementImpl extends MinimalEObjectImpl.Container implements Reinforcement {
	/**
	 * The default value of the '{@link #getBar() <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBar()
	 * @generated
	 * @ordered
	 */
	protected static final String BAR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBar() <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBar()
	 * @generated
	 * @ordered
	 */
	protected String bar = BAR_EDEFAULT;

	/**
	 * The default value of the '{@link #getLines() <em>Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected static final int LINES_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected int lines = LINES_EDEFAULT;

	/**
	 * The default value of the '{@link #getStock() <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStock()
	 * @generated
	 * @ordered
	 */
	protected static final Length STOCK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStock() <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStock()
	 * @generated
	 * @ordered
	 */
	protected Length stock = STOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getLap() <em>Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLap()
	 * @generated
	 * @ordered
	 */
	protected static final Length LAP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLap() <em>Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLap()
	 * @generated
	 * @ordered
	 */
	protected Length lap = LAP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReinforcementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return BuildingPackage.Literals.REINFORCEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBar() {
		return bar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBar(String newBar) {
		String oldBar = bar;
		bar = newBar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.REINFORCEMENT__BAR, oldBar, bar));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLines() {
		return lines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLines(int newLines) {
		int oldLines = lines;
		lines = newLines;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.REINFORCEMENT__LINES, oldLines, lines));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getStock() {
		return stock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStock(Length newStock) {
		Length oldStock = stock;
		stock = newStock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.REINFORCEMENT__STOCK, oldStock, stock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLap() {
		return lap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLap(Length newLap) {
		Length oldLap = lap;
		lap = newLap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, BuildingPackage.REINFORCEMENT__LAP, oldLap, lap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case BuildingPackage.REINFORCEMENT__BAR:
				return getBar();
			case BuildingPackage.REINFORCEMENT__LINES:
				return getLines();
			case BuildingPackage.REINFORCEMENT__STOCK:
				return getStock();
			case BuildingPackage.REINFORCEMENT__LAP:
				return getLap();
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
			case BuildingPackage.REINFORCEMENT__BAR:
				setBar((String)newValue);
				return;
			case BuildingPackage.REINFORCEMENT__LINES:
				setLines((Integer)newValue);
				return;
			case BuildingPackage.REINFORCEMENT__STOCK:
				setStock((Length)newValue);
				return;
			case BuildingPackage.REINFORCEMENT__LAP:
				setLap((Length)newValue);
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
			case BuildingPackage.REINFORCEMENT__BAR:
				setBar(BAR_EDEFAULT);
				return;
			case BuildingPackage.REINFORCEMENT__LINES:
				setLines(LINES_EDEFAULT);
				return;
			case BuildingPackage.REINFORCEMENT__STOCK:
				setStock(STOCK_EDEFAULT);
				return;
			case BuildingPackage.REINFORCEMENT__LAP:
				setLap(LAP_EDEFAULT);
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
			case BuildingPackage.REINFORCEMENT__BAR:
				return BAR_EDEFAULT == null ? bar != null : !BAR_EDEFAULT.equals(bar);
			case BuildingPackage.REINFORCEMENT__LINES:
				return lines != LINES_EDEFAULT;
			case BuildingPackage.REINFORCEMENT__STOCK:
				return STOCK_EDEFAULT == null ? stock != null : !STOCK_EDEFAULT.equals(stock);
			case BuildingPackage.REINFORCEMENT__LAP:
				return LAP_EDEFAULT == null ? lap != null : !LAP_EDEFAULT.equals(lap);
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
		result.append(" (bar: ");
		result.append(bar);
		result.append(", lines: ");
		result.append(lines);
		result.append(", stock: ");
		result.append(stock);
		result.append(", lap: ");
		result.append(lap);
		result.append(')');
		return result.toString();
	}

} //ReinforcementImpl
