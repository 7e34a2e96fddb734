/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Piece Pin</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece fixed by hand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.PiecePin#getLength <em>Length</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getPiecePin()
 * @model
 * @generated
 */
public interface PiecePin extends Pin {
	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the piece that covers the position.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getPiecePin_Length()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.PiecePin#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

} // PiecePin
