/**
 */
package org.coursewright.model.project;

import org.coursewright.measure.DisplayUnit;

import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Building;

import org.coursewright.model.catalogue.Catalogue;

import org.coursewright.model.estimate.Estimate;

import org.coursewright.model.programme.Programme;

import org.coursewright.model.proposal.Proposal;

import org.coursewright.model.register.Register;

import org.coursewright.model.supply.Supply;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One building and all that was decided about it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.project.Project#getName <em>Name</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getCurrency <em>Currency</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getDisplayUnit <em>Display Unit</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getInchDenominator <em>Inch Denominator</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getLocale <em>Locale</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getSite <em>Site</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getCatalogue <em>Catalogue</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getBondRule <em>Bond Rule</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getBuilding <em>Building</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getEstimate <em>Estimate</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getProgramme <em>Programme</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getSupply <em>Supply</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getRegister <em>Register</em>}</li>
 *   <li>{@link org.coursewright.model.project.Project#getProposals <em>Proposals</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.project.ProjectPackage#getProject()
 * @model
 * @generated
 */
public interface Project extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the project.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ISO 4217 code that prices are shown in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Display Unit</b></em>' attribute.
	 * The default value is <code>"in"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How lengths are shown and what a bare number means.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Display Unit</em>' attribute.
	 * @see #setDisplayUnit(DisplayUnit)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_DisplayUnit()
	 * @model default="in" dataType="org.coursewright.model.types.DisplayUnit"
	 * @generated
	 */
	DisplayUnit getDisplayUnit();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getDisplayUnit <em>Display Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Display Unit</em>' attribute.
	 * @see #getDisplayUnit()
	 * @generated
	 */
	void setDisplayUnit(DisplayUnit value);

	/**
	 * Returns the value of the '<em><b>Inch Denominator</b></em>' attribute.
	 * The default value is <code>"16"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Finest fraction of an inch shown: 8 or 16.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inch Denominator</em>' attribute.
	 * @see #setInchDenominator(int)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_InchDenominator()
	 * @model default="16"
	 * @generated
	 */
	int getInchDenominator();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getInchDenominator <em>Inch Denominator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inch Denominator</em>' attribute.
	 * @see #getInchDenominator()
	 * @generated
	 */
	void setInchDenominator(int value);

	/**
	 * Returns the value of the '<em><b>Locale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * BCP 47 tag for dates and numbers, empty for the machine's own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Locale</em>' attribute.
	 * @see #setLocale(String)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Locale()
	 * @model
	 * @generated
	 */
	String getLocale();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getLocale <em>Locale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Locale</em>' attribute.
	 * @see #getLocale()
	 * @generated
	 */
	void setLocale(String value);

	/**
	 * Returns the value of the '<em><b>Site</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is built.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Site</em>' containment reference.
	 * @see #setSite(Site)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Site()
	 * @model containment="true"
	 * @generated
	 */
	Site getSite();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getSite <em>Site</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site</em>' containment reference.
	 * @see #getSite()
	 * @generated
	 */
	void setSite(Site value);

	/**
	 * Returns the value of the '<em><b>Catalogue</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is built of and with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Catalogue</em>' containment reference.
	 * @see #setCatalogue(Catalogue)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Catalogue()
	 * @model containment="true"
	 * @generated
	 */
	Catalogue getCatalogue();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getCatalogue <em>Catalogue</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Catalogue</em>' containment reference.
	 * @see #getCatalogue()
	 * @generated
	 */
	void setCatalogue(Catalogue value);

	/**
	 * Returns the value of the '<em><b>Bond Rule</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How walls are laid unless a wall says otherwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bond Rule</em>' containment reference.
	 * @see #setBondRule(BondRule)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_BondRule()
	 * @model containment="true"
	 * @generated
	 */
	BondRule getBondRule();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getBondRule <em>Bond Rule</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bond Rule</em>' containment reference.
	 * @see #getBondRule()
	 * @generated
	 */
	void setBondRule(BondRule value);

	/**
	 * Returns the value of the '<em><b>Building</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Storeys, walls and openings.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Building</em>' containment reference.
	 * @see #setBuilding(Building)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Building()
	 * @model containment="true"
	 * @generated
	 */
	Building getBuilding();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getBuilding <em>Building</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Building</em>' containment reference.
	 * @see #getBuilding()
	 * @generated
	 */
	void setBuilding(Building value);

	/**
	 * Returns the value of the '<em><b>Estimate</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the take-off and the price rest on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Estimate</em>' containment reference.
	 * @see #setEstimate(Estimate)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Estimate()
	 * @model containment="true"
	 * @generated
	 */
	Estimate getEstimate();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getEstimate <em>Estimate</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Estimate</em>' containment reference.
	 * @see #getEstimate()
	 * @generated
	 */
	void setEstimate(Estimate value);

	/**
	 * Returns the value of the '<em><b>Programme</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Work in time.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Programme</em>' containment reference.
	 * @see #setProgramme(Programme)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Programme()
	 * @model containment="true"
	 * @generated
	 */
	Programme getProgramme();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getProgramme <em>Programme</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Programme</em>' containment reference.
	 * @see #getProgramme()
	 * @generated
	 */
	void setProgramme(Programme value);

	/**
	 * Returns the value of the '<em><b>Supply</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is bought, from whom, and what is in stock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supply</em>' containment reference.
	 * @see #setSupply(Supply)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Supply()
	 * @model containment="true"
	 * @generated
	 */
	Supply getSupply();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getSupply <em>Supply</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supply</em>' containment reference.
	 * @see #getSupply()
	 * @generated
	 */
	void setSupply(Supply value);

	/**
	 * Returns the value of the '<em><b>Register</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tests due and results.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Register</em>' containment reference.
	 * @see #setRegister(Register)
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Register()
	 * @model containment="true"
	 * @generated
	 */
	Register getRegister();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Project#getRegister <em>Register</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Register</em>' containment reference.
	 * @see #getRegister()
	 * @generated
	 */
	void setRegister(Register value);

	/**
	 * Returns the value of the '<em><b>Proposals</b></em>' containment reference list.
	 * The list contents are of type {@link org.coursewright.model.proposal.Proposal}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Changes of dimension offered to the architect.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Proposals</em>' containment reference list.
	 * @see org.coursewright.model.project.ProjectPackage#getProject_Proposals()
	 * @model containment="true"
	 * @generated
	 */
	EList<Proposal> getProposals();

} // Project
