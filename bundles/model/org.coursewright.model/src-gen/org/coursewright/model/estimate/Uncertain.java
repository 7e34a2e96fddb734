/**
 */
package org.coursewright.model.estimate;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Uncertain</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something that may come out lower or higher.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Uncertain#getLowShare <em>Low Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Uncertain#getHighShare <em>High Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Uncertain#getMovesWith <em>Moves With</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getUncertain()
 * @model abstract="true"
 * @generated
 */
public interface Uncertain extends EObject {
	/**
	 * Returns the value of the '<em><b>Low Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least that it may be, by what is expected (1), or unset for certain.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low Share</em>' attribute.
	 * @see #setLowShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUncertain_LowShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLowShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Uncertain#getLowShare <em>Low Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low Share</em>' attribute.
	 * @see #getLowShare()
	 * @generated
	 */
	void setLowShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>High Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most that it may be, by what is expected (1), or unset for certain.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High Share</em>' attribute.
	 * @see #setHighShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUncertain_HighShare()
	 * @model
	 * @generated
	 */
	BigDecimal getHighShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Uncertain#getHighShare <em>High Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High Share</em>' attribute.
	 * @see #getHighShare()
	 * @generated
	 */
	void setHighShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Moves With</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it moves with, or unset for nothing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Moves With</em>' reference.
	 * @see #setMovesWith(Uncertainty)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUncertain_MovesWith()
	 * @model
	 * @generated
	 */
	Uncertainty getMovesWith();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Uncertain#getMovesWith <em>Moves With</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Moves With</em>' reference.
	 * @see #getMovesWith()
	 * @generated
	 */
	void setMovesWith(Uncertainty value);

} // Uncertain
