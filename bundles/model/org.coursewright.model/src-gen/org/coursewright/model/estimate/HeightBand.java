/**
 */
package org.coursewright.model.estimate;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Height Band</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Output from some height up.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.HeightBand#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.HeightBand#getOutputShare <em>Output Share</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getHeightBand()
 * @model
 * @generated
 */
public interface HeightBand extends EObject {
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the base of the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Length)
	 * @see org.coursewright.model.estimate.EstimatePackage#getHeightBand_From()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFrom();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.HeightBand#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Length value);

	/**
	 * Returns the value of the '<em><b>Output Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Output there by that under plain conditions (1).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Output Share</em>' attribute.
	 * @see #setOutputShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getHeightBand_OutputShare()
	 * @model
	 * @generated
	 */
	BigDecimal getOutputShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.HeightBand#getOutputShare <em>Output Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Output Share</em>' attribute.
	 * @see #getOutputShare()
	 * @generated
	 */
	void setOutputShare(BigDecimal value);

} // HeightBand
