/**
 */
package org.coursewright.model.proposal;

import java.time.Instant;

import org.coursewright.measure.Length;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

import org.coursewright.model.project.Marked;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Proposal</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A change of one dimension.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getWall <em>Wall</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getOpening <em>Opening</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getDimension <em>Dimension</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getTo <em>To</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getReason <em>Reason</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getState <em>State</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getComment <em>Comment</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getBy <em>By</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.Proposal#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.proposal.ProposalPackage#getProposal()
 * @model
 * @generated
 */
public interface Proposal extends Marked {
	/**
	 * Returns the value of the '<em><b>Wall</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which wall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wall</em>' reference.
	 * @see #setWall(Wall)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_Wall()
	 * @model
	 * @generated
	 */
	Wall getWall();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getWall <em>Wall</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wall</em>' reference.
	 * @see #getWall()
	 * @generated
	 */
	void setWall(Wall value);

	/**
	 * Returns the value of the '<em><b>Opening</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of which opening, or unset for the wall itself.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opening</em>' reference.
	 * @see #setOpening(Opening)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_Opening()
	 * @model
	 * @generated
	 */
	Opening getOpening();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getOpening <em>Opening</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opening</em>' reference.
	 * @see #getOpening()
	 * @generated
	 */
	void setOpening(Opening value);

	/**
	 * Returns the value of the '<em><b>Dimension</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.proposal.Dimension}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which dimension.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dimension</em>' attribute.
	 * @see org.coursewright.model.proposal.Dimension
	 * @see #setDimension(Dimension)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_Dimension()
	 * @model
	 * @generated
	 */
	Dimension getDimension();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getDimension <em>Dimension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dimension</em>' attribute.
	 * @see org.coursewright.model.proposal.Dimension
	 * @see #getDimension()
	 * @generated
	 */
	void setDimension(Dimension value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As drawn.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Length)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_From()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getFrom();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Length value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As proposed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(Length)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_To()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getTo();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Length value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link org.coursewright.model.proposal.ProposalState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What became of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see org.coursewright.model.proposal.ProposalState
	 * @see #setState(ProposalState)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_State()
	 * @model
	 * @generated
	 */
	ProposalState getState();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see org.coursewright.model.proposal.ProposalState
	 * @see #getState()
	 * @generated
	 */
	void setState(ProposalState value);

	/**
	 * Returns the value of the '<em><b>Comment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The answer.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Comment</em>' attribute.
	 * @see #setComment(String)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_Comment()
	 * @model
	 * @generated
	 */
	String getComment();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getComment <em>Comment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Comment</em>' attribute.
	 * @see #getComment()
	 * @generated
	 */
	void setComment(String value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who proposed it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.coursewright.model.proposal.ProposalPackage#getProposal_At()
	 * @model dataType="org.coursewright.model.types.Moment"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.coursewright.model.proposal.Proposal#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

} // Proposal
