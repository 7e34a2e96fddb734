/**
 */
package org.coursewright.model.estimate;

import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Unit Choice</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where a scenario has units from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.UnitChoice#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.UnitChoice#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getUnitChoice()
 * @model
 * @generated
 */
public interface UnitChoice extends EObject {
	/**
	 * Returns the value of the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which units.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUnitChoice_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.UnitChoice#getUnitType <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Type</em>' reference.
	 * @see #getUnitType()
	 * @generated
	 */
	void setUnitType(UnitType value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.catalogue.UnitSource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bought or made on site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @see #setSource(UnitSource)
	 * @see org.coursewright.model.estimate.EstimatePackage#getUnitChoice_Source()
	 * @model
	 * @generated
	 */
	UnitSource getSource();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.UnitChoice#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @see #getSource()
	 * @generated
	 */
	void setSource(UnitSource value);

} // UnitChoice
