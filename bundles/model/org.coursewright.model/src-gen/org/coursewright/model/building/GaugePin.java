/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Gauge Pin</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A joint fixed by hand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.GaugePin#getJoint <em>Joint</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getGaugePin()
 * @model
 * @generated
 */
public interface GaugePin extends Pin {
	/**
	 * Returns the value of the '<em><b>Joint</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The joint of the whole run.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Joint</em>' attribute.
	 * @see #setJoint(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getGaugePin_Joint()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getJoint();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GaugePin#getJoint <em>Joint</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Joint</em>' attribute.
	 * @see #getJoint()
	 * @generated
	 */
	void setJoint(Length value);

} // GaugePin
