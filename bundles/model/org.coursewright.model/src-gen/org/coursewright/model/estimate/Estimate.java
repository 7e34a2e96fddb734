/**
 */
package org.coursewright.model.estimate;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.MixDesign;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Estimate</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the take-off and the price rest on besides the building.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getMortar <em>Mortar</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getFirstMortar <em>First Mortar</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getBedFillShare <em>Bed Fill Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getHeadFillShare <em>Head Fill Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getSealer <em>Sealer</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getScaffoldReach <em>Scaffold Reach</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getScaffoldLift <em>Scaffold Lift</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getTieCourses <em>Tie Courses</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getTiesPerJoint <em>Ties Per Joint</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getMaterialTaxShare <em>Material Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getLabourTaxShare <em>Labour Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getPlantTaxShare <em>Plant Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getHaulageTaxShare <em>Haulage Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getOverheadShare <em>Overhead Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getContingencyShare <em>Contingency Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getUncertainties <em>Uncertainties</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getTasks <em>Tasks</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getRates <em>Rates</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Estimate#getScenarios <em>Scenarios</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate()
 * @model
 * @generated
 */
public interface Estimate extends EObject {
	/**
	 * Returns the value of the '<em><b>Mortar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mortar of all courses but the first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mortar</em>' reference.
	 * @see #setMortar(MixDesign)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Mortar()
	 * @model
	 * @generated
	 */
	MixDesign getMortar();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getMortar <em>Mortar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mortar</em>' reference.
	 * @see #getMortar()
	 * @generated
	 */
	void setMortar(MixDesign value);

	/**
	 * Returns the value of the '<em><b>First Mortar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mortar of the first course, or unset for that of the others.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>First Mortar</em>' reference.
	 * @see #setFirstMortar(MixDesign)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_FirstMortar()
	 * @model
	 * @generated
	 */
	MixDesign getFirstMortar();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getFirstMortar <em>First Mortar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Mortar</em>' reference.
	 * @see #getFirstMortar()
	 * @generated
	 */
	void setFirstMortar(MixDesign value);

	/**
	 * Returns the value of the '<em><b>Bed Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part of the bed joint that is filled (1), or unset for all of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bed Fill Share</em>' attribute.
	 * @see #setBedFillShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_BedFillShare()
	 * @model
	 * @generated
	 */
	BigDecimal getBedFillShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getBedFillShare <em>Bed Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bed Fill Share</em>' attribute.
	 * @see #getBedFillShare()
	 * @generated
	 */
	void setBedFillShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Head Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part of the head joint that is filled (1), or unset for all of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Fill Share</em>' attribute.
	 * @see #setHeadFillShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_HeadFillShare()
	 * @model
	 * @generated
	 */
	BigDecimal getHeadFillShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getHeadFillShare <em>Head Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Fill Share</em>' attribute.
	 * @see #getHeadFillShare()
	 * @generated
	 */
	void setHeadFillShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Sealer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What seals grade beams on top and both sides.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sealer</em>' reference.
	 * @see #setSealer(CoatingType)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Sealer()
	 * @model
	 * @generated
	 */
	CoatingType getSealer();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getSealer <em>Sealer</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sealer</em>' reference.
	 * @see #getSealer()
	 * @generated
	 */
	void setSealer(CoatingType value);

	/**
	 * Returns the value of the '<em><b>Scaffold Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height laid from the ground, or unset for 1500 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scaffold Reach</em>' attribute.
	 * @see #setScaffoldReach(Length)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_ScaffoldReach()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getScaffoldReach();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getScaffoldReach <em>Scaffold Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scaffold Reach</em>' attribute.
	 * @see #getScaffoldReach()
	 * @generated
	 */
	void setScaffoldReach(Length value);

	/**
	 * Returns the value of the '<em><b>Scaffold Lift</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height from deck to deck, or unset for 1500 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scaffold Lift</em>' attribute.
	 * @see #setScaffoldLift(Length)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_ScaffoldLift()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getScaffoldLift();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getScaffoldLift <em>Scaffold Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scaffold Lift</em>' attribute.
	 * @see #getScaffoldLift()
	 * @generated
	 */
	void setScaffoldLift(Length value);

	/**
	 * Returns the value of the '<em><b>Tie Courses</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where a wall is tied to another, one bed joint in so many has ties, or 0 for no ties.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tie Courses</em>' attribute.
	 * @see #setTieCourses(int)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_TieCourses()
	 * @model default="0"
	 * @generated
	 */
	int getTieCourses();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getTieCourses <em>Tie Courses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tie Courses</em>' attribute.
	 * @see #getTieCourses()
	 * @generated
	 */
	void setTieCourses(int value);

	/**
	 * Returns the value of the '<em><b>Ties Per Joint</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ties in such a bed joint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ties Per Joint</em>' attribute.
	 * @see #setTiesPerJoint(int)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_TiesPerJoint()
	 * @model default="1"
	 * @generated
	 */
	int getTiesPerJoint();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getTiesPerJoint <em>Ties Per Joint</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ties Per Joint</em>' attribute.
	 * @see #getTiesPerJoint()
	 * @generated
	 */
	void setTiesPerJoint(int value);

	/**
	 * Returns the value of the '<em><b>Material Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tax on material (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material Tax Share</em>' attribute.
	 * @see #setMaterialTaxShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_MaterialTaxShare()
	 * @model
	 * @generated
	 */
	BigDecimal getMaterialTaxShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getMaterialTaxShare <em>Material Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material Tax Share</em>' attribute.
	 * @see #getMaterialTaxShare()
	 * @generated
	 */
	void setMaterialTaxShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Labour Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tax and dues on labour (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Labour Tax Share</em>' attribute.
	 * @see #setLabourTaxShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_LabourTaxShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLabourTaxShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getLabourTaxShare <em>Labour Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labour Tax Share</em>' attribute.
	 * @see #getLabourTaxShare()
	 * @generated
	 */
	void setLabourTaxShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Plant Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tax on plant (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plant Tax Share</em>' attribute.
	 * @see #setPlantTaxShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_PlantTaxShare()
	 * @model
	 * @generated
	 */
	BigDecimal getPlantTaxShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getPlantTaxShare <em>Plant Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plant Tax Share</em>' attribute.
	 * @see #getPlantTaxShare()
	 * @generated
	 */
	void setPlantTaxShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Haulage Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tax on haulage (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Haulage Tax Share</em>' attribute.
	 * @see #setHaulageTaxShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_HaulageTaxShare()
	 * @model
	 * @generated
	 */
	BigDecimal getHaulageTaxShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getHaulageTaxShare <em>Haulage Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Haulage Tax Share</em>' attribute.
	 * @see #getHaulageTaxShare()
	 * @generated
	 */
	void setHaulageTaxShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Overhead Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of direct cost and tax (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overhead Share</em>' attribute.
	 * @see #setOverheadShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_OverheadShare()
	 * @model
	 * @generated
	 */
	BigDecimal getOverheadShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getOverheadShare <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overhead Share</em>' attribute.
	 * @see #getOverheadShare()
	 * @generated
	 */
	void setOverheadShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Contingency Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of direct cost, tax and overhead (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contingency Share</em>' attribute.
	 * @see #setContingencyShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_ContingencyShare()
	 * @model
	 * @generated
	 */
	BigDecimal getContingencyShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Estimate#getContingencyShare <em>Contingency Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contingency Share</em>' attribute.
	 * @see #getContingencyShare()
	 * @generated
	 */
	void setContingencyShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Uncertainties</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.Uncertainty}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What makes several prices move together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Uncertainties</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Uncertainties()
	 * @model containment="true"
	 * @generated
	 */
	EList<Uncertainty> getUncertainties();

	/**
	 * Returns the value of the '<em><b>Tasks</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.Task}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How work is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tasks</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Tasks()
	 * @model containment="true"
	 * @generated
	 */
	EList<Task> getTasks();

	/**
	 * Returns the value of the '<em><b>Rates</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.Rate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What resources cost.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rates</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Rates()
	 * @model containment="true"
	 * @generated
	 */
	EList<Rate> getRates();

	/**
	 * Returns the value of the '<em><b>Scenarios</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.Scenario}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Other ways to build and buy.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scenarios</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getEstimate_Scenarios()
	 * @model containment="true"
	 * @generated
	 */
	EList<Scenario> getScenarios();

} // Estimate
