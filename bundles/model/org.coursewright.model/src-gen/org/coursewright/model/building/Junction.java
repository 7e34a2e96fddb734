/**
 */
package org.coursewright.model.building;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Junction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A choice made where walls meet; the meeting itself follows from the centre lines.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Junction#getEnds <em>Ends</em>}</li>
 *   <li>{@link org.coursewright.model.building.Junction#getThrough <em>Through</em>}</li>
 *   <li>{@link org.coursewright.model.building.Junction#getTie <em>Tie</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getJunction()
 * @model
 * @generated
 */
public interface Junction extends EObject {
	/**
	 * Returns the value of the '<em><b>Ends</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.JunctionEnd}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which walls meet here.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ends</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getJunction_Ends()
	 * @model containment="true"
	 * @generated
	 */
	EList<JunctionEnd> getEnds();

	/**
	 * Returns the value of the '<em><b>Through</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The wall that runs through on odd courses, or unset to let the layout choose.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Through</em>' reference.
	 * @see #setThrough(Wall)
	 * @see org.coursewright.model.building.BuildingPackage#getJunction_Through()
	 * @model
	 * @generated
	 */
	Wall getThrough();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Junction#getThrough <em>Through</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Through</em>' reference.
	 * @see #getThrough()
	 * @generated
	 */
	void setThrough(Wall value);

	/**
	 * Returns the value of the '<em><b>Tie</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.building.TeeTie}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How a wall that ends against another is joined to it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tie</em>' attribute.
	 * @see org.coursewright.model.building.TeeTie
	 * @see #setTie(TeeTie)
	 * @see org.coursewright.model.building.BuildingPackage#getJunction_Tie()
	 * @model
	 * @generated
	 */
	TeeTie getTie();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Junction#getTie <em>Tie</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tie</em>' attribute.
	 * @see org.coursewright.model.building.TeeTie
	 * @see #getTie()
	 * @generated
	 */
	void setTie(TeeTie value);

} // Junction
