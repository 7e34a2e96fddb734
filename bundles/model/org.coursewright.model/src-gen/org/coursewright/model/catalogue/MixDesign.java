/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mix Design</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Parts of a mix and what it yields.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getYieldShare <em>Yield Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getWaterShare <em>Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getStabiliserShare <em>Stabiliser Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign()
 * @model
 * @generated
 */
public interface MixDesign extends Marked {
	/**
	 * Returns the value of the '<em><b>Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.catalogue.MixBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether parts are by volume or by mass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Basis</em>' attribute.
	 * @see org.coursewright.model.catalogue.MixBasis
	 * @see #setBasis(MixBasis)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_Basis()
	 * @model
	 * @generated
	 */
	MixBasis getBasis();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getBasis <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basis</em>' attribute.
	 * @see org.coursewright.model.catalogue.MixBasis
	 * @see #getBasis()
	 * @generated
	 */
	void setBasis(MixBasis value);

	/**
	 * Returns the value of the '<em><b>Yield Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of mix per loose volume of its dry parts (1).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yield Share</em>' attribute.
	 * @see #setYieldShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_YieldShare()
	 * @model
	 * @generated
	 */
	BigDecimal getYieldShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getYieldShare <em>Yield Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yield Share</em>' attribute.
	 * @see #getYieldShare()
	 * @generated
	 */
	void setYieldShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water per dry mass (1).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Water Share</em>' attribute.
	 * @see #setWaterShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_WaterShare()
	 * @model
	 * @generated
	 */
	BigDecimal getWaterShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getWaterShare <em>Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Share</em>' attribute.
	 * @see #getWaterShare()
	 * @generated
	 */
	void setWaterShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Stabiliser Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stabiliser per dry mass of soil (1).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stabiliser Share</em>' attribute.
	 * @see #setStabiliserShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_StabiliserShare()
	 * @model
	 * @generated
	 */
	BigDecimal getStabiliserShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getStabiliserShare <em>Stabiliser Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stabiliser Share</em>' attribute.
	 * @see #getStabiliserShare()
	 * @generated
	 */
	void setStabiliserShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.catalogue.MixPart}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What goes in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts</em>' containment reference list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_Parts()
	 * @model containment="true"
	 * @generated
	 */
	EList<MixPart> getParts();

} // MixDesign
