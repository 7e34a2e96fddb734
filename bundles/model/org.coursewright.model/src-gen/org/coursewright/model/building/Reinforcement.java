/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reinforcement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Bars along a beam.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.Reinforcement#getBar <em>Bar</em>}</li>
 *   <li>{@link org.coursewright.model.building.Reinforcement#getLines <em>Lines</em>}</li>
 *   <li>{@link org.coursewright.model.building.Reinforcement#getStock <em>Stock</em>}</li>
 *   <li>{@link org.coursewright.model.building.Reinforcement#getLap <em>Lap</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getReinforcement()
 * @model
 * @generated
 */
public interface Reinforcement extends EObject {
	/**
	 * Returns the value of the '<em><b>Bar</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Designation of the bar, such as #4 or 12 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bar</em>' attribute.
	 * @see #setBar(String)
	 * @see org.coursewright.model.building.BuildingPackage#getReinforcement_Bar()
	 * @model
	 * @generated
	 */
	String getBar();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Reinforcement#getBar <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bar</em>' attribute.
	 * @see #getBar()
	 * @generated
	 */
	void setBar(String value);

	/**
	 * Returns the value of the '<em><b>Lines</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many bars run side by side.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lines</em>' attribute.
	 * @see #setLines(int)
	 * @see org.coursewright.model.building.BuildingPackage#getReinforcement_Lines()
	 * @model default="1"
	 * @generated
	 */
	int getLines();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Reinforcement#getLines <em>Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lines</em>' attribute.
	 * @see #getLines()
	 * @generated
	 */
	void setLines(int value);

	/**
	 * Returns the value of the '<em><b>Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of a bar as delivered.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stock</em>' attribute.
	 * @see #setStock(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getReinforcement_Stock()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getStock();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Reinforcement#getStock <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stock</em>' attribute.
	 * @see #getStock()
	 * @generated
	 */
	void setStock(Length value);

	/**
	 * Returns the value of the '<em><b>Lap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where two bars meet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lap</em>' attribute.
	 * @see #setLap(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getReinforcement_Lap()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getLap();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.Reinforcement#getLap <em>Lap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lap</em>' attribute.
	 * @see #getLap()
	 * @generated
	 */
	void setLap(Length value);

} // Reinforcement
