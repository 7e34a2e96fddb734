/**
 */
package org.coursewright.model.estimate;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Scenario</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One way to build and buy, by what is different in it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Scenario#getSpecials <em>Specials</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Scenario#getWallChoices <em>Wall Choices</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Scenario#getUnitChoices <em>Unit Choices</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getScenario()
 * @model
 * @generated
 */
public interface Scenario extends Marked {
	/**
	 * Returns the value of the '<em><b>Specials</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.estimate.SpecialChoice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Specials as stocked or pressed, or all cut.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Specials</em>' attribute.
	 * @see org.coursewright.model.estimate.SpecialChoice
	 * @see #setSpecials(SpecialChoice)
	 * @see org.coursewright.model.estimate.EstimatePackage#getScenario_Specials()
	 * @model
	 * @generated
	 */
	SpecialChoice getSpecials();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Scenario#getSpecials <em>Specials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specials</em>' attribute.
	 * @see org.coursewright.model.estimate.SpecialChoice
	 * @see #getSpecials()
	 * @generated
	 */
	void setSpecials(SpecialChoice value);

	/**
	 * Returns the value of the '<em><b>Wall Choices</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.WallChoice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Walls that are laid otherwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wall Choices</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getScenario_WallChoices()
	 * @model containment="true"
	 * @generated
	 */
	EList<WallChoice> getWallChoices();

	/**
	 * Returns the value of the '<em><b>Unit Choices</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.UnitChoice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Units that come from elsewhere.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Choices</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getScenario_UnitChoices()
	 * @model containment="true"
	 * @generated
	 */
	EList<UnitChoice> getUnitChoices();

} // Scenario
