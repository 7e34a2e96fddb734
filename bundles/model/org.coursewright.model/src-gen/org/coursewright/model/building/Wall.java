/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.UnitType;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wall</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A straight wall by its centre line.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Wall#getFromX <em>From X</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getFromY <em>From Y</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getToX <em>To X</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getToY <em>To Y</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getUnitType <em>Unit Type</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getBond <em>Bond</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getBase <em>Base</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getTopProfile <em>Top Profile</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getBondRule <em>Bond Rule</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getOpenings <em>Openings</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getPins <em>Pins</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getFinishes <em>Finishes</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getElement <em>Element</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getMoveTolerance <em>Move Tolerance</em>}</li>
 *   <li>{@link org.coursewright.model.building.Wall#getSizeTolerance <em>Size Tolerance</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getWall()
 * @model
 * @generated
 */
public interface Wall extends Marked {
	/**
	 * Returns the value of the '<em><b>From X</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Start of the centre line, east.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From X</em>' attribute.
	 * @see #setFromX(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_FromX()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFromX();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getFromX <em>From X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From X</em>' attribute.
	 * @see #getFromX()
	 * @generated
	 */
	void setFromX(Length value);

	/**
	 * Returns the value of the '<em><b>From Y</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Start of the centre line, north.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From Y</em>' attribute.
	 * @see #setFromY(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_FromY()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFromY();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getFromY <em>From Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From Y</em>' attribute.
	 * @see #getFromY()
	 * @generated
	 */
	void setFromY(Length value);

	/**
	 * Returns the value of the '<em><b>To X</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * End of the centre line, east.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To X</em>' attribute.
	 * @see #setToX(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_ToX()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getToX();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getToX <em>To X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To X</em>' attribute.
	 * @see #getToX()
	 * @generated
	 */
	void setToX(Length value);

	/**
	 * Returns the value of the '<em><b>To Y</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * End of the centre line, north.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Y</em>' attribute.
	 * @see #setToY(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_ToY()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getToY();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getToY <em>To Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Y</em>' attribute.
	 * @see #getToY()
	 * @generated
	 */
	void setToY(Length value);

	/**
	 * Returns the value of the '<em><b>Unit Type</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is laid of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit Type</em>' reference.
	 * @see #setUnitType(UnitType)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_UnitType()
	 * @model
	 * @generated
	 */
	UnitType getUnitType();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getUnitType <em>Unit Type</em>}' reference.
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
	 * Stretcher: thickness is the unit's width. Header: thickness is the unit's length.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bond</em>' attribute.
	 * @see org.coursewright.model.building.Bond
	 * @see #setBond(Bond)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Bond()
	 * @model
	 * @generated
	 */
	Bond getBond();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getBond <em>Bond</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bond</em>' attribute.
	 * @see org.coursewright.model.building.Bond
	 * @see #getBond()
	 * @generated
	 */
	void setBond(Bond value);

	/**
	 * Returns the value of the '<em><b>Base</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bottom of the first bed joint above the storey's datum.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base</em>' attribute.
	 * @see #setBase(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Base()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getBase();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getBase <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base</em>' attribute.
	 * @see #getBase()
	 * @generated
	 */
	void setBase(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the base to the top of the square part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Height()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Top Profile</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.TopPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tops of a gable or raked wall, by offset; empty for a level top.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Top Profile</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getWall_TopProfile()
	 * @model containment="true"
	 * @generated
	 */
	EList<TopPoint> getTopProfile();

	/**
	 * Returns the value of the '<em><b>Bond Rule</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How this wall is laid where it differs from the project.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bond Rule</em>' containment reference.
	 * @see #setBondRule(BondRule)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_BondRule()
	 * @model containment="true"
	 * @generated
	 */
	BondRule getBondRule();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getBondRule <em>Bond Rule</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bond Rule</em>' containment reference.
	 * @see #getBondRule()
	 * @generated
	 */
	void setBondRule(BondRule value);

	/**
	 * Returns the value of the '<em><b>Openings</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Opening}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its openings.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Openings</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Openings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Opening> getOpenings();

	/**
	 * Returns the value of the '<em><b>Pins</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Pin}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What somebody decided about single runs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pins</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Pins()
	 * @model containment="true"
	 * @generated
	 */
	EList<Pin> getPins();

	/**
	 * Returns the value of the '<em><b>Finishes</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Finish}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What covers it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Finishes</em>' containment reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Finishes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Finish> getFinishes();

	/**
	 * Returns the value of the '<em><b>Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ASTM E1557 code of the element it belongs to, or unset for B2010.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' attribute.
	 * @see #setElement(String)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_Element()
	 * @model
	 * @generated
	 */
	String getElement();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getElement <em>Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' attribute.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(String value);

	/**
	 * Returns the value of the '<em><b>Move Tolerance</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the builder may propose to move it sideways, either way; walls that end at it become longer or shorter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Move Tolerance</em>' attribute.
	 * @see #setMoveTolerance(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_MoveTolerance()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getMoveTolerance();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getMoveTolerance <em>Move Tolerance</em>}' attribute.
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
	 * How much longer or shorter the builder may propose to make it, at an end that meets no other wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size Tolerance</em>' attribute.
	 * @see #setSizeTolerance(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getWall_SizeTolerance()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getSizeTolerance();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Wall#getSizeTolerance <em>Size Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size Tolerance</em>' attribute.
	 * @see #getSizeTolerance()
	 * @generated
	 */
	void setSizeTolerance(Length value);

} // Wall
