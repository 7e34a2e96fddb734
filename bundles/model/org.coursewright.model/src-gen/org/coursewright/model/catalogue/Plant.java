/**
 */
package org.coursewright.model.catalogue;

import java.math.BigDecimal;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Plant</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A machine.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.Plant#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Plant#getOutput <em>Output</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Plant#getRate <em>Rate</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Plant#getLostShare <em>Lost Share</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.Plant#getCapacity <em>Capacity</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant()
 * @model
 * @generated
 */
public interface Plant extends Marked {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.catalogue.PlantKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it does.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.catalogue.PlantKind
	 * @see #setKind(PlantKind)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant_Kind()
	 * @model
	 * @generated
	 */
	PlantKind getKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Plant#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.catalogue.PlantKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PlantKind value);

	/**
	 * Returns the value of the '<em><b>Output</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Per hour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Output</em>' attribute.
	 * @see #setOutput(Quantity)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant_Output()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getOutput();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Plant#getOutput <em>Output</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Output</em>' attribute.
	 * @see #getOutput()
	 * @generated
	 */
	void setOutput(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Per hour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rate</em>' attribute.
	 * @see #setRate(Money)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant_Rate()
	 * @model dataType="org.coursewright.model.types.Money"
	 * @generated
	 */
	Money getRate();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Plant#getRate <em>Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rate</em>' attribute.
	 * @see #getRate()
	 * @generated
	 */
	void setRate(Money value);

	/**
	 * Returns the value of the '<em><b>Lost Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its hours lost to tuning, breakdown and rain (1), or unset for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lost Share</em>' attribute.
	 * @see #setLostShare(BigDecimal)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant_LostShare()
	 * @model
	 * @generated
	 */
	BigDecimal getLostShare();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Plant#getLostShare <em>Lost Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lost Share</em>' attribute.
	 * @see #getLostShare()
	 * @generated
	 */
	void setLostShare(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What one batch holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Capacity</em>' attribute.
	 * @see #setCapacity(Quantity)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getPlant_Capacity()
	 * @model dataType="org.coursewright.model.types.Quantity"
	 * @generated
	 */
	Quantity getCapacity();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.Plant#getCapacity <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capacity</em>' attribute.
	 * @see #getCapacity()
	 * @generated
	 */
	void setCapacity(Quantity value);

} // Plant
