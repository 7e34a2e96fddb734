/**
 */
package org.coursewright.model.catalogue;

import org.coursewright.measure.Money;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Crew Member</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * So many of one trade.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.catalogue.CrewMember#getTrade <em>Trade</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.CrewMember#getCount <em>Count</em>}</li>
 *   <li>{@link org.coursewright.model.catalogue.CrewMember#getRate <em>Rate</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.catalogue.CataloguePackage#getCrewMember()
 * @model
 * @generated
 */
public interface CrewMember extends EObject {
	/**
	 * Returns the value of the '<em><b>Trade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mason, tender, labourer.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trade</em>' attribute.
	 * @see #setTrade(String)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCrewMember_Trade()
	 * @model
	 * @generated
	 */
	String getTrade();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CrewMember#getTrade <em>Trade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trade</em>' attribute.
	 * @see #getTrade()
	 * @generated
	 */
	void setTrade(String value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCrewMember_Count()
	 * @model default="1"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CrewMember#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Per hour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rate</em>' attribute.
	 * @see #setRate(Money)
	 * @see org.coursewright.model.catalogue.CataloguePackage#getCrewMember_Rate()
	 * @model dataType="org.coursewright.model.types.Money"
	 * @generated
	 */
	Money getRate();

	/**
	 * Sets the value of the '{@link org.coursewright.model.catalogue.CrewMember#getRate <em>Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rate</em>' attribute.
	 * @see #getRate()
	 * @generated
	 */
	void setRate(Money value);

} // CrewMember
