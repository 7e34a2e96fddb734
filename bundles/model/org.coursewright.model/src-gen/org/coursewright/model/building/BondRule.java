/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bond Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a layout must keep and what it aims at.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.BondRule#getLeastLap <em>Least Lap</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getHeadLeast <em>Head Least</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getHeadNominal <em>Head Nominal</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getHeadMost <em>Head Most</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getBedLeast <em>Bed Least</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getBedNominal <em>Bed Nominal</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getBedMost <em>Bed Most</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getShortestPiece <em>Shortest Piece</em>}</li>
 *   <li>{@link org.coursewright.model.building.BondRule#getFatJointReserve <em>Fat Joint Reserve</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getBondRule()
 * @model
 * @generated
 */
public interface BondRule extends EObject {
	/**
	 * Returns the value of the '<em><b>Least Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least lap between joints of consecutive courses.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Least Lap</em>' attribute.
	 * @see #setLeastLap(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_LeastLap()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLeastLap();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getLeastLap <em>Least Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Least Lap</em>' attribute.
	 * @see #getLeastLap()
	 * @generated
	 */
	void setLeastLap(Length value);

	/**
	 * Returns the value of the '<em><b>Head Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Narrowest head joint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Least</em>' attribute.
	 * @see #setHeadLeast(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_HeadLeast()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeadLeast();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getHeadLeast <em>Head Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Least</em>' attribute.
	 * @see #getHeadLeast()
	 * @generated
	 */
	void setHeadLeast(Length value);

	/**
	 * Returns the value of the '<em><b>Head Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Head joint aimed at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Nominal</em>' attribute.
	 * @see #setHeadNominal(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_HeadNominal()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeadNominal();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getHeadNominal <em>Head Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Nominal</em>' attribute.
	 * @see #getHeadNominal()
	 * @generated
	 */
	void setHeadNominal(Length value);

	/**
	 * Returns the value of the '<em><b>Head Most</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Widest head joint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Most</em>' attribute.
	 * @see #setHeadMost(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_HeadMost()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeadMost();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getHeadMost <em>Head Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Most</em>' attribute.
	 * @see #getHeadMost()
	 * @generated
	 */
	void setHeadMost(Length value);

	/**
	 * Returns the value of the '<em><b>Bed Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thinnest bed joint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bed Least</em>' attribute.
	 * @see #setBedLeast(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_BedLeast()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getBedLeast();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getBedLeast <em>Bed Least</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bed Least</em>' attribute.
	 * @see #getBedLeast()
	 * @generated
	 */
	void setBedLeast(Length value);

	/**
	 * Returns the value of the '<em><b>Bed Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bed joint aimed at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bed Nominal</em>' attribute.
	 * @see #setBedNominal(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_BedNominal()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getBedNominal();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getBedNominal <em>Bed Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bed Nominal</em>' attribute.
	 * @see #getBedNominal()
	 * @generated
	 */
	void setBedNominal(Length value);

	/**
	 * Returns the value of the '<em><b>Bed Most</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickest bed joint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bed Most</em>' attribute.
	 * @see #setBedMost(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_BedMost()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getBedMost();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getBedMost <em>Bed Most</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bed Most</em>' attribute.
	 * @see #getBedMost()
	 * @generated
	 */
	void setBedMost(Length value);

	/**
	 * Returns the value of the '<em><b>Shortest Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shortest piece that may be cut.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shortest Piece</em>' attribute.
	 * @see #setShortestPiece(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_ShortestPiece()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getShortestPiece();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getShortestPiece <em>Shortest Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shortest Piece</em>' attribute.
	 * @see #getShortestPiece()
	 * @generated
	 */
	void setShortestPiece(Length value);

	/**
	 * Returns the value of the '<em><b>Fat Joint Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kept free in a run for joints that come out wide.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fat Joint Reserve</em>' attribute.
	 * @see #setFatJointReserve(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getBondRule_FatJointReserve()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFatJointReserve();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.BondRule#getFatJointReserve <em>Fat Joint Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fat Joint Reserve</em>' attribute.
	 * @see #getFatJointReserve()
	 * @generated
	 */
	void setFatJointReserve(Length value);

} // BondRule
