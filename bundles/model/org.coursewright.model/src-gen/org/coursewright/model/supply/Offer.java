/**
 */
package org.coursewright.model.supply;

import java.time.LocalDate;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Offer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A price for something.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.supply.Offer#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getLeastLot <em>Least Lot</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getLoadSize <em>Load Size</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getHaulage <em>Haulage</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getLeadDays <em>Lead Days</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getQuotedOn <em>Quoted On</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getValidUntil <em>Valid Until</em>}</li>
 *   <li>{@link org.coursewright.model.supply.Offer#getPriceBreaks <em>Price Breaks</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.supply.SupplyPackage#getOffer()
 * @model
 * @generated
 */
public interface Offer extends Marked {
	/**
	 * Returns the value of the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whose.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supplier</em>' reference.
	 * @see #setSupplier(Supplier)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_Supplier()
	 * @model
	 * @generated
	 */
	Supplier getSupplier();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getSupplier <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supplier</em>' reference.
	 * @see #getSupplier()
	 * @generated
	 */
	void setSupplier(Supplier value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For what, unless it is a unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' reference.
	 * @see #setMaterial(Material)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_Material()
	 * @model
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getMaterial <em>Material</em>}' reference.
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
	 * For which unit, unless it is a material.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getUnitType <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Type</em>' reference.
	 * @see #getUnitType()
	 * @generated
	 */
	void setUnitType(UnitType value);

	/**
	 * Returns the value of the '<em><b>Least Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Smallest order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Least Lot</em>' attribute.
	 * @see #setLeastLot(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_LeastLot()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getLeastLot();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getLeastLot <em>Least Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Least Lot</em>' attribute.
	 * @see #getLeastLot()
	 * @generated
	 */
	void setLeastLot(Quantity value);

	/**
	 * Returns the value of the '<em><b>Load Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What one load carries.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Load Size</em>' attribute.
	 * @see #setLoadSize(Quantity)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_LoadSize()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getLoadSize();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getLoadSize <em>Load Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Load Size</em>' attribute.
	 * @see #getLoadSize()
	 * @generated
	 */
	void setLoadSize(Quantity value);

	/**
	 * Returns the value of the '<em><b>Haulage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For each load.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Haulage</em>' attribute.
	 * @see #setHaulage(Money)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_Haulage()
	 * @model dataType="org.coursewright.model.types.Money"
	 * @generated
	 */
	Money getHaulage();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getHaulage <em>Haulage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Haulage</em>' attribute.
	 * @see #getHaulage()
	 * @generated
	 */
	void setHaulage(Money value);

	/**
	 * Returns the value of the '<em><b>Lead Days</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From order to delivery.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lead Days</em>' attribute.
	 * @see #setLeadDays(int)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_LeadDays()
	 * @model default="0"
	 * @generated
	 */
	int getLeadDays();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getLeadDays <em>Lead Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lead Days</em>' attribute.
	 * @see #getLeadDays()
	 * @generated
	 */
	void setLeadDays(int value);

	/**
	 * Returns the value of the '<em><b>Quoted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was quoted.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quoted On</em>' attribute.
	 * @see #setQuotedOn(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_QuotedOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getQuotedOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getQuotedOn <em>Quoted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quoted On</em>' attribute.
	 * @see #getQuotedOn()
	 * @generated
	 */
	void setQuotedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Valid Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long it holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Valid Until</em>' attribute.
	 * @see #setValidUntil(LocalDate)
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_ValidUntil()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getValidUntil();

	/**
	 * Sets the value of the '{@link org.coursewright.model.supply.Offer#getValidUntil <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Valid Until</em>' attribute.
	 * @see #getValidUntil()
	 * @generated
	 */
	void setValidUntil(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Price Breaks</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.supply.PriceBreak}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price by quantity.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price Breaks</em>' containment reference list.
	 * @see org.coursewright.model.supply.SupplyPackage#getOffer_PriceBreaks()
	 * @model containment="true"
	 * @generated
	 */
	EList<PriceBreak> getPriceBreaks();

} // Offer
