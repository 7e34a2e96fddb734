/**
 */
package org.coursewright.model.estimate;

import java.time.LocalDate;

import org.coursewright.measure.Money;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rate</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one unit of a resource costs; its mark is the resource.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Rate#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getPrice <em>Price</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getUnitCode <em>Unit Code</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getAsOf <em>As Of</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getSource <em>Source</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getTrade <em>Trade</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Rate#getElement <em>Element</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getRate()
 * @model
 * @generated
 */
public interface Rate extends Marked, Uncertain {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.estimate.RateKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is paid for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.estimate.RateKind
	 * @see #setKind(RateKind)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_Kind()
	 * @model
	 * @generated
	 */
	RateKind getKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.estimate.RateKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(RateKind value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For one of the unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Money)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_Price()
	 * @model dataType="org.coursewright.model.types.Money"
	 * @generated
	 */
	Money getPrice();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Money value);

	/**
	 * Returns the value of the '<em><b>Unit Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * UN/ECE Recommendation 20 code of the unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Code</em>' attribute.
	 * @see #setUnitCode(String)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_UnitCode()
	 * @model
	 * @generated
	 */
	String getUnitCode();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getUnitCode <em>Unit Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Code</em>' attribute.
	 * @see #getUnitCode()
	 * @generated
	 */
	void setUnitCode(String value);

	/**
	 * Returns the value of the '<em><b>As Of</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When the price was good.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>As Of</em>' attribute.
	 * @see #setAsOf(LocalDate)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_AsOf()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getAsOf();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getAsOf <em>As Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>As Of</em>' attribute.
	 * @see #getAsOf()
	 * @generated
	 */
	void setAsOf(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Offer or price list it is from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Trade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Trade it is charged to, or unset for that of the work.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trade</em>' attribute.
	 * @see #setTrade(String)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_Trade()
	 * @model
	 * @generated
	 */
	String getTrade();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getTrade <em>Trade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trade</em>' attribute.
	 * @see #getTrade()
	 * @generated
	 */
	void setTrade(String value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ASTM E1557 code it is charged to, or unset for that of the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' attribute.
	 * @see #setElement(String)
	 * @see org.coursewright.model.estimate.EstimatePackage#getRate_Element()
	 * @model
	 * @generated
	 */
	String getElement();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Rate#getElement <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' attribute.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(String value);

} // Rate
