/**
 */
package org.coursewright.model.programme;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Link</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One activity waits for another.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.Link#getPredecessor <em>Predecessor</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Link#getSuccessor <em>Successor</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Link#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Link#getLagHours <em>Lag Hours</em>}</li>
 *   <li>{@link org.coursewright.model.programme.Link#getLagKind <em>Lag Kind</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.programme.ProgrammePackage#getLink()
 * @model
 * @generated
 */
public interface Link extends EObject {
	/**
	 * Returns the value of the '<em><b>Predecessor</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Goes first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Predecessor</em>' reference.
	 * @see #setPredecessor(Activity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getLink_Predecessor()
	 * @model
	 * @generated
	 */
	Activity getPredecessor();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Link#getPredecessor <em>Predecessor</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Predecessor</em>' reference.
	 * @see #getPredecessor()
	 * @generated
	 */
	void setPredecessor(Activity value);

	/**
	 * Returns the value of the '<em><b>Successor</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Waits.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Successor</em>' reference.
	 * @see #setSuccessor(Activity)
	 * @see org.coursewright.model.programme.ProgrammePackage#getLink_Successor()
	 * @model
	 * @generated
	 */
	Activity getSuccessor();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Link#getSuccessor <em>Successor</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Successor</em>' reference.
	 * @see #getSuccessor()
	 * @generated
	 */
	void setSuccessor(Activity value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.programme.LinkKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which end waits for which.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.programme.LinkKind
	 * @see #setKind(LinkKind)
	 * @see org.coursewright.model.programme.ProgrammePackage#getLink_Kind()
	 * @model
	 * @generated
	 */
	LinkKind getKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Link#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.coursewright.model.programme.LinkKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(LinkKind value);

	/**
	 * Returns the value of the '<em><b>Lag Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long (h).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lag Hours</em>' attribute.
	 * @see #setLagHours(BigDecimal)
	 * @see org.coursewright.model.programme.ProgrammePackage#getLink_LagHours()
	 * @model
	 * @generated
	 */
	BigDecimal getLagHours();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Link#getLagHours <em>Lag Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lag Hours</em>' attribute.
	 * @see #getLagHours()
	 * @generated
	 */
	void setLagHours(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Lag Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.programme.LagKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the lag counts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lag Kind</em>' attribute.
	 * @see org.coursewright.model.programme.LagKind
	 * @see #setLagKind(LagKind)
	 * @see org.coursewright.model.programme.ProgrammePackage#getLink_LagKind()
	 * @model
	 * @generated
	 */
	LagKind getLagKind();

	/**
	 * Sets the value of the '{@link org.coursewright.model.programme.Link#getLagKind <em>Lag Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lag Kind</em>' attribute.
	 * @see org.coursewright.model.programme.LagKind
	 * @see #getLagKind()
	 * @generated
	 */
	void setLagKind(LagKind value);

} // Link
