/**
 */
package org.coursewright.model.building;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Building</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The building.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Building#getStoreys <em>Storeys</em>}</li>
 *   <li>{@link org.coursewright.model.building.Building#getJunctions <em>Junctions</em>}</li>
 *   <li>{@link org.coursewright.model.building.Building#getGradeBeams <em>Grade Beams</em>}</li>
 *   <li>{@link org.coursewright.model.building.Building#getBondBeams <em>Bond Beams</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getBuilding()
 * @model
 * @generated
 */
public interface Building extends EObject {
	/**
	 * Returns the value of the '<em><b>Storeys</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Storey}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the ground up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Storeys</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getBuilding_Storeys()
	 * @model containment="true"
	 * @generated
	 */
	EList<Storey> getStoreys();

	/**
	 * Returns the value of the '<em><b>Junctions</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Junction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Choices made where walls meet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Junctions</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getBuilding_Junctions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Junction> getJunctions();

	/**
	 * Returns the value of the '<em><b>Grade Beams</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.GradeBeam}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Under walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Grade Beams</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getBuilding_GradeBeams()
	 * @model containment="true"
	 * @generated
	 */
	EList<GradeBeam> getGradeBeams();

	/**
	 * Returns the value of the '<em><b>Bond Beams</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.BondBeam}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Over walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bond Beams</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getBuilding_BondBeams()
	 * @model containment="true"
	 * @generated
	 */
	EList<BondBeam> getBondBeams();

} // Building
