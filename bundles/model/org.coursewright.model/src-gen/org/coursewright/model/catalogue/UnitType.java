/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Unit Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A masonry unit: the whole piece and what may be made of it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getLength <em>Length</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getHeight <em>Height</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getMass <em>Mass</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getSpecialLengths <em>Special Lengths</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getShortestPiece <em>Shortest Piece</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getCutStep <em>Cut Step</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getKerf <em>Kerf</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getSource <em>Source</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getDaysMoist <em>Days Moist</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getDaysDrying <em>Days Drying</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getBreakageShare <em>Breakage Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.UnitType#getMix <em>Mix</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType()
 * @model
 * @generated
 */
public interface UnitType extends Marked {
	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Longest side in plan.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Length()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shorter side in plan.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Width()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As laid.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Height()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getHeight();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of one unit as laid (kg).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mass</em>' attribute.
	 * @see #setMass(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Mass()
	 * @model
	 * @generated
	 */
	BigDecimal getMass();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getMass <em>Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass</em>' attribute.
	 * @see #getMass()
	 * @generated
	 */
	void setMass(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Special Lengths</b></em>' attribute list.
	 * The list contents are of type {@link org.coursewright.measure.Length}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lengths stocked or pressed besides the whole unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Special Lengths</em>' attribute list.
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_SpecialLengths()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	EList<Length> getSpecialLengths();

	/**
	 * Returns the value of the '<em><b>Shortest Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shortest piece that may be cut, or unset to use the bond rule's.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shortest Piece</em>' attribute.
	 * @see #setShortestPiece(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_ShortestPiece()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getShortestPiece();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getShortestPiece <em>Shortest Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shortest Piece</em>' attribute.
	 * @see #getShortestPiece()
	 * @generated
	 */
	void setShortestPiece(Length value);

	/**
	 * Returns the value of the '<em><b>Cut Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cut pieces are multiples of this.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut Step</em>' attribute.
	 * @see #setCutStep(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_CutStep()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getCutStep();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getCutStep <em>Cut Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cut Step</em>' attribute.
	 * @see #getCutStep()
	 * @generated
	 */
	void setCutStep(Length value);

	/**
	 * Returns the value of the '<em><b>Kerf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the saw takes away.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kerf</em>' attribute.
	 * @see #setKerf(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Kerf()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getKerf();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getKerf <em>Kerf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kerf</em>' attribute.
	 * @see #getKerf()
	 * @generated
	 */
	void setKerf(Length value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.catalogue.UnitSource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bought or made on site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @see #setSource(UnitSource)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Source()
	 * @model
	 * @generated
	 */
	UnitSource getSource();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see org.coursewright.model.catalogue.UnitSource
	 * @see #getSource()
	 * @generated
	 */
	void setSource(UnitSource value);

	/**
	 * Returns the value of the '<em><b>Days Moist</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days kept moist after pressing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Days Moist</em>' attribute.
	 * @see #setDaysMoist(int)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_DaysMoist()
	 * @model default="0"
	 * @generated
	 */
	int getDaysMoist();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getDaysMoist <em>Days Moist</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Days Moist</em>' attribute.
	 * @see #getDaysMoist()
	 * @generated
	 */
	void setDaysMoist(int value);

	/**
	 * Returns the value of the '<em><b>Days Drying</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days of drying before laying.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Days Drying</em>' attribute.
	 * @see #setDaysDrying(int)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_DaysDrying()
	 * @model default="0"
	 * @generated
	 */
	int getDaysDrying();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getDaysDrying <em>Days Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Days Drying</em>' attribute.
	 * @see #getDaysDrying()
	 * @generated
	 */
	void setDaysDrying(int value);

	/**
	 * Returns the value of the '<em><b>Breakage Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ordered on top of what is laid and cut (1), or unset for 0.05.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Breakage Share</em>' attribute.
	 * @see #setBreakageShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_BreakageShare()
	 * @model
	 * @generated
	 */
	BigDecimal getBreakageShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getBreakageShare <em>Breakage Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Breakage Share</em>' attribute.
	 * @see #getBreakageShare()
	 * @generated
	 */
	void setBreakageShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is pressed of where it is made on site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix</em>' reference.
	 * @see #setMix(MixDesign)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getUnitType_Mix()
	 * @model
	 * @generated
	 */
	MixDesign getMix();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.UnitType#getMix <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix</em>' reference.
	 * @see #getMix()
	 * @generated
	 */
	void setMix(MixDesign value);

} // UnitType
