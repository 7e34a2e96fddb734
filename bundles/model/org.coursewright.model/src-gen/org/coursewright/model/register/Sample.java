/**
 */
package org.coursewright.model.register;

import java.time.LocalDate;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sample</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Specimens taken together.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.Sample#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.coursewright.model.register.Sample#getTakenOn <em>Taken On</em>}</li>
 *   <li>{@link org.coursewright.model.register.Sample#getPlace <em>Place</em>}</li>
 *   <li>{@link org.coursewright.model.register.Sample#getSpecimens <em>Specimens</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getSample()
 * @model
 * @generated
 */
public interface Sample extends Marked {
	/**
	 * Returns the value of the '<em><b>Plan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For which plan.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plan</em>' reference.
	 * @see #setPlan(TestPlan)
	 * @see org.coursewright.model.register.RegisterPackage#getSample_Plan()
	 * @model
	 * @generated
	 */
	TestPlan getPlan();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Sample#getPlan <em>Plan</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan</em>' reference.
	 * @see #getPlan()
	 * @generated
	 */
	void setPlan(TestPlan value);

	/**
	 * Returns the value of the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Taken On</em>' attribute.
	 * @see #setTakenOn(LocalDate)
	 * @see org.coursewright.model.register.RegisterPackage#getSample_TakenOn()
	 * @model dataType="org.coursewright.model.types.Date"
	 * @generated
	 */
	LocalDate getTakenOn();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Sample#getTakenOn <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Taken On</em>' attribute.
	 * @see #getTakenOn()
	 * @generated
	 */
	void setTakenOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see org.coursewright.model.register.RegisterPackage#getSample_Place()
	 * @model
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.Sample#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Specimens</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.register.Specimen}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was taken.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Specimens</em>' containment reference list.
	 * @see org.coursewright.model.register.RegisterPackage#getSample_Specimens()
	 * @model containment="true"
	 * @generated
	 */
	EList<Specimen> getSpecimens();

} // Sample
