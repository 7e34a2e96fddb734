/**
 */
package org.coursewright.model.register;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Test Plan</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is to be tested how often.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.TestPlan#getMethod <em>Method</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getProperty <em>Property</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getEvery <em>Every</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getSpecimens <em>Specimens</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getAgeDays <em>Age Days</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.register.TestPlan#getMix <em>Mix</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.register.RegisterPackage#getTestPlan()
 * @model
 * @generated
 */
public interface TestPlan extends Marked {
	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Standard and clause.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_Method()
	 * @model
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Property</em>' attribute.
	 * @see #setProperty(String)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_Property()
	 * @model
	 * @generated
	 */
	String getProperty();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getProperty <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Property</em>' attribute.
	 * @see #getProperty()
	 * @generated
	 */
	void setProperty(String value);

	/**
	 * Returns the value of the '<em><b>Every</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One sample for each of this quantity.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Every</em>' attribute.
	 * @see #setEvery(Quantity)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_Every()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getEvery();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getEvery <em>Every</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Every</em>' attribute.
	 * @see #getEvery()
	 * @generated
	 */
	void setEvery(Quantity value);

	/**
	 * Returns the value of the '<em><b>Specimens</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In a sample.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Specimens</em>' attribute.
	 * @see #setSpecimens(int)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_Specimens()
	 * @model default="1"
	 * @generated
	 */
	int getSpecimens();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getSpecimens <em>Specimens</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specimens</em>' attribute.
	 * @see #getSpecimens()
	 * @generated
	 */
	void setSpecimens(int value);

	/**
	 * Returns the value of the '<em><b>Age Days</b></em>' attribute.
	 * The default value is <code>"28"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * At test.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Age Days</em>' attribute.
	 * @see #setAgeDays(int)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_AgeDays()
	 * @model default="28"
	 * @generated
	 */
	int getAgeDays();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getAgeDays <em>Age Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age Days</em>' attribute.
	 * @see #getAgeDays()
	 * @generated
	 */
	void setAgeDays(int value);

	/**
	 * Returns the value of the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which unit, unless it is a mix.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getUnitType <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Type</em>' reference.
	 * @see #getUnitType()
	 * @generated
	 */
	void setUnitType(UnitType value);

	/**
	 * Returns the value of the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which mix, unless it is a unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix</em>' reference.
	 * @see #setMix(MixDesign)
	 * @see org.coursewright.model.register.RegisterPackage#getTestPlan_Mix()
	 * @model
	 * @generated
	 */
	MixDesign getMix();

	/**
	 * Sets the value of the '{@link org.coursewright.model.register.TestPlan#getMix <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix</em>' reference.
	 * @see #getMix()
	 * @generated
	 */
	void setMix(MixDesign value);

} // TestPlan
