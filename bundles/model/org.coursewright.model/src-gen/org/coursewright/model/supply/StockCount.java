/**
 */
package org.coursewright.model.supply;

import java.time.LocalDate;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.UnitType;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock Count</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was counted on site.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.StockCount#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.supply.StockCount#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.supply.StockCount#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.coursewright.model.supply.StockCount#getCountedOn <em>Counted On</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getStockCount()
 * @model
 * @generated
 */
public interface StockCount extends EObject {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of what, unless it is a unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' reference.
	 * @see #setMaterial(Material)
	 * @see org.coursewright.model.supply.SupplyPackage#getStockCount_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.StockCount#getMaterial <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' reference.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which unit, unless it is a material.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.supply.SupplyPackage#getStockCount_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.StockCount#getUnitType <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Type</em>' reference.
	 * @see #getUnitType()
	 * @generated
	 */
	void setUnitType(UnitType value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getStockCount_Quantity()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getQuantity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.StockCount#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Counted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Counted On</em>' attribute.
	 * @see #setCountedOn(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getStockCount_CountedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getCountedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.StockCount#getCountedOn <em>Counted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Counted On</em>' attribute.
	 * @see #getCountedOn()
	 * @generated
	 */
	void setCountedOn(LocalDate value);

} // StockCount
