/**
 */
package org.coursewright.model.building;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Junction End</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A wall and where on it the meeting is.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.JunctionEnd#getWall <em>Wall</em>}</li>
 *   <li>{@link org.coursewright.model.building.JunctionEnd#getPlace <em>Place</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getJunctionEnd()
 * @model
 * @generated
 */
public interface JunctionEnd extends EObject {
	/**
	 * Returns the value of the '<em><b>Wall</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wall</em>' reference.
	 * @see #setWall(Wall)
	 * @see org.coursewright.model.building.BuildingPackage#getJunctionEnd_Wall()
	 * @model
	 * @generated
	 */
	Wall getWall();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.JunctionEnd#getWall <em>Wall</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wall</em>' reference.
	 * @see #getWall()
	 * @generated
	 */
	void setWall(Wall value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.building.WallPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where on the wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see org.coursewright.model.building.WallPlace
	 * @see #setPlace(WallPlace)
	 * @see org.coursewright.model.building.BuildingPackage#getJunctionEnd_Place()
	 * @model
	 * @generated
	 */
	WallPlace getPlace();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.JunctionEnd#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see org.coursewright.model.building.WallPlace
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(WallPlace value);

} // JunctionEnd
