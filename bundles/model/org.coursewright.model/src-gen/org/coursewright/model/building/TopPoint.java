/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Top Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One point of the top of a wall.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.TopPoint#getOffset <em>Offset</em>}</li>
 *   <li>{@link org.coursewright.model.building.TopPoint#getHeight <em>Height</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getTopPoint()
 * @model
 * @generated
 */
public interface TopPoint extends EObject {
	/**
	 * Returns the value of the '<em><b>Offset</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the outer start face.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offset</em>' attribute.
	 * @see #setOffset(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getTopPoint_Offset()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getOffset();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.TopPoint#getOffset <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset</em>' attribute.
	 * @see #getOffset()
	 * @generated
	 */
	void setOffset(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Above the base.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getTopPoint_Height()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.TopPoint#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

} // TopPoint
