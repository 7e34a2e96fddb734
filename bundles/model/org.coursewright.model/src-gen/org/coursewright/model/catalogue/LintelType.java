/**
 */
package org.coursewright.model.catalogue;

import org.coursewright.measure.Length;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lintel Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A lintel by section.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.LintelType#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.LintelType#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.LintelType#getBearing <em>Bearing</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.LintelType#getMaterial <em>Material</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getLintelType()
 * @model
 * @generated
 */
public interface LintelType extends Marked {
	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of the lintel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getLintelType_Height()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.LintelType#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Across the wall, or unset for the wall's thickness.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getLintelType_Width()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.LintelType#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length that rests on masonry at each end.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bearing</em>' attribute.
	 * @see #setBearing(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getLintelType_Bearing()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getBearing();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.LintelType#getBearing <em>Bearing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bearing</em>' attribute.
	 * @see #getBearing()
	 * @generated
	 */
	void setBearing(Length value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' reference.
	 * @see #setMaterial(Material)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getLintelType_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.LintelType#getMaterial <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' reference.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

} // LintelType
