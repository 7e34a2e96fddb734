/**
 */
package org.coursewright.model.estimate;

import java.math.BigDecimal;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.Plant;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Task</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How one kind of work is done.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.Task#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getCrew <em>Crew</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getPlant <em>Plant</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getOutput <em>Output</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getConditionsShare <em>Conditions Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getLearningShare <em>Learning Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getLearningTheory <em>Learning Theory</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getLearningRepetition <em>Learning Repetition</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getLearningPlateau <em>Learning Plateau</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getBands <em>Bands</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.Task#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getTask()
 * @model
 * @generated
 */
public interface Task extends Marked, Uncertain {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.estimate.WorkKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.estimate.WorkKind
	 * @see #setKind(WorkKind)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Kind()
	 * @model
	 * @generated
	 */
	WorkKind getKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.estimate.WorkKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(WorkKind value);

	/**
	 * Returns the value of the '<em><b>Crew</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who does it, or unset where a machine works alone.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Crew</em>' reference.
	 * @see #setCrew(CrewType)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Crew()
	 * @model
	 * @generated
	 */
	CrewType getCrew();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getCrew <em>Crew</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Crew</em>' reference.
	 * @see #getCrew()
	 * @generated
	 */
	void setCrew(CrewType value);

	/**
	 * Returns the value of the '<em><b>Plant</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * With which machine, or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plant</em>' reference.
	 * @see #setPlant(Plant)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Plant()
	 * @model
	 * @generated
	 */
	Plant getPlant();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getPlant <em>Plant</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plant</em>' reference.
	 * @see #getPlant()
	 * @generated
	 */
	void setPlant(Plant value);

	/**
	 * Returns the value of the '<em><b>Output</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the crew in an hour under plain conditions.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Output</em>' attribute.
	 * @see #setOutput(Quantity)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Output()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getOutput();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getOutput <em>Output</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Output</em>' attribute.
	 * @see #getOutput()
	 * @generated
	 */
	void setOutput(Quantity value);

	/**
	 * Returns the value of the '<em><b>Conditions Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Output under the conditions of this site by that (1), or unset for the same.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Conditions Share</em>' attribute.
	 * @see #setConditionsShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_ConditionsShare()
	 * @model
	 * @generated
	 */
	BigDecimal getConditionsShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getConditionsShare <em>Conditions Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conditions Share</em>' attribute.
	 * @see #getConditionsShare()
	 * @generated
	 */
	void setConditionsShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Learning Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time left after every doubling (1), or unset for no learning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Learning Share</em>' attribute.
	 * @see #setLearningShare(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_LearningShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLearningShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getLearningShare <em>Learning Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Learning Share</em>' attribute.
	 * @see #getLearningShare()
	 * @generated
	 */
	void setLearningShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Learning Theory</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.estimate.LearningTheory}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What falls with every doubling.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Learning Theory</em>' attribute.
	 * @see org.coursewright.model.estimate.LearningTheory
	 * @see #setLearningTheory(LearningTheory)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_LearningTheory()
	 * @model
	 * @generated
	 */
	LearningTheory getLearningTheory();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getLearningTheory <em>Learning Theory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Learning Theory</em>' attribute.
	 * @see org.coursewright.model.estimate.LearningTheory
	 * @see #getLearningTheory()
	 * @generated
	 */
	void setLearningTheory(LearningTheory value);

	/**
	 * Returns the value of the '<em><b>Learning Repetition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much of the output makes one repetition.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Learning Repetition</em>' attribute.
	 * @see #setLearningRepetition(BigDecimal)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_LearningRepetition()
	 * @model
	 * @generated
	 */
	BigDecimal getLearningRepetition();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getLearningRepetition <em>Learning Repetition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Learning Repetition</em>' attribute.
	 * @see #getLearningRepetition()
	 * @generated
	 */
	void setLearningRepetition(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Learning Plateau</b></em>' attribute.
	 * The default value is <code>"64"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Repetitions after which the time stays.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Learning Plateau</em>' attribute.
	 * @see #setLearningPlateau(int)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_LearningPlateau()
	 * @model default="64"
	 * @generated
	 */
	int getLearningPlateau();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getLearningPlateau <em>Learning Plateau</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Learning Plateau</em>' attribute.
	 * @see #getLearningPlateau()
	 * @generated
	 */
	void setLearningPlateau(int value);

	/**
	 * Returns the value of the '<em><b>Bands</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.estimate.HeightBand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How output changes with height, by rising height.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bands</em>' containment reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Bands()
	 * @model containment="true"
	 * @generated
	 */
	EList<HeightBand> getBands();

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the output is from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.coursewright.model.estimate.EstimatePackage#getTask_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.Task#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // Task
