/**
 */
package org.coursewright.model.building;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.coursewright.model.building.BuildingPackage
 * @generated
 */
public interface BuildingFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	BuildingFactory eINSTANCE = org.coursewright.model.building.impl.BuildingFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Building</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Building</em>'.
	 * @generated
	 */
	Building createBuilding();

	/**
	 * Returns a new object of class '<em>Storey</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Storey</em>'.
	 * @generated
	 */
	Storey createStorey();

	/**
	 * Returns a new object of class '<em>Wall</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Wall</em>'.
	 * @generated
	 */
	Wall createWall();

	/**
	 * Returns a new object of class '<em>Top Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Top Point</em>'.
	 * @generated
	 */
	TopPoint createTopPoint();

	/**
	 * Returns a new object of class '<em>Opening</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Opening</em>'.
	 * @generated
	 */
	Opening createOpening();

	/**
	 * Returns a new object of class '<em>Junction</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Junction</em>'.
	 * @generated
	 */
	Junction createJunction();

	/**
	 * Returns a new object of class '<em>Junction End</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Junction End</em>'.
	 * @generated
	 */
	JunctionEnd createJunctionEnd();

	/**
	 * Returns a new object of class '<em>Grade Beam</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Grade Beam</em>'.
	 * @generated
	 */
	GradeBeam createGradeBeam();

	/**
	 * Returns a new object of class '<em>Bond Beam</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bond Beam</em>'.
	 * @generated
	 */
	BondBeam createBondBeam();

	/**
	 * Returns a new object of class '<em>Reinforcement</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Reinforcement</em>'.
	 * @generated
	 */
	Reinforcement createReinforcement();

	/**
	 * Returns a new object of class '<em>Finish</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Finish</em>'.
	 * @generated
	 */
	Finish createFinish();

	/**
	 * Returns a new object of class '<em>Bond Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bond Rule</em>'.
	 * @generated
	 */
	BondRule createBondRule();

	/**
	 * Returns a new object of class '<em>Gauge Pin</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Gauge Pin</em>'.
	 * @generated
	 */
	GaugePin createGaugePin();

	/**
	 * Returns a new object of class '<em>Piece Pin</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Piece Pin</em>'.
	 * @generated
	 */
	PiecePin createPiecePin();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	BuildingPackage getBuildingPackage();

} //BuildingFactory
