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
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getAirShare <em>Air Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getLeastWaterShare <em>Least Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getMostWaterShare <em>Most Water Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getWasteShare <em>Waste Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getDryDensity <em>Dry Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getLooseShare <em>Loose Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.MixDesign#getSpoiledShare <em>Spoiled Share</em>}</li>
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

	/**
	 * Returns the value of the '<em><b>Air Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Air in the mixed volume (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Air Share</em>' attribute.
	 * @see #setAirShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_AirShare()
	 * @model
	 * @generated
	 */
	BigDecimal getAirShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getAirShare <em>Air Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Air Share</em>' attribute.
	 * @see #getAirShare()
	 * @generated
	 */
	void setAirShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Least Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least water per dry mass (1), or unset for the water aimed at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Least Water Share</em>' attribute.
	 * @see #setLeastWaterShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_LeastWaterShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLeastWaterShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getLeastWaterShare <em>Least Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Least Water Share</em>' attribute.
	 * @see #getLeastWaterShare()
	 * @generated
	 */
	void setLeastWaterShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Most Water Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most water per dry mass (1), or unset for the water aimed at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Most Water Share</em>' attribute.
	 * @see #setMostWaterShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_MostWaterShare()
	 * @model
	 * @generated
	 */
	BigDecimal getMostWaterShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getMostWaterShare <em>Most Water Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Most Water Share</em>' attribute.
	 * @see #getMostWaterShare()
	 * @generated
	 */
	void setMostWaterShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Waste Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mixed on top of what is in place (1), or unset for 0.25.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Waste Share</em>' attribute.
	 * @see #setWasteShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_WasteShare()
	 * @model
	 * @generated
	 */
	BigDecimal getWasteShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getWasteShare <em>Waste Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Waste Share</em>' attribute.
	 * @see #getWasteShare()
	 * @generated
	 */
	void setWasteShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Dry Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of blocks pressed of it, dry (kg/m3).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dry Density</em>' attribute.
	 * @see #setDryDensity(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_DryDensity()
	 * @model
	 * @generated
	 */
	BigDecimal getDryDensity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getDryDensity <em>Dry Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Density</em>' attribute.
	 * @see #getDryDensity()
	 * @generated
	 */
	void setDryDensity(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Loose Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loose mix per volume of pressed block (1), or unset for 1.65.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Loose Share</em>' attribute.
	 * @see #setLooseShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_LooseShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLooseShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getLooseShare <em>Loose Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Loose Share</em>' attribute.
	 * @see #getLooseShare()
	 * @generated
	 */
	void setLooseShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Spoiled Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressed on top for spill and rejects (1), or unset for 0.05.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spoiled Share</em>' attribute.
	 * @see #setSpoiledShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMixDesign_SpoiledShare()
	 * @model
	 * @generated
	 */
	BigDecimal getSpoiledShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.MixDesign#getSpoiledShare <em>Spoiled Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spoiled Share</em>' attribute.
	 * @see #getSpoiledShare()
	 * @generated
	 */
	void setSpoiledShare(BigDecimal value);

} // MixDesign
