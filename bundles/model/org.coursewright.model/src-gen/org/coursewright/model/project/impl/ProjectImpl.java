/**
 */
package org.coursewright.model.project.impl;

import java.util.Collection;

import org.coursewright.measure.DisplayUnit;

import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Building;

import org.coursewright.model.catalogue.Catalogue;

import org.coursewright.model.estimate.Estimate;

import org.coursewright.model.programme.Programme;

import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.project.Site;

import org.coursewright.model.proposal.Proposal;

import org.coursewright.model.register.Register;

import org.coursewright.model.supply.Supply;

import org.coursewright.model.types.TypesFactory;
import org.coursewright.model.types.TypesPackage;

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
 * An implementation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getCurrency <em>Currency</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getDisplayUnit <em>Display Unit</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getInchDenominator <em>Inch Denominator</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getLocale <em>Locale</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getSite <em>Site</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getCatalogue <em>Catalogue</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getBondRule <em>Bond Rule</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getBuilding <em>Building</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getEstimate <em>Estimate</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getProgramme <em>Programme</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getSupply <em>Supply</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getRegister <em>Register</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.ProjectImpl#getProposals <em>Proposals</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProjectImpl extends MinimalEObjectImpl.Container implements Project {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected static final String CURRENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected String currency = CURRENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getDisplayUnit() <em>Display Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisplayUnit()
	 * @generated
	 * @ordered
	 */
	protected static final DisplayUnit DISPLAY_UNIT_EDEFAULT = (DisplayUnit)TypesFactory.eINSTANCE.createFromString(TypesPackage.eINSTANCE.getDisplayUnit(), "in");

	/**
	 * The cached value of the '{@link #getDisplayUnit() <em>Display Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisplayUnit()
	 * @generated
	 * @ordered
	 */
	protected DisplayUnit displayUnit = DISPLAY_UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getInchDenominator() <em>Inch Denominator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInchDenominator()
	 * @generated
	 * @ordered
	 */
	protected static final int INCH_DENOMINATOR_EDEFAULT = 16;

	/**
	 * The cached value of the '{@link #getInchDenominator() <em>Inch Denominator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInchDenominator()
	 * @generated
	 * @ordered
	 */
	protected int inchDenominator = INCH_DENOMINATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getLocale() <em>Locale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocale()
	 * @generated
	 * @ordered
	 */
	protected static final String LOCALE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLocale() <em>Locale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocale()
	 * @generated
	 * @ordered
	 */
	protected String locale = LOCALE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSite() <em>Site</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSite()
	 * @generated
	 * @ordered
	 */
	protected Site site;

	/**
	 * The cached value of the '{@link #getCatalogue() <em>Catalogue</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCatalogue()
	 * @generated
	 * @ordered
	 */
	protected Catalogue catalogue;

	/**
	 * The cached value of the '{@link #getBondRule() <em>Bond Rule</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBondRule()
	 * @generated
	 * @ordered
	 */
	protected BondRule bondRule;

	/**
	 * The cached value of the '{@link #getBuilding() <em>Building</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuilding()
	 * @generated
	 * @ordered
	 */
	protected Building building;

	/**
	 * The cached value of the '{@link #getEstimate() <em>Estimate</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEstimate()
	 * @generated
	 * @ordered
	 */
	protected Estimate estimate;

	/**
	 * The cached value of the '{@link #getProgramme() <em>Programme</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgramme()
	 * @generated
	 * @ordered
	 */
	protected Programme programme;

	/**
	 * The cached value of the '{@link #getSupply() <em>Supply</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupply()
	 * @generated
	 * @ordered
	 */
	protected Supply supply;

	/**
	 * The cached value of the '{@link #getRegister() <em>Register</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRegister()
	 * @generated
	 * @ordered
	 */
	protected Register register;

	/**
	 * The cached value of the '{@link #getProposals() <em>Proposals</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProposals()
	 * @generated
	 * @ordered
	 */
	protected EList<Proposal> proposals;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProjectImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProjectPackage.Literals.PROJECT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurrency() {
		return currency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrency(String newCurrency) {
		String oldCurrency = currency;
		currency = newCurrency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__CURRENCY, oldCurrency, currency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DisplayUnit getDisplayUnit() {
		return displayUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDisplayUnit(DisplayUnit newDisplayUnit) {
		DisplayUnit oldDisplayUnit = displayUnit;
		displayUnit = newDisplayUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__DISPLAY_UNIT, oldDisplayUnit, displayUnit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getInchDenominator() {
		return inchDenominator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInchDenominator(int newInchDenominator) {
		int oldInchDenominator = inchDenominator;
		inchDenominator = newInchDenominator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__INCH_DENOMINATOR, oldInchDenominator, inchDenominator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLocale() {
		return locale;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocale(String newLocale) {
		String oldLocale = locale;
		locale = newLocale;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__LOCALE, oldLocale, locale));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site getSite() {
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSite(Site newSite, NotificationChain msgs) {
		Site oldSite = site;
		site = newSite;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__SITE, oldSite, newSite);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSite(Site newSite) {
		if (newSite != site) {
			NotificationChain msgs = null;
			if (site != null)
				msgs = ((InternalEObject)site).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__SITE, null, msgs);
			if (newSite != null)
				msgs = ((InternalEObject)newSite).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__SITE, null, msgs);
			msgs = basicSetSite(newSite, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__SITE, newSite, newSite));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Catalogue getCatalogue() {
		return catalogue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCatalogue(Catalogue newCatalogue, NotificationChain msgs) {
		Catalogue oldCatalogue = catalogue;
		catalogue = newCatalogue;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__CATALOGUE, oldCatalogue, newCatalogue);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCatalogue(Catalogue newCatalogue) {
		if (newCatalogue != catalogue) {
			NotificationChain msgs = null;
			if (catalogue != null)
				msgs = ((InternalEObject)catalogue).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__CATALOGUE, null, msgs);
			if (newCatalogue != null)
				msgs = ((InternalEObject)newCatalogue).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__CATALOGUE, null, msgs);
			msgs = basicSetCatalogue(newCatalogue, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__CATALOGUE, newCatalogue, newCatalogue));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BondRule getBondRule() {
		return bondRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBondRule(BondRule newBondRule, NotificationChain msgs) {
		BondRule oldBondRule = bondRule;
		bondRule = newBondRule;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__BOND_RULE, oldBondRule, newBondRule);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBondRule(BondRule newBondRule) {
		if (newBondRule != bondRule) {
			NotificationChain msgs = null;
			if (bondRule != null)
				msgs = ((InternalEObject)bondRule).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__BOND_RULE, null, msgs);
			if (newBondRule != null)
				msgs = ((InternalEObject)newBondRule).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__BOND_RULE, null, msgs);
			msgs = basicSetBondRule(newBondRule, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__BOND_RULE, newBondRule, newBondRule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Building getBuilding() {
		return building;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBuilding(Building newBuilding, NotificationChain msgs) {
		Building oldBuilding = building;
		building = newBuilding;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__BUILDING, oldBuilding, newBuilding);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuilding(Building newBuilding) {
		if (newBuilding != building) {
			NotificationChain msgs = null;
			if (building != null)
				msgs = ((InternalEObject)building).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__BUILDING, null, msgs);
			if (newBuilding != null)
				msgs = ((InternalEObject)newBuilding).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__BUILDING, null, msgs);
			msgs = basicSetBuilding(newBuilding, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__BUILDING, newBuilding, newBuilding));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Estimate getEstimate() {
		return estimate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetEstimate(Estimate newEstimate, NotificationChain msgs) {
		Estimate oldEstimate = estimate;
		estimate = newEstimate;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__ESTIMATE, oldEstimate, newEstimate);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEstimate(Estimate newEstimate) {
		if (newEstimate != estimate) {
			NotificationChain msgs = null;
			if (estimate != null)
				msgs = ((InternalEObject)estimate).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__ESTIMATE, null, msgs);
			if (newEstimate != null)
				msgs = ((InternalEObject)newEstimate).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__ESTIMATE, null, msgs);
			msgs = basicSetEstimate(newEstimate, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__ESTIMATE, newEstimate, newEstimate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Programme getProgramme() {
		return programme;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetProgramme(Programme newProgramme, NotificationChain msgs) {
		Programme oldProgramme = programme;
		programme = newProgramme;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__PROGRAMME, oldProgramme, newProgramme);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProgramme(Programme newProgramme) {
		if (newProgramme != programme) {
			NotificationChain msgs = null;
			if (programme != null)
				msgs = ((InternalEObject)programme).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__PROGRAMME, null, msgs);
			if (newProgramme != null)
				msgs = ((InternalEObject)newProgramme).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__PROGRAMME, null, msgs);
			msgs = basicSetProgramme(newProgramme, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__PROGRAMME, newProgramme, newProgramme));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supply getSupply() {
		return supply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSupply(Supply newSupply, NotificationChain msgs) {
		Supply oldSupply = supply;
		supply = newSupply;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__SUPPLY, oldSupply, newSupply);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupply(Supply newSupply) {
		if (newSupply != supply) {
			NotificationChain msgs = null;
			if (supply != null)
				msgs = ((InternalEObject)supply).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__SUPPLY, null, msgs);
			if (newSupply != null)
				msgs = ((InternalEObject)newSupply).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__SUPPLY, null, msgs);
			msgs = basicSetSupply(newSupply, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__SUPPLY, newSupply, newSupply));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Register getRegister() {
		return register;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRegister(Register newRegister, NotificationChain msgs) {
		Register oldRegister = register;
		register = newRegister;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__REGISTER, oldRegister, newRegister);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRegister(Register newRegister) {
		if (newRegister != register) {
			NotificationChain msgs = null;
			if (register != null)
				msgs = ((InternalEObject)register).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__REGISTER, null, msgs);
			if (newRegister != null)
				msgs = ((InternalEObject)newRegister).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ProjectPackage.PROJECT__REGISTER, null, msgs);
			msgs = basicSetRegister(newRegister, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.PROJECT__REGISTER, newRegister, newRegister));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Proposal> getProposals() {
		if (proposals == null) {
			proposals = new EObjectContainmentEList<Proposal>(Proposal.class, this, ProjectPackage.PROJECT__PROPOSALS);
		}
		return proposals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ProjectPackage.PROJECT__SITE:
				return basicSetSite(null, msgs);
			case ProjectPackage.PROJECT__CATALOGUE:
				return basicSetCatalogue(null, msgs);
			case ProjectPackage.PROJECT__BOND_RULE:
				return basicSetBondRule(null, msgs);
			case ProjectPackage.PROJECT__BUILDING:
				return basicSetBuilding(null, msgs);
			case ProjectPackage.PROJECT__ESTIMATE:
				return basicSetEstimate(null, msgs);
			case ProjectPackage.PROJECT__PROGRAMME:
				return basicSetProgramme(null, msgs);
			case ProjectPackage.PROJECT__SUPPLY:
				return basicSetSupply(null, msgs);
			case ProjectPackage.PROJECT__REGISTER:
				return basicSetRegister(null, msgs);
			case ProjectPackage.PROJECT__PROPOSALS:
				return ((InternalEList<?>)getProposals()).basicRemove(otherEnd, msgs);
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
			case ProjectPackage.PROJECT__NAME:
				return getName();
			case ProjectPackage.PROJECT__CURRENCY:
				return getCurrency();
			case ProjectPackage.PROJECT__DISPLAY_UNIT:
				return getDisplayUnit();
			case ProjectPackage.PROJECT__INCH_DENOMINATOR:
				return getInchDenominator();
			case ProjectPackage.PROJECT__LOCALE:
				return getLocale();
			case ProjectPackage.PROJECT__SITE:
				return getSite();
			case ProjectPackage.PROJECT__CATALOGUE:
				return getCatalogue();
			case ProjectPackage.PROJECT__BOND_RULE:
				return getBondRule();
			case ProjectPackage.PROJECT__BUILDING:
				return getBuilding();
			case ProjectPackage.PROJECT__ESTIMATE:
				return getEstimate();
			case ProjectPackage.PROJECT__PROGRAMME:
				return getProgramme();
			case ProjectPackage.PROJECT__SUPPLY:
				return getSupply();
			case ProjectPackage.PROJECT__REGISTER:
				return getRegister();
			case ProjectPackage.PROJECT__PROPOSALS:
				return getProposals();
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
			case ProjectPackage.PROJECT__NAME:
				setName((String)newValue);
				return;
			case ProjectPackage.PROJECT__CURRENCY:
				setCurrency((String)newValue);
				return;
			case ProjectPackage.PROJECT__DISPLAY_UNIT:
				setDisplayUnit((DisplayUnit)newValue);
				return;
			case ProjectPackage.PROJECT__INCH_DENOMINATOR:
				setInchDenominator((Integer)newValue);
				return;
			case ProjectPackage.PROJECT__LOCALE:
				setLocale((String)newValue);
				return;
			case ProjectPackage.PROJECT__SITE:
				setSite((Site)newValue);
				return;
			case ProjectPackage.PROJECT__CATALOGUE:
				setCatalogue((Catalogue)newValue);
				return;
			case ProjectPackage.PROJECT__BOND_RULE:
				setBondRule((BondRule)newValue);
				return;
			case ProjectPackage.PROJECT__BUILDING:
				setBuilding((Building)newValue);
				return;
			case ProjectPackage.PROJECT__ESTIMATE:
				setEstimate((Estimate)newValue);
				return;
			case ProjectPackage.PROJECT__PROGRAMME:
				setProgramme((Programme)newValue);
				return;
			case ProjectPackage.PROJECT__SUPPLY:
				setSupply((Supply)newValue);
				return;
			case ProjectPackage.PROJECT__REGISTER:
				setRegister((Register)newValue);
				return;
			case ProjectPackage.PROJECT__PROPOSALS:
				getProposals().clear();
				getProposals().addAll((Collection<? extends Proposal>)newValue);
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
			case ProjectPackage.PROJECT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ProjectPackage.PROJECT__CURRENCY:
				setCurrency(CURRENCY_EDEFAULT);
				return;
			case ProjectPackage.PROJECT__DISPLAY_UNIT:
				setDisplayUnit(DISPLAY_UNIT_EDEFAULT);
				return;
			case ProjectPackage.PROJECT__INCH_DENOMINATOR:
				setInchDenominator(INCH_DENOMINATOR_EDEFAULT);
				return;
			case ProjectPackage.PROJECT__LOCALE:
				setLocale(LOCALE_EDEFAULT);
				return;
			case ProjectPackage.PROJECT__SITE:
				setSite((Site)null);
				return;
			case ProjectPackage.PROJECT__CATALOGUE:
				setCatalogue((Catalogue)null);
				return;
			case ProjectPackage.PROJECT__BOND_RULE:
				setBondRule((BondRule)null);
				return;
			case ProjectPackage.PROJECT__BUILDING:
				setBuilding((Building)null);
				return;
			case ProjectPackage.PROJECT__ESTIMATE:
				setEstimate((Estimate)null);
				return;
			case ProjectPackage.PROJECT__PROGRAMME:
				setProgramme((Programme)null);
				return;
			case ProjectPackage.PROJECT__SUPPLY:
				setSupply((Supply)null);
				return;
			case ProjectPackage.PROJECT__REGISTER:
				setRegister((Register)null);
				return;
			case ProjectPackage.PROJECT__PROPOSALS:
				getProposals().clear();
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
			case ProjectPackage.PROJECT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ProjectPackage.PROJECT__CURRENCY:
				return CURRENCY_EDEFAULT == null ? currency != null : !CURRENCY_EDEFAULT.equals(currency);
			case ProjectPackage.PROJECT__DISPLAY_UNIT:
				return DISPLAY_UNIT_EDEFAULT == null ? displayUnit != null : !DISPLAY_UNIT_EDEFAULT.equals(displayUnit);
			case ProjectPackage.PROJECT__INCH_DENOMINATOR:
				return inchDenominator != INCH_DENOMINATOR_EDEFAULT;
			case ProjectPackage.PROJECT__LOCALE:
				return LOCALE_EDEFAULT == null ? locale != null : !LOCALE_EDEFAULT.equals(locale);
			case ProjectPackage.PROJECT__SITE:
				return site != null;
			case ProjectPackage.PROJECT__CATALOGUE:
				return catalogue != null;
			case ProjectPackage.PROJECT__BOND_RULE:
				return bondRule != null;
			case ProjectPackage.PROJECT__BUILDING:
				return building != null;
			case ProjectPackage.PROJECT__ESTIMATE:
				return estimate != null;
			case ProjectPackage.PROJECT__PROGRAMME:
				return programme != null;
			case ProjectPackage.PROJECT__SUPPLY:
				return supply != null;
			case ProjectPackage.PROJECT__REGISTER:
				return register != null;
			case ProjectPackage.PROJECT__PROPOSALS:
				return proposals != null && !proposals.isEmpty();
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
		result.append(" (name: ");
		result.append(name);
		result.append(", currency: ");
		result.append(currency);
		result.append(", displayUnit: ");
		result.append(displayUnit);
		result.append(", inchDenominator: ");
		result.append(inchDenominator);
		result.append(", locale: ");
		result.append(locale);
		result.append(')');
		return result.toString();
	}

} //ProjectImpl
