/**
 */
package org.coursewright.model.estimate.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.coursewright.measure.Quantity;

import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.Plant;

import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.HeightBand;
import org.coursewright.model.estimate.LearningTheory;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.Uncertain;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.model.estimate.WorkKind;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Task</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getLowShare <em>Low Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getHighShare <em>High Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getMovesWith <em>Moves With</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getCrew <em>Crew</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getPlant <em>Plant</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getOutput <em>Output</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getConditionsShare <em>Conditions Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getLearningShare <em>Learning Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getLearningTheory <em>Learning Theory</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getLearningRepetition <em>Learning Repetition</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getLearningPlateau <em>Learning Plateau</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getBands <em>Bands</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.TaskImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TaskImpl extends MinimalEObjectImpl.Container implements Task {
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
	 * The default value of the '{@link #getLowShare() <em>Low Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LOW_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLowShare() <em>Low Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal lowShare = LOW_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHighShare() <em>High Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal HIGH_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHighShare() <em>High Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal highShare = HIGH_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMovesWith() <em>Moves With</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovesWith()
	 * @generated
	 * @ordered
	 */
	protected Uncertainty movesWith;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final WorkKind KIND_EDEFAULT = WorkKind.LAY;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected WorkKind kind = KIND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCrew() <em>Crew</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrew()
	 * @generated
	 * @ordered
	 */
	protected CrewType crew;

	/**
	 * The cached value of the '{@link #getPlant() <em>Plant</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlant()
	 * @generated
	 * @ordered
	 */
	protected Plant plant;

	/**
	 * The default value of the '{@link #getOutput() <em>Output</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutput()
	 * @generated
	 * @ordered
	 */
	protected static final Quantity OUTPUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutput() <em>Output</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutput()
	 * @generated
	 * @ordered
	 */
	protected Quantity output = OUTPUT_EDEFAULT;

	/**
	 * The default value of the '{@link #getConditionsShare() <em>Conditions Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditionsShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal CONDITIONS_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConditionsShare() <em>Conditions Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditionsShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal conditionsShare = CONDITIONS_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLearningShare() <em>Learning Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LEARNING_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLearningShare() <em>Learning Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal learningShare = LEARNING_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLearningTheory() <em>Learning Theory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningTheory()
	 * @generated
	 * @ordered
	 */
	protected static final LearningTheory LEARNING_THEORY_EDEFAULT = LearningTheory.UNIT;

	/**
	 * The cached value of the '{@link #getLearningTheory() <em>Learning Theory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningTheory()
	 * @generated
	 * @ordered
	 */
	protected LearningTheory learningTheory = LEARNING_THEORY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLearningRepetition() <em>Learning Repetition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningRepetition()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LEARNING_REPETITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLearningRepetition() <em>Learning Repetition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningRepetition()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal learningRepetition = LEARNING_REPETITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getLearningPlateau() <em>Learning Plateau</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningPlateau()
	 * @generated
	 * @ordered
	 */
	protected static final int LEARNING_PLATEAU_EDEFAULT = 64;

	/**
	 * The cached value of the '{@link #getLearningPlateau() <em>Learning Plateau</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearningPlateau()
	 * @generated
	 * @ordered
	 */
	protected int learningPlateau = LEARNING_PLATEAU_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBands() <em>Bands</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBands()
	 * @generated
	 * @ordered
	 */
	protected EList<HeightBand> bands;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TaskImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.TASK;
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__MARK, oldMark, mark));
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
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLowShare() {
		return lowShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowShare(BigDecimal newLowShare) {
		BigDecimal oldLowShare = lowShare;
		lowShare = newLowShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__LOW_SHARE, oldLowShare, lowShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getHighShare() {
		return highShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighShare(BigDecimal newHighShare) {
		BigDecimal oldHighShare = highShare;
		highShare = newHighShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__HIGH_SHARE, oldHighShare, highShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Uncertainty getMovesWith() {
		if (movesWith != null && movesWith.eIsProxy()) {
			InternalEObject oldMovesWith = (InternalEObject)movesWith;
			movesWith = (Uncertainty)eResolveProxy(oldMovesWith);
			if (movesWith != oldMovesWith) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.TASK__MOVES_WITH, oldMovesWith, movesWith));
			}
		}
		return movesWith;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Uncertainty basicGetMovesWith() {
		return movesWith;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMovesWith(Uncertainty newMovesWith) {
		Uncertainty oldMovesWith = movesWith;
		movesWith = newMovesWith;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__MOVES_WITH, oldMovesWith, movesWith));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WorkKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(WorkKind newKind) {
		WorkKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CrewType getCrew() {
		if (crew != null && crew.eIsProxy()) {
			InternalEObject oldCrew = (InternalEObject)crew;
			crew = (CrewType)eResolveProxy(oldCrew);
			if (crew != oldCrew) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.TASK__CREW, oldCrew, crew));
			}
		}
		return crew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CrewType basicGetCrew() {
		return crew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrew(CrewType newCrew) {
		CrewType oldCrew = crew;
		crew = newCrew;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__CREW, oldCrew, crew));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Plant getPlant() {
		if (plant != null && plant.eIsProxy()) {
			InternalEObject oldPlant = (InternalEObject)plant;
			plant = (Plant)eResolveProxy(oldPlant);
			if (plant != oldPlant) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.TASK__PLANT, oldPlant, plant));
			}
		}
		return plant;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Plant basicGetPlant() {
		return plant;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlant(Plant newPlant) {
		Plant oldPlant = plant;
		plant = newPlant;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__PLANT, oldPlant, plant));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOutput() {
		return output;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutput(Quantity newOutput) {
		Quantity oldOutput = output;
		output = newOutput;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__OUTPUT, oldOutput, output));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getConditionsShare() {
		return conditionsShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConditionsShare(BigDecimal newConditionsShare) {
		BigDecimal oldConditionsShare = conditionsShare;
		conditionsShare = newConditionsShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__CONDITIONS_SHARE, oldConditionsShare, conditionsShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLearningShare() {
		return learningShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLearningShare(BigDecimal newLearningShare) {
		BigDecimal oldLearningShare = learningShare;
		learningShare = newLearningShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__LEARNING_SHARE, oldLearningShare, learningShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LearningTheory getLearningTheory() {
		return learningTheory;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLearningTheory(LearningTheory newLearningTheory) {
		LearningTheory oldLearningTheory = learningTheory;
		learningTheory = newLearningTheory == null ? LEARNING_THEORY_EDEFAULT : newLearningTheory;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__LEARNING_THEORY, oldLearningTheory, learningTheory));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLearningRepetition() {
		return learningRepetition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLearningRepetition(BigDecimal newLearningRepetition) {
		BigDecimal oldLearningRepetition = learningRepetition;
		learningRepetition = newLearningRepetition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__LEARNING_REPETITION, oldLearningRepetition, learningRepetition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLearningPlateau() {
		return learningPlateau;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLearningPlateau(int newLearningPlateau) {
		int oldLearningPlateau = learningPlateau;
		learningPlateau = newLearningPlateau;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__LEARNING_PLATEAU, oldLearningPlateau, learningPlateau));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<HeightBand> getBands() {
		if (bands == null) {
			bands = new EObjectContainmentEList<HeightBand>(HeightBand.class, this, EstimatePackage.TASK__BANDS);
		}
		return bands;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.TASK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case EstimatePackage.TASK__BANDS:
				return ((InternalEList<?>)getBands()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case EstimatePackage.TASK__MARK:
				return getMark();
			case EstimatePackage.TASK__NOTE:
				return getNote();
			case EstimatePackage.TASK__LOW_SHARE:
				return getLowShare();
			case EstimatePackage.TASK__HIGH_SHARE:
				return getHighShare();
			case EstimatePackage.TASK__MOVES_WITH:
				if (resolve) return getMovesWith();
				return basicGetMovesWith();
			case EstimatePackage.TASK__KIND:
				return getKind();
			case EstimatePackage.TASK__CREW:
				if (resolve) return getCrew();
				return basicGetCrew();
			case EstimatePackage.TASK__PLANT:
				if (resolve) return getPlant();
				return basicGetPlant();
			case EstimatePackage.TASK__OUTPUT:
				return getOutput();
			case EstimatePackage.TASK__CONDITIONS_SHARE:
				return getConditionsShare();
			case EstimatePackage.TASK__LEARNING_SHARE:
				return getLearningShare();
			case EstimatePackage.TASK__LEARNING_THEORY:
				return getLearningTheory();
			case EstimatePackage.TASK__LEARNING_REPETITION:
				return getLearningRepetition();
			case EstimatePackage.TASK__LEARNING_PLATEAU:
				return getLearningPlateau();
			case EstimatePackage.TASK__BANDS:
				return getBands();
			case EstimatePackage.TASK__SOURCE:
				return getSource();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case EstimatePackage.TASK__MARK:
				setMark((String)newValue);
				return;
			case EstimatePackage.TASK__NOTE:
				setNote((String)newValue);
				return;
			case EstimatePackage.TASK__LOW_SHARE:
				setLowShare((BigDecimal)newValue);
				return;
			case EstimatePackage.TASK__HIGH_SHARE:
				setHighShare((BigDecimal)newValue);
				return;
			case EstimatePackage.TASK__MOVES_WITH:
				setMovesWith((Uncertainty)newValue);
				return;
			case EstimatePackage.TASK__KIND:
				setKind((WorkKind)newValue);
				return;
			case EstimatePackage.TASK__CREW:
				setCrew((CrewType)newValue);
				return;
			case EstimatePackage.TASK__PLANT:
				setPlant((Plant)newValue);
				return;
			case EstimatePackage.TASK__OUTPUT:
				setOutput((Quantity)newValue);
				return;
			case EstimatePackage.TASK__CONDITIONS_SHARE:
				setConditionsShare((BigDecimal)newValue);
				return;
			case EstimatePackage.TASK__LEARNING_SHARE:
				setLearningShare((BigDecimal)newValue);
				return;
			case EstimatePackage.TASK__LEARNING_THEORY:
				setLearningTheory((LearningTheory)newValue);
				return;
			case EstimatePackage.TASK__LEARNING_REPETITION:
				setLearningRepetition((BigDecimal)newValue);
				return;
			case EstimatePackage.TASK__LEARNING_PLATEAU:
				setLearningPlateau((Integer)newValue);
				return;
			case EstimatePackage.TASK__BANDS:
				getBands().clear();
				getBands().addAll((Collection<? extends HeightBand>)newValue);
				return;
			case EstimatePackage.TASK__SOURCE:
				setSource((String)newValue);
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
			case EstimatePackage.TASK__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case EstimatePackage.TASK__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case EstimatePackage.TASK__LOW_SHARE:
				setLowShare(LOW_SHARE_EDEFAULT);
				return;
			case EstimatePackage.TASK__HIGH_SHARE:
				setHighShare(HIGH_SHARE_EDEFAULT);
				return;
			case EstimatePackage.TASK__MOVES_WITH:
				setMovesWith((Uncertainty)null);
				return;
			case EstimatePackage.TASK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case EstimatePackage.TASK__CREW:
				setCrew((CrewType)null);
				return;
			case EstimatePackage.TASK__PLANT:
				setPlant((Plant)null);
				return;
			case EstimatePackage.TASK__OUTPUT:
				setOutput(OUTPUT_EDEFAULT);
				return;
			case EstimatePackage.TASK__CONDITIONS_SHARE:
				setConditionsShare(CONDITIONS_SHARE_EDEFAULT);
				return;
			case EstimatePackage.TASK__LEARNING_SHARE:
				setLearningShare(LEARNING_SHARE_EDEFAULT);
				return;
			case EstimatePackage.TASK__LEARNING_THEORY:
				setLearningTheory(LEARNING_THEORY_EDEFAULT);
				return;
			case EstimatePackage.TASK__LEARNING_REPETITION:
				setLearningRepetition(LEARNING_REPETITION_EDEFAULT);
				return;
			case EstimatePackage.TASK__LEARNING_PLATEAU:
				setLearningPlateau(LEARNING_PLATEAU_EDEFAULT);
				return;
			case EstimatePackage.TASK__BANDS:
				getBands().clear();
				return;
			case EstimatePackage.TASK__SOURCE:
				setSource(SOURCE_EDEFAULT);
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
			case EstimatePackage.TASK__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case EstimatePackage.TASK__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case EstimatePackage.TASK__LOW_SHARE:
				return LOW_SHARE_EDEFAULT == null ? lowShare != null : !LOW_SHARE_EDEFAULT.equals(lowShare);
			case EstimatePackage.TASK__HIGH_SHARE:
				return HIGH_SHARE_EDEFAULT == null ? highShare != null : !HIGH_SHARE_EDEFAULT.equals(highShare);
			case EstimatePackage.TASK__MOVES_WITH:
				return movesWith != null;
			case EstimatePackage.TASK__KIND:
				return kind != KIND_EDEFAULT;
			case EstimatePackage.TASK__CREW:
				return crew != null;
			case EstimatePackage.TASK__PLANT:
				return plant != null;
			case EstimatePackage.TASK__OUTPUT:
				return OUTPUT_EDEFAULT == null ? output != null : !OUTPUT_EDEFAULT.equals(output);
			case EstimatePackage.TASK__CONDITIONS_SHARE:
				return CONDITIONS_SHARE_EDEFAULT == null ? conditionsShare != null : !CONDITIONS_SHARE_EDEFAULT.equals(conditionsShare);
			case EstimatePackage.TASK__LEARNING_SHARE:
				return LEARNING_SHARE_EDEFAULT == null ? learningShare != null : !LEARNING_SHARE_EDEFAULT.equals(learningShare);
			case EstimatePackage.TASK__LEARNING_THEORY:
				return learningTheory != LEARNING_THEORY_EDEFAULT;
			case EstimatePackage.TASK__LEARNING_REPETITION:
				return LEARNING_REPETITION_EDEFAULT == null ? learningRepetition != null : !LEARNING_REPETITION_EDEFAULT.equals(learningRepetition);
			case EstimatePackage.TASK__LEARNING_PLATEAU:
				return learningPlateau != LEARNING_PLATEAU_EDEFAULT;
			case EstimatePackage.TASK__BANDS:
				return bands != null && !bands.isEmpty();
			case EstimatePackage.TASK__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass) {
		if (baseClass == Uncertain.class) {
			switch (derivedFeatureID) {
				case EstimatePackage.TASK__LOW_SHARE: return EstimatePackage.UNCERTAIN__LOW_SHARE;
				case EstimatePackage.TASK__HIGH_SHARE: return EstimatePackage.UNCERTAIN__HIGH_SHARE;
				case EstimatePackage.TASK__MOVES_WITH: return EstimatePackage.UNCERTAIN__MOVES_WITH;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass) {
		if (baseClass == Uncertain.class) {
			switch (baseFeatureID) {
				case EstimatePackage.UNCERTAIN__LOW_SHARE: return EstimatePackage.TASK__LOW_SHARE;
				case EstimatePackage.UNCERTAIN__HIGH_SHARE: return EstimatePackage.TASK__HIGH_SHARE;
				case EstimatePackage.UNCERTAIN__MOVES_WITH: return EstimatePackage.TASK__MOVES_WITH;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
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
		result.append(", lowShare: ");
		result.append(lowShare);
		result.append(", highShare: ");
		result.append(highShare);
		result.append(", kind: ");
		result.append(kind);
		result.append(", output: ");
		result.append(output);
		result.append(", conditionsShare: ");
		result.append(conditionsShare);
		result.append(", learningShare: ");
		result.append(learningShare);
		result.append(", learningTheory: ");
		result.append(learningTheory);
		result.append(", learningRepetition: ");
		result.append(learningRepetition);
		result.append(", learningPlateau: ");
		result.append(learningPlateau);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //TaskImpl
