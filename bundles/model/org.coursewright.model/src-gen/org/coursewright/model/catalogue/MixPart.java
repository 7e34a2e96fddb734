/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mix Part</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One ingredient of a mix.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.MixPart#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixPart#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getMixPart()
 * @model
 * @generated
 */
public interface MixPart extends EObject {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The ingredient.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' reference.
	 * @see #setMaterial(Material)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixPart_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixPart#getMaterial <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' reference.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many parts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts</em>' attribute.
	 * @see #setParts(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixPart_Parts()
	 * @model
	 * @generated
	 */
	BigDecimal getParts();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixPart#getParts <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts</em>' attribute.
	 * @see #getParts()
	 * @generated
	 */
	void setParts(BigDecimal value);

} // MixPart
