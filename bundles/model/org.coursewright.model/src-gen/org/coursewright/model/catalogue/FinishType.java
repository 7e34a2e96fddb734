/**
 */
package org.coursewright.model.catalogue;

import org.coursewright.measure.Length;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Finish Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plaster or render.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.FinishType#getMix <em>Mix</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.FinishType#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.FinishType#getCoats <em>Coats</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getFinishType()
 * @model
 * @generated
 */
public interface FinishType extends Marked {
	/**
	 * Returns the value of the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is mixed of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix</em>' reference.
	 * @see #setMix(MixDesign)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getFinishType_Mix()
	 * @model
	 * @generated
	 */
	MixDesign getMix();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.FinishType#getMix <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix</em>' reference.
	 * @see #getMix()
	 * @generated
	 */
	void setMix(MixDesign value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * All coats together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Length)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getFinishType_Thickness()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getThickness();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.FinishType#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Length value);

	/**
	 * Returns the value of the '<em><b>Coats</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many coats.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coats</em>' attribute.
	 * @see #setCoats(int)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getFinishType_Coats()
	 * @model default="1"
	 * @generated
	 */
	int getCoats();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.FinishType#getCoats <em>Coats</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coats</em>' attribute.
	 * @see #getCoats()
	 * @generated
	 */
	void setCoats(int value);

} // FinishType
