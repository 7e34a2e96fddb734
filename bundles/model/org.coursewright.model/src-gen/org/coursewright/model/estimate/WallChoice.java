/**
 */
package org.coursewright.model.estimate;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;

import org.coursewright.model.catalogue.UnitType;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wall Choice</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Walls that a scenario lays otherwise.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.WallChoice#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.WallChoice#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.WallChoice#getBond <em>Bond</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.estimate.EstimatePackage#getWallChoice()
 * @model
 * @generated
 */
public interface WallChoice extends EObject {
	/**
	 * Returns the value of the '<em><b>Walls</b></em>' reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Wall}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which walls.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' reference list.
	 * @see org.coursewright.model.estimate.EstimatePackage#getWallChoice_Walls()
	 * @model
	 * @generated
	 */
	EList<Wall> getWalls();

	/**
	 * Returns the value of the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What they are laid of, or unset for the same.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.estimate.EstimatePackage#getWallChoice_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.WallChoice#getUnitType <em>Unit Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Type</em>' reference.
	 * @see #getUnitType()
	 * @generated
	 */
	void setUnitType(UnitType value);

	/**
	 * Returns the value of the '<em><b>Bond</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.building.Bond}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which side of the unit lies along them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bond</em>' attribute.
	 * @see org.coursewright.model.building.Bond
	 * @see #setBond(Bond)
	 * @see org.coursewright.model.estimate.EstimatePackage#getWallChoice_Bond()
	 * @model
	 * @generated
	 */
	Bond getBond();

	/**
	 * Sets the value of the '{@link org.coursewright.model.estimate.WallChoice#getBond <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bond</em>' attribute.
	 * @see org.coursewright.model.building.Bond
	 * @see #getBond()
	 * @generated
	 */
	void setBond(Bond value);

} // WallChoice
