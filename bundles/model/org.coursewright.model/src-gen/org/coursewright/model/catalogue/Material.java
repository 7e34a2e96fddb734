/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.measure.Quantity;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Material</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something measured and bought.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.Material#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getUnitCode <em>Unit Code</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getDensity <em>Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getPack <em>Pack</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getWasteShare <em>Waste Share</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial()
 * @model
 * @generated
 */
public interface Material extends Marked {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In full.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Unit Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * UN/ECE Recommendation 20 code it is measured in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Code</em>' attribute.
	 * @see #setUnitCode(String)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_UnitCode()
	 * @model
	 * @generated
	 */
	String getUnitCode();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getUnitCode <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Code</em>' attribute.
	 * @see #getUnitCode()
	 * @generated
	 */
	void setUnitCode(String value);

	/**
	 * Returns the value of the '<em><b>Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loose (kg/m3).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Density</em>' attribute.
	 * @see #setDensity(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_Density()
	 * @model
	 * @generated
	 */
	BigDecimal getDensity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getDensity <em>Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density</em>' attribute.
	 * @see #getDensity()
	 * @generated
	 */
	void setDensity(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Pack</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Content of one pack.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pack</em>' attribute.
	 * @see #setPack(Quantity)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_Pack()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getPack();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getPack <em>Pack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pack</em>' attribute.
	 * @see #getPack()
	 * @generated
	 */
	void setPack(Quantity value);

	/**
	 * Returns the value of the '<em><b>Waste Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lost per used (1).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Waste Share</em>' attribute.
	 * @see #setWasteShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_WasteShare()
	 * @model
	 * @generated
	 */
	BigDecimal getWasteShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getWasteShare <em>Waste Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Waste Share</em>' attribute.
	 * @see #getWasteShare()
	 * @generated
	 */
	void setWasteShare(BigDecimal value);

} // Material
