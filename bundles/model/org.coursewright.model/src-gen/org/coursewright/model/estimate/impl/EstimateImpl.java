/**
 */
package org.coursewright.model.estimate.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.MixDesign;

import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.Uncertainty;

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
 * An implementation of the model object '<em><b>Estimate</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getMortar <em>Mortar</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getFirstMortar <em>First Mortar</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getBedFillShare <em>Bed Fill Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getHeadFillShare <em>Head Fill Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getSealer <em>Sealer</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getScaffoldReach <em>Scaffold Reach</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getScaffoldLift <em>Scaffold Lift</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getTieCourses <em>Tie Courses</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getTiesPerJoint <em>Ties Per Joint</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getMaterialTaxShare <em>Material Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getLabourTaxShare <em>Labour Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getPlantTaxShare <em>Plant Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getHaulageTaxShare <em>Haulage Tax Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getOverheadShare <em>Overhead Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getContingencyShare <em>Contingency Share</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getUncertainties <em>Uncertainties</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getTasks <em>Tasks</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getRates <em>Rates</em>}</li>
 *   <li>{@link org.coursewright.model.estimate.impl.EstimateImpl#getScenarios <em>Scenarios</em>}</li>
 * </ul>
 *
 * @generated
 */
public class EstimateImpl extends MinimalEObjectImpl.Container implements Estimate {
	/**
	 * The cached value of the '{@link #getMortar() <em>Mortar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMortar()
	 * @generated
	 * @ordered
	 */
	protected MixDesign mortar;

	/**
	 * The cached value of the '{@link #getFirstMortar() <em>First Mortar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstMortar()
	 * @generated
	 * @ordered
	 */
	protected MixDesign firstMortar;

	/**
	 * The default value of the '{@link #getBedFillShare() <em>Bed Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedFillShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal BED_FILL_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBedFillShare() <em>Bed Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBedFillShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal bedFillShare = BED_FILL_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeadFillShare() <em>Head Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadFillShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal HEAD_FILL_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeadFillShare() <em>Head Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadFillShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal headFillShare = HEAD_FILL_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSealer() <em>Sealer</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSealer()
	 * @generated
	 * @ordered
	 */
	protected CoatingType sealer;

	/**
	 * The default value of the '{@link #getScaffoldReach() <em>Scaffold Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaffoldReach()
	 * @generated
	 * @ordered
	 */
	protected static final Length SCAFFOLD_REACH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScaffoldReach() <em>Scaffold Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaffoldReach()
	 * @generated
	 * @ordered
	 */
	protected Length scaffoldReach = SCAFFOLD_REACH_EDEFAULT;

	/**
	 * The default value of the '{@link #getScaffoldLift() <em>Scaffold Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaffoldLift()
	 * @generated
	 * @ordered
	 */
	protected static final Length SCAFFOLD_LIFT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScaffoldLift() <em>Scaffold Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaffoldLift()
	 * @generated
	 * @ordered
	 */
	protected Length scaffoldLift = SCAFFOLD_LIFT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTieCourses() <em>Tie Courses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTieCourses()
	 * @generated
	 * @ordered
	 */
	protected static final int TIE_COURSES_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getTieCourses() <em>Tie Courses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTieCourses()
	 * @generated
	 * @ordered
	 */
	protected int tieCourses = TIE_COURSES_EDEFAULT;

	/**
	 * The default value of the '{@link #getTiesPerJoint() <em>Ties Per Joint</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTiesPerJoint()
	 * @generated
	 * @ordered
	 */
	protected static final int TIES_PER_JOINT_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getTiesPerJoint() <em>Ties Per Joint</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTiesPerJoint()
	 * @generated
	 * @ordered
	 */
	protected int tiesPerJoint = TIES_PER_JOINT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaterialTaxShare() <em>Material Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterialTaxShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MATERIAL_TAX_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterialTaxShare() <em>Material Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterialTaxShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal materialTaxShare = MATERIAL_TAX_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabourTaxShare() <em>Labour Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabourTaxShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LABOUR_TAX_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabourTaxShare() <em>Labour Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabourTaxShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal labourTaxShare = LABOUR_TAX_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlantTaxShare() <em>Plant Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlantTaxShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PLANT_TAX_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlantTaxShare() <em>Plant Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlantTaxShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal plantTaxShare = PLANT_TAX_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHaulageTaxShare() <em>Haulage Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHaulageTaxShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal HAULAGE_TAX_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHaulageTaxShare() <em>Haulage Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHaulageTaxShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal haulageTaxShare = HAULAGE_TAX_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOverheadShare() <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverheadShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal OVERHEAD_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOverheadShare() <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverheadShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal overheadShare = OVERHEAD_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getContingencyShare() <em>Contingency Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContingencyShare()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal CONTINGENCY_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContingencyShare() <em>Contingency Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContingencyShare()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal contingencyShare = CONTINGENCY_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getUncertainties() <em>Uncertainties</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUncertainties()
	 * @generated
	 * @ordered
	 */
	protected EList<Uncertainty> uncertainties;

	/**
	 * The cached value of the '{@link #getTasks() <em>Tasks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTasks()
	 * @generated
	 * @ordered
	 */
	protected EList<Task> tasks;

	/**
	 * The cached value of the '{@link #getRates() <em>Rates</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRates()
	 * @generated
	 * @ordered
	 */
	protected EList<Rate> rates;

	/**
	 * The cached value of the '{@link #getScenarios() <em>Scenarios</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScenarios()
	 * @generated
	 * @ordered
	 */
	protected EList<Scenario> scenarios;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected EstimateImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return EstimatePackage.Literals.ESTIMATE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixDesign getMortar() {
		if (mortar != null && mortar.eIsProxy()) {
			InternalEObject oldMortar = (InternalEObject)mortar;
			mortar = (MixDesign)eResolveProxy(oldMortar);
			if (mortar != oldMortar) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.ESTIMATE__MORTAR, oldMortar, mortar));
			}
		}
		return mortar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MixDesign basicGetMortar() {
		return mortar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMortar(MixDesign newMortar) {
		MixDesign oldMortar = mortar;
		mortar = newMortar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__MORTAR, oldMortar, mortar));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixDesign getFirstMortar() {
		if (firstMortar != null && firstMortar.eIsProxy()) {
			InternalEObject oldFirstMortar = (InternalEObject)firstMortar;
			firstMortar = (MixDesign)eResolveProxy(oldFirstMortar);
			if (firstMortar != oldFirstMortar) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.ESTIMATE__FIRST_MORTAR, oldFirstMortar, firstMortar));
			}
		}
		return firstMortar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MixDesign basicGetFirstMortar() {
		return firstMortar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstMortar(MixDesign newFirstMortar) {
		MixDesign oldFirstMortar = firstMortar;
		firstMortar = newFirstMortar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__FIRST_MORTAR, oldFirstMortar, firstMortar));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getBedFillShare() {
		return bedFillShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBedFillShare(BigDecimal newBedFillShare) {
		BigDecimal oldBedFillShare = bedFillShare;
		bedFillShare = newBedFillShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__BED_FILL_SHARE, oldBedFillShare, bedFillShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getHeadFillShare() {
		return headFillShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadFillShare(BigDecimal newHeadFillShare) {
		BigDecimal oldHeadFillShare = headFillShare;
		headFillShare = newHeadFillShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__HEAD_FILL_SHARE, oldHeadFillShare, headFillShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CoatingType getSealer() {
		if (sealer != null && sealer.eIsProxy()) {
			InternalEObject oldSealer = (InternalEObject)sealer;
			sealer = (CoatingType)eResolveProxy(oldSealer);
			if (sealer != oldSealer) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, EstimatePackage.ESTIMATE__SEALER, oldSealer, sealer));
			}
		}
		return sealer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CoatingType basicGetSealer() {
		return sealer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSealer(CoatingType newSealer) {
		CoatingType oldSealer = sealer;
		sealer = newSealer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__SEALER, oldSealer, sealer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getScaffoldReach() {
		return scaffoldReach;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScaffoldReach(Length newScaffoldReach) {
		Length oldScaffoldReach = scaffoldReach;
		scaffoldReach = newScaffoldReach;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__SCAFFOLD_REACH, oldScaffoldReach, scaffoldReach));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getScaffoldLift() {
		return scaffoldLift;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScaffoldLift(Length newScaffoldLift) {
		Length oldScaffoldLift = scaffoldLift;
		scaffoldLift = newScaffoldLift;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__SCAFFOLD_LIFT, oldScaffoldLift, scaffoldLift));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getTieCourses() {
		return tieCourses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTieCourses(int newTieCourses) {
		int oldTieCourses = tieCourses;
		tieCourses = newTieCourses;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__TIE_COURSES, oldTieCourses, tieCourses));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getTiesPerJoint() {
		return tiesPerJoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTiesPerJoint(int newTiesPerJoint) {
		int oldTiesPerJoint = tiesPerJoint;
		tiesPerJoint = newTiesPerJoint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__TIES_PER_JOINT, oldTiesPerJoint, tiesPerJoint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMaterialTaxShare() {
		return materialTaxShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterialTaxShare(BigDecimal newMaterialTaxShare) {
		BigDecimal oldMaterialTaxShare = materialTaxShare;
		materialTaxShare = newMaterialTaxShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__MATERIAL_TAX_SHARE, oldMaterialTaxShare, materialTaxShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLabourTaxShare() {
		return labourTaxShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabourTaxShare(BigDecimal newLabourTaxShare) {
		BigDecimal oldLabourTaxShare = labourTaxShare;
		labourTaxShare = newLabourTaxShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__LABOUR_TAX_SHARE, oldLabourTaxShare, labourTaxShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPlantTaxShare() {
		return plantTaxShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlantTaxShare(BigDecimal newPlantTaxShare) {
		BigDecimal oldPlantTaxShare = plantTaxShare;
		plantTaxShare = newPlantTaxShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__PLANT_TAX_SHARE, oldPlantTaxShare, plantTaxShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getHaulageTaxShare() {
		return haulageTaxShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHaulageTaxShare(BigDecimal newHaulageTaxShare) {
		BigDecimal oldHaulageTaxShare = haulageTaxShare;
		haulageTaxShare = newHaulageTaxShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__HAULAGE_TAX_SHARE, oldHaulageTaxShare, haulageTaxShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getOverheadShare() {
		return overheadShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverheadShare(BigDecimal newOverheadShare) {
		BigDecimal oldOverheadShare = overheadShare;
		overheadShare = newOverheadShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__OVERHEAD_SHARE, oldOverheadShare, overheadShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getContingencyShare() {
		return contingencyShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContingencyShare(BigDecimal newContingencyShare) {
		BigDecimal oldContingencyShare = contingencyShare;
		contingencyShare = newContingencyShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, EstimatePackage.ESTIMATE__CONTINGENCY_SHARE, oldContingencyShare, contingencyShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Uncertainty> getUncertainties() {
		if (uncertainties == null) {
			uncertainties = new EObjectContainmentEList<Uncertainty>(Uncertainty.class, this, EstimatePackage.ESTIMATE__UNCERTAINTIES);
		}
		return uncertainties;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Task> getTasks() {
		if (tasks == null) {
			tasks = new EObjectContainmentEList<Task>(Task.class, this, EstimatePackage.ESTIMATE__TASKS);
		}
		return tasks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Rate> getRates() {
		if (rates == null) {
			rates = new EObjectContainmentEList<Rate>(Rate.class, this, EstimatePackage.ESTIMATE__RATES);
		}
		return rates;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Scenario> getScenarios() {
		if (scenarios == null) {
			scenarios = new EObjectContainmentEList<Scenario>(Scenario.class, this, EstimatePackage.ESTIMATE__SCENARIOS);
		}
		return scenarios;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case EstimatePackage.ESTIMATE__UNCERTAINTIES:
				return ((InternalEList<?>)getUncertainties()).basicRemove(otherEnd, msgs);
			case EstimatePackage.ESTIMATE__TASKS:
				return ((InternalEList<?>)getTasks()).basicRemove(otherEnd, msgs);
			case EstimatePackage.ESTIMATE__RATES:
				return ((InternalEList<?>)getRates()).basicRemove(otherEnd, msgs);
			case EstimatePackage.ESTIMATE__SCENARIOS:
				return ((InternalEList<?>)getScenarios()).basicRemove(otherEnd, msgs);
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
			case EstimatePackage.ESTIMATE__MORTAR:
				if (resolve) return getMortar();
				return basicGetMortar();
			case EstimatePackage.ESTIMATE__FIRST_MORTAR:
				if (resolve) return getFirstMortar();
				return basicGetFirstMortar();
			case EstimatePackage.ESTIMATE__BED_FILL_SHARE:
				return getBedFillShare();
			case EstimatePackage.ESTIMATE__HEAD_FILL_SHARE:
				return getHeadFillShare();
			case EstimatePackage.ESTIMATE__SEALER:
				if (resolve) return getSealer();
				return basicGetSealer();
			case EstimatePackage.ESTIMATE__SCAFFOLD_REACH:
				return getScaffoldReach();
			case EstimatePackage.ESTIMATE__SCAFFOLD_LIFT:
				return getScaffoldLift();
			case EstimatePackage.ESTIMATE__TIE_COURSES:
				return getTieCourses();
			case EstimatePackage.ESTIMATE__TIES_PER_JOINT:
				return getTiesPerJoint();
			case EstimatePackage.ESTIMATE__MATERIAL_TAX_SHARE:
				return getMaterialTaxShare();
			case EstimatePackage.ESTIMATE__LABOUR_TAX_SHARE:
				return getLabourTaxShare();
			case EstimatePackage.ESTIMATE__PLANT_TAX_SHARE:
				return getPlantTaxShare();
			case EstimatePackage.ESTIMATE__HAULAGE_TAX_SHARE:
				return getHaulageTaxShare();
			case EstimatePackage.ESTIMATE__OVERHEAD_SHARE:
				return getOverheadShare();
			case EstimatePackage.ESTIMATE__CONTINGENCY_SHARE:
				return getContingencyShare();
			case EstimatePackage.ESTIMATE__UNCERTAINTIES:
				return getUncertainties();
			case EstimatePackage.ESTIMATE__TASKS:
				return getTasks();
			case EstimatePackage.ESTIMATE__RATES:
				return getRates();
			case EstimatePackage.ESTIMATE__SCENARIOS:
				return getScenarios();
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
			case EstimatePackage.ESTIMATE__MORTAR:
				setMortar((MixDesign)newValue);
				return;
			case EstimatePackage.ESTIMATE__FIRST_MORTAR:
				setFirstMortar((MixDesign)newValue);
				return;
			case EstimatePackage.ESTIMATE__BED_FILL_SHARE:
				setBedFillShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__HEAD_FILL_SHARE:
				setHeadFillShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__SEALER:
				setSealer((CoatingType)newValue);
				return;
			case EstimatePackage.ESTIMATE__SCAFFOLD_REACH:
				setScaffoldReach((Length)newValue);
				return;
			case EstimatePackage.ESTIMATE__SCAFFOLD_LIFT:
				setScaffoldLift((Length)newValue);
				return;
			case EstimatePackage.ESTIMATE__TIE_COURSES:
				setTieCourses((Integer)newValue);
				return;
			case EstimatePackage.ESTIMATE__TIES_PER_JOINT:
				setTiesPerJoint((Integer)newValue);
				return;
			case EstimatePackage.ESTIMATE__MATERIAL_TAX_SHARE:
				setMaterialTaxShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__LABOUR_TAX_SHARE:
				setLabourTaxShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__PLANT_TAX_SHARE:
				setPlantTaxShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__HAULAGE_TAX_SHARE:
				setHaulageTaxShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__OVERHEAD_SHARE:
				setOverheadShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__CONTINGENCY_SHARE:
				setContingencyShare((BigDecimal)newValue);
				return;
			case EstimatePackage.ESTIMATE__UNCERTAINTIES:
				getUncertainties().clear();
				getUncertainties().addAll((Collection<? extends Uncertainty>)newValue);
				return;
			case EstimatePackage.ESTIMATE__TASKS:
				getTasks().clear();
				getTasks().addAll((Collection<? extends Task>)newValue);
				return;
			case EstimatePackage.ESTIMATE__RATES:
				getRates().clear();
				getRates().addAll((Collection<? extends Rate>)newValue);
				return;
			case EstimatePackage.ESTIMATE__SCENARIOS:
				getScenarios().clear();
				getScenarios().addAll((Collection<? extends Scenario>)newValue);
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
			case EstimatePackage.ESTIMATE__MORTAR:
				setMortar((MixDesign)null);
				return;
			case EstimatePackage.ESTIMATE__FIRST_MORTAR:
				setFirstMortar((MixDesign)null);
				return;
			case EstimatePackage.ESTIMATE__BED_FILL_SHARE:
				setBedFillShare(BED_FILL_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__HEAD_FILL_SHARE:
				setHeadFillShare(HEAD_FILL_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__SEALER:
				setSealer((CoatingType)null);
				return;
			case EstimatePackage.ESTIMATE__SCAFFOLD_REACH:
				setScaffoldReach(SCAFFOLD_REACH_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__SCAFFOLD_LIFT:
				setScaffoldLift(SCAFFOLD_LIFT_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__TIE_COURSES:
				setTieCourses(TIE_COURSES_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__TIES_PER_JOINT:
				setTiesPerJoint(TIES_PER_JOINT_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__MATERIAL_TAX_SHARE:
				setMaterialTaxShare(MATERIAL_TAX_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__LABOUR_TAX_SHARE:
				setLabourTaxShare(LABOUR_TAX_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__PLANT_TAX_SHARE:
				setPlantTaxShare(PLANT_TAX_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__HAULAGE_TAX_SHARE:
				setHaulageTaxShare(HAULAGE_TAX_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__OVERHEAD_SHARE:
				setOverheadShare(OVERHEAD_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__CONTINGENCY_SHARE:
				setContingencyShare(CONTINGENCY_SHARE_EDEFAULT);
				return;
			case EstimatePackage.ESTIMATE__UNCERTAINTIES:
				getUncertainties().clear();
				return;
			case EstimatePackage.ESTIMATE__TASKS:
				getTasks().clear();
				return;
			case EstimatePackage.ESTIMATE__RATES:
				getRates().clear();
				return;
			case EstimatePackage.ESTIMATE__SCENARIOS:
				getScenarios().clear();
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
			case EstimatePackage.ESTIMATE__MORTAR:
				return mortar != null;
			case EstimatePackage.ESTIMATE__FIRST_MORTAR:
				return firstMortar != null;
			case EstimatePackage.ESTIMATE__BED_FILL_SHARE:
				return BED_FILL_SHARE_EDEFAULT == null ? bedFillShare != null : !BED_FILL_SHARE_EDEFAULT.equals(bedFillShare);
			case EstimatePackage.ESTIMATE__HEAD_FILL_SHARE:
				return HEAD_FILL_SHARE_EDEFAULT == null ? headFillShare != null : !HEAD_FILL_SHARE_EDEFAULT.equals(headFillShare);
			case EstimatePackage.ESTIMATE__SEALER:
				return sealer != null;
			case EstimatePackage.ESTIMATE__SCAFFOLD_REACH:
				return SCAFFOLD_REACH_EDEFAULT == null ? scaffoldReach != null : !SCAFFOLD_REACH_EDEFAULT.equals(scaffoldReach);
			case EstimatePackage.ESTIMATE__SCAFFOLD_LIFT:
				return SCAFFOLD_LIFT_EDEFAULT == null ? scaffoldLift != null : !SCAFFOLD_LIFT_EDEFAULT.equals(scaffoldLift);
			case EstimatePackage.ESTIMATE__TIE_COURSES:
				return tieCourses != TIE_COURSES_EDEFAULT;
			case EstimatePackage.ESTIMATE__TIES_PER_JOINT:
				return tiesPerJoint != TIES_PER_JOINT_EDEFAULT;
			case EstimatePackage.ESTIMATE__MATERIAL_TAX_SHARE:
				return MATERIAL_TAX_SHARE_EDEFAULT == null ? materialTaxShare != null : !MATERIAL_TAX_SHARE_EDEFAULT.equals(materialTaxShare);
			case EstimatePackage.ESTIMATE__LABOUR_TAX_SHARE:
				return LABOUR_TAX_SHARE_EDEFAULT == null ? labourTaxShare != null : !LABOUR_TAX_SHARE_EDEFAULT.equals(labourTaxShare);
			case EstimatePackage.ESTIMATE__PLANT_TAX_SHARE:
				return PLANT_TAX_SHARE_EDEFAULT == null ? plantTaxShare != null : !PLANT_TAX_SHARE_EDEFAULT.equals(plantTaxShare);
			case EstimatePackage.ESTIMATE__HAULAGE_TAX_SHARE:
				return HAULAGE_TAX_SHARE_EDEFAULT == null ? haulageTaxShare != null : !HAULAGE_TAX_SHARE_EDEFAULT.equals(haulageTaxShare);
			case EstimatePackage.ESTIMATE__OVERHEAD_SHARE:
				return OVERHEAD_SHARE_EDEFAULT == null ? overheadShare != null : !OVERHEAD_SHARE_EDEFAULT.equals(overheadShare);
			case EstimatePackage.ESTIMATE__CONTINGENCY_SHARE:
				return CONTINGENCY_SHARE_EDEFAULT == null ? contingencyShare != null : !CONTINGENCY_SHARE_EDEFAULT.equals(contingencyShare);
			case EstimatePackage.ESTIMATE__UNCERTAINTIES:
				return uncertainties != null && !uncertainties.isEmpty();
			case EstimatePackage.ESTIMATE__TASKS:
				return tasks != null && !tasks.isEmpty();
			case EstimatePackage.ESTIMATE__RATES:
				return rates != null && !rates.isEmpty();
			case EstimatePackage.ESTIMATE__SCENARIOS:
				return scenarios != null && !scenarios.isEmpty();
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
		result.append(" (bedFillShare: ");
		result.append(bedFillShare);
		result.append(", headFillShare: ");
		result.append(headFillShare);
		result.append(", scaffoldReach: ");
		result.append(scaffoldReach);
		result.append(", scaffoldLift: ");
		result.append(scaffoldLift);
		result.append(", tieCourses: ");
		result.append(tieCourses);
		result.append(", tiesPerJoint: ");
		result.append(tiesPerJoint);
		result.append(", materialTaxShare: ");
		result.append(materialTaxShare);
		result.append(", labourTaxShare: ");
		result.append(labourTaxShare);
		result.append(", plantTaxShare: ");
		result.append(plantTaxShare);
		result.append(", haulageTaxShare: ");
		result.append(haulageTaxShare);
		result.append(", overheadShare: ");
		result.append(overheadShare);
		result.append(", contingencyShare: ");
		result.append(contingencyShare);
		result.append(')');
		return result.toString();
	}

} //EstimateImpl
