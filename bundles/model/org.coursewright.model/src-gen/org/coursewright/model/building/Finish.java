/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.FinishType;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Finish</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A covering of a wall face.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Finish#getType <em>Type</em>}</li>
 *   <li>{@link org.coursewright.model.building.Finish#getSide <em>Side</em>}</li>
 *   <li>{@link org.coursewright.model.building.Finish#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.building.Finish#getTo <em>To</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getFinish()
 * @model
 * @generated
 */
public interface Finish extends EObject {
	/**
	 * Returns the value of the '<em><b>Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' reference.
	 * @see #setType(FinishType)
	 * @see org.coursewright.model.building.BuildingPackage#getFinish_Type()
	 * @model
	 * @generated
	 */
	FinishType getType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Finish#getType <em>Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' reference.
	 * @see #getType()
	 * @generated
	 */
	void setType(FinishType value);

	/**
	 * Returns the value of the '<em><b>Side</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.building.WallSide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On which face.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Side</em>' attribute.
	 * @see org.coursewright.model.building.WallSide
	 * @see #setSide(WallSide)
	 * @see org.coursewright.model.building.BuildingPackage#getFinish_Side()
	 * @model
	 * @generated
	 */
	WallSide getSide();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Finish#getSide <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Side</em>' attribute.
	 * @see org.coursewright.model.building.WallSide
	 * @see #getSide()
	 * @generated
	 */
	void setSide(WallSide value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lower edge above the base, or unset for the base.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getFinish_From()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFrom();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Finish#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Length value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Upper edge above the base, or unset for the top.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getFinish_To()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getTo();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Finish#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Length value);

} // Finish
