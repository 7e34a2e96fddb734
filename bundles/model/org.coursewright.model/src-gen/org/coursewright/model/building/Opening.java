/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.LintelType;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A hole in a wall.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Opening#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getOffset <em>Offset</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getSill <em>Sill</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getLintelType <em>Lintel Type</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getMoveTolerance <em>Move Tolerance</em>}</li>
 *   <li>{@link org.coursewright.model.building.Opening#getSizeTolerance <em>Size Tolerance</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getOpening()
 * @model
 * @generated
 */
public interface Opening extends Marked {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.building.OpeningKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.building.OpeningKind
	 * @see #setKind(OpeningKind)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_Kind()
	 * @model
	 * @generated
	 */
	OpeningKind getKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.building.OpeningKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OpeningKind value);

	/**
	 * Returns the value of the '<em><b>Offset</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the wall's outer start face to the near jamb.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offset</em>' attribute.
	 * @see #setOffset(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_Offset()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getOffset();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getOffset <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset</em>' attribute.
	 * @see #getOffset()
	 * @generated
	 */
	void setOffset(Length value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between jambs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_Width()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Sill</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Above the wall's base.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sill</em>' attribute.
	 * @see #setSill(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_Sill()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getSill();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getSill <em>Sill</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sill</em>' attribute.
	 * @see #getSill()
	 * @generated
	 */
	void setSill(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From sill to head.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_Height()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Lintel Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What carries the wall above.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lintel Type</em>' reference.
	 * @see #setLintelType(LintelType)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_LintelType()
	 * @model
	 * @generated
	 */
	LintelType getLintelType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getLintelType <em>Lintel Type</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lintel Type</em>' reference.
	 * @see #getLintelType()
	 * @generated
	 */
	void setLintelType(LintelType value);

	/**
	 * Returns the value of the '<em><b>Move Tolerance</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the builder may propose to move it either way.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Move Tolerance</em>' attribute.
	 * @see #setMoveTolerance(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_MoveTolerance()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getMoveTolerance();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getMoveTolerance <em>Move Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Move Tolerance</em>' attribute.
	 * @see #getMoveTolerance()
	 * @generated
	 */
	void setMoveTolerance(Length value);

	/**
	 * Returns the value of the '<em><b>Size Tolerance</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much wider or narrower the builder may propose.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size Tolerance</em>' attribute.
	 * @see #setSizeTolerance(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getOpening_SizeTolerance()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getSizeTolerance();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Opening#getSizeTolerance <em>Size Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size Tolerance</em>' attribute.
	 * @see #getSizeTolerance()
	 * @generated
	 */
	void setSizeTolerance(Length value);

} // Opening
