/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.measure.Length;
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
 *   <li>{@link org.coursewright.model.catalogue.Material#getCompactedDensity <em>Compacted Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getParticleDensity <em>Particle Density</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getMoistureShare <em>Moisture Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getAbsorbedShare <em>Absorbed Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getBulkingShare <em>Bulking Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#getLargestParticle <em>Largest Particle</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#isBinder <em>Binder</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Material#isDugOnSite <em>Dug On Site</em>}</li>
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
	 * Loose, dry (kg/m3).
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

	/**
	 * Returns the value of the '<em><b>Compacted Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rammed, dry (kg/m3), or unset for that of the loose material.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Compacted Density</em>' attribute.
	 * @see #setCompactedDensity(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_CompactedDensity()
	 * @model
	 * @generated
	 */
	BigDecimal getCompactedDensity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getCompactedDensity <em>Compacted Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Compacted Density</em>' attribute.
	 * @see #getCompactedDensity()
	 * @generated
	 */
	void setCompactedDensity(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Particle Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its particles without voids (kg/m3), or unset for 2650.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Particle Density</em>' attribute.
	 * @see #setParticleDensity(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_ParticleDensity()
	 * @model
	 * @generated
	 */
	BigDecimal getParticleDensity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getParticleDensity <em>Particle Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Particle Density</em>' attribute.
	 * @see #getParticleDensity()
	 * @generated
	 */
	void setParticleDensity(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Moisture Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water in it as it lies per dry mass (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Moisture Share</em>' attribute.
	 * @see #setMoistureShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_MoistureShare()
	 * @model
	 * @generated
	 */
	BigDecimal getMoistureShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getMoistureShare <em>Moisture Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Moisture Share</em>' attribute.
	 * @see #getMoistureShare()
	 * @generated
	 */
	void setMoistureShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Absorbed Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water that its particles take in per dry mass (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Absorbed Share</em>' attribute.
	 * @see #setAbsorbedShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_AbsorbedShare()
	 * @model
	 * @generated
	 */
	BigDecimal getAbsorbedShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getAbsorbedShare <em>Absorbed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Absorbed Share</em>' attribute.
	 * @see #getAbsorbedShare()
	 * @generated
	 */
	void setAbsorbedShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Bulking Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By which its loose volume is larger than dry (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bulking Share</em>' attribute.
	 * @see #setBulkingShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_BulkingShare()
	 * @model
	 * @generated
	 */
	BigDecimal getBulkingShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getBulkingShare <em>Bulking Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bulking Share</em>' attribute.
	 * @see #getBulkingShare()
	 * @generated
	 */
	void setBulkingShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Largest Particle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Largest grain, for the least joint that it fits.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Largest Particle</em>' attribute.
	 * @see #setLargestParticle(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_LargestParticle()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLargestParticle();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#getLargestParticle <em>Largest Particle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Largest Particle</em>' attribute.
	 * @see #getLargestParticle()
	 * @generated
	 */
	void setLargestParticle(Length value);

	/**
	 * Returns the value of the '<em><b>Binder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it binds, as cement and lime do.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Binder</em>' attribute.
	 * @see #setBinder(boolean)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_Binder()
	 * @model
	 * @generated
	 */
	boolean isBinder();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#isBinder <em>Binder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Binder</em>' attribute.
	 * @see #isBinder()
	 * @generated
	 */
	void setBinder(boolean value);

	/**
	 * Returns the value of the '<em><b>Dug On Site</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it comes from the site and is not hauled.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dug On Site</em>' attribute.
	 * @see #setDugOnSite(boolean)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getMaterial_DugOnSite()
	 * @model
	 * @generated
	 */
	boolean isDugOnSite();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Material#isDugOnSite <em>Dug On Site</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dug On Site</em>' attribute.
	 * @see #isDugOnSite()
	 * @generated
	 */
	void setDugOnSite(boolean value);

} // Material
