/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Storey</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A level and the walls that stand on it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Storey#getElevation <em>Elevation</em>}</li>
 *   <li>{@link org.coursewright.model.building.Storey#getWalls <em>Walls</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getStorey()
 * @model
 * @generated
 */
public interface Storey extends Marked {
	/**
	 * Returns the value of the '<em><b>Elevation</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its datum above the project's benchmark.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Elevation</em>' attribute.
	 * @see #setElevation(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getStorey_Elevation()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getElevation();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Storey#getElevation <em>Elevation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation</em>' attribute.
	 * @see #getElevation()
	 * @generated
	 */
	void setElevation(Length value);

	/**
	 * Returns the value of the '<em><b>Walls</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Wall}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getStorey_Walls()
	 * @model containment="true"
	 * @generated
	 */
	EList<Wall> getWalls();

} // Storey
