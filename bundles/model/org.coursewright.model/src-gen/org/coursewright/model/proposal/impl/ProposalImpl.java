/**
 */
package org.coursewright.model.proposal.impl;

import java.time.Instant;

import org.coursewright.measure.Length;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

import org.coursewright.model.proposal.Dimension;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.proposal.ProposalState;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Proposal</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getWall <em>Wall</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getOpening <em>Opening</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getDimension <em>Dimension</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getState <em>State</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getComment <em>Comment</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getBy <em>By</em>}</li>
 *   <li>{@link org.coursewright.model.proposal.impl.ProposalImpl#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProposalImpl extends MinimalEObjectImpl.Container implements Proposal {
	/**
	 * The default value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected static final String MARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected String mark = MARK_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWall() <em>Wall</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWall()
	 * @generated
	 * @ordered
	 */
	protected Wall wall;

	/**
	 * The cached value of the '{@link #getOpening() <em>Opening</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpening()
	 * @generated
	 * @ordered
	 */
	protected Opening opening;

	/**
	 * The default value of the '{@link #getDimension() <em>Dimension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDimension()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension DIMENSION_EDEFAULT = Dimension.OFFSET;

	/**
	 * The cached value of the '{@link #getDimension() <em>Dimension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDimension()
	 * @generated
	 * @ordered
	 */
	protected Dimension dimension = DIMENSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Length FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Length from = FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected static final Length TO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTo() <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTo()
	 * @generated
	 * @ordered
	 */
	protected Length to = TO_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final ProposalState STATE_EDEFAULT = ProposalState.OPEN;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected ProposalState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getComment() <em>Comment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getComment()
	 * @generated
	 * @ordered
	 */
	protected static final String COMMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getComment() <em>Comment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getComment()
	 * @generated
	 * @ordered
	 */
	protected String comment = COMMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected static final String BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected String by = BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProposalImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProposalPackage.Literals.PROPOSAL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMark() {
		return mark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMark(String newMark) {
		String oldMark = mark;
		mark = newMark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__MARK, oldMark, mark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wall getWall() {
		if (wall != null && wall.eIsProxy()) {
			InternalEObject oldWall = (InternalEObject)wall;
			wall = (Wall)eResolveProxy(oldWall);
			if (wall != oldWall) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProposalPackage.PROPOSAL__WALL, oldWall, wall));
			}
		}
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Wall basicGetWall() {
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWall(Wall newWall) {
		Wall oldWall = wall;
		wall = newWall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__WALL, oldWall, wall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Opening getOpening() {
		if (opening != null && opening.eIsProxy()) {
			InternalEObject oldOpening = (InternalEObject)opening;
			opening = (Opening)eResolveProxy(oldOpening);
			if (opening != oldOpening) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ProposalPackage.PROPOSAL__OPENING, oldOpening, opening));
			}
		}
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Opening basicGetOpening() {
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpening(Opening newOpening) {
		Opening oldOpening = opening;
		opening = newOpening;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__OPENING, oldOpening, opening));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getDimension() {
		return dimension;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDimension(Dimension newDimension) {
		Dimension oldDimension = dimension;
		dimension = newDimension == null ? DIMENSION_EDEFAULT : newDimension;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__DIMENSION, oldDimension, dimension));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFrom() {
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Length newFrom) {
		Length oldFrom = from;
		from = newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTo() {
		return to;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Length newTo) {
		Length oldTo = to;
		to = newTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__TO, oldTo, to));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProposalState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(ProposalState newState) {
		ProposalState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getComment() {
		return comment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setComment(String newComment) {
		String oldComment = comment;
		comment = newComment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__COMMENT, oldComment, comment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBy() {
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(String newBy) {
		String oldBy = by;
		by = newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProposalPackage.PROPOSAL__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProposalPackage.PROPOSAL__MARK:
				return getMark();
			case ProposalPackage.PROPOSAL__NOTE:
				return getNote();
			case ProposalPackage.PROPOSAL__WALL:
				if (resolve) return getWall();
				return basicGetWall();
			case ProposalPackage.PROPOSAL__OPENING:
				if (resolve) return getOpening();
				return basicGetOpening();
			case ProposalPackage.PROPOSAL__DIMENSION:
				return getDimension();
			case ProposalPackage.PROPOSAL__FROM:
				return getFrom();
			case ProposalPackage.PROPOSAL__TO:
				return getTo();
			case ProposalPackage.PROPOSAL__REASON:
				return getReason();
			case ProposalPackage.PROPOSAL__STATE:
				return getState();
			case ProposalPackage.PROPOSAL__COMMENT:
				return getComment();
			case ProposalPackage.PROPOSAL__BY:
				return getBy();
			case ProposalPackage.PROPOSAL__AT:
				return getAt();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ProposalPackage.PROPOSAL__MARK:
				setMark((String)newValue);
				return;
			case ProposalPackage.PROPOSAL__NOTE:
				setNote((String)newValue);
				return;
			case ProposalPackage.PROPOSAL__WALL:
				setWall((Wall)newValue);
				return;
			case ProposalPackage.PROPOSAL__OPENING:
				setOpening((Opening)newValue);
				return;
			case ProposalPackage.PROPOSAL__DIMENSION:
				setDimension((Dimension)newValue);
				return;
			case ProposalPackage.PROPOSAL__FROM:
				setFrom((Length)newValue);
				return;
			case ProposalPackage.PROPOSAL__TO:
				setTo((Length)newValue);
				return;
			case ProposalPackage.PROPOSAL__REASON:
				setReason((String)newValue);
				return;
			case ProposalPackage.PROPOSAL__STATE:
				setState((ProposalState)newValue);
				return;
			case ProposalPackage.PROPOSAL__COMMENT:
				setComment((String)newValue);
				return;
			case ProposalPackage.PROPOSAL__BY:
				setBy((String)newValue);
				return;
			case ProposalPackage.PROPOSAL__AT:
				setAt((Instant)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ProposalPackage.PROPOSAL__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__WALL:
				setWall((Wall)null);
				return;
			case ProposalPackage.PROPOSAL__OPENING:
				setOpening((Opening)null);
				return;
			case ProposalPackage.PROPOSAL__DIMENSION:
				setDimension(DIMENSION_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__FROM:
				setFrom(FROM_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__TO:
				setTo(TO_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__STATE:
				setState(STATE_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__COMMENT:
				setComment(COMMENT_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__BY:
				setBy(BY_EDEFAULT);
				return;
			case ProposalPackage.PROPOSAL__AT:
				setAt(AT_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ProposalPackage.PROPOSAL__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case ProposalPackage.PROPOSAL__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case ProposalPackage.PROPOSAL__WALL:
				return wall != null;
			case ProposalPackage.PROPOSAL__OPENING:
				return opening != null;
			case ProposalPackage.PROPOSAL__DIMENSION:
				return dimension != DIMENSION_EDEFAULT;
			case ProposalPackage.PROPOSAL__FROM:
				return FROM_EDEFAULT == null ? from != null : !FROM_EDEFAULT.equals(from);
			case ProposalPackage.PROPOSAL__TO:
				return TO_EDEFAULT == null ? to != null : !TO_EDEFAULT.equals(to);
			case ProposalPackage.PROPOSAL__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case ProposalPackage.PROPOSAL__STATE:
				return state != STATE_EDEFAULT;
			case ProposalPackage.PROPOSAL__COMMENT:
				return COMMENT_EDEFAULT == null ? comment != null : !COMMENT_EDEFAULT.equals(comment);
			case ProposalPackage.PROPOSAL__BY:
				return BY_EDEFAULT == null ? by != null : !BY_EDEFAULT.equals(by);
			case ProposalPackage.PROPOSAL__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (mark: ");
		result.append(mark);
		result.append(", note: ");
		result.append(note);
		result.append(", dimension: ");
		result.append(dimension);
		result.append(", from: ");
		result.append(from);
		result.append(", to: ");
		result.append(to);
		result.append(", reason: ");
		result.append(reason);
		result.append(", state: ");
		result.append(state);
		result.append(", comment: ");
		result.append(comment);
		result.append(", by: ");
		result.append(by);
		result.append(", at: ");
		result.append(at);
		result.append(')');
		return result.toString();
	}

} //ProposalImpl
