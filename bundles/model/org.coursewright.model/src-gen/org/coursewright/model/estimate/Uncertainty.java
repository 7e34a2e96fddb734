/**
 */
package org.coursewright.model.estimate;

import java.math.BigDecimal;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Uncertainty</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A source of uncertainty that several lines share.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Uncertainty#getCorrelation <em>Correlation</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getUncertainty()
 * @model
 * @generated
 */
public interface Uncertainty extends Marked {
	/**
	 * Returns the value of the '<em><b>Correlation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of any two lines that share it (0 to 1), or unset for 0.5.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Correlation</em>' attribute.
	 * @see #setCorrelation(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUncertainty_Correlation()
	 * @model
	 * @generated
	 */
	BigDecimal getCorrelation();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Uncertainty#getCorrelation <em>Correlation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Correlation</em>' attribute.
	 * @see #getCorrelation()
	 * @generated
	 */
	void setCorrelation(BigDecimal value);

} // Uncertainty
