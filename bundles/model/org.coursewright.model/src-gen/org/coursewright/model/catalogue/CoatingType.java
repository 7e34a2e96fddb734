/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Coating Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A sealer or wash.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.CoatingType#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.CoatingType#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.CoatingType#getCoats <em>Coats</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getCoatingType()
 * @model
 * @generated
 */
public interface CoatingType extends Marked {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is applied.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' reference.
	 * @see #setMaterial(Material)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCoatingType_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CoatingType#getMaterial <em>Material</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' reference.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Area per unit of material and coat (m2).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coverage</em>' attribute.
	 * @see #setCoverage(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCoatingType_Coverage()
	 * @model
	 * @generated
	 */
	BigDecimal getCoverage();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CoatingType#getCoverage <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coverage</em>' attribute.
	 * @see #getCoverage()
	 * @generated
	 */
	void setCoverage(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Coats</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many coats.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coats</em>' attribute.
	 * @see #setCoats(int)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCoatingType_Coats()
	 * @model default="1"
	 * @generated
	 */
	int getCoats();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CoatingType#getCoats <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coats</em>' attribute.
	 * @see #getCoats()
	 * @generated
	 */
	void setCoats(int value);

} // CoatingType
