/**
 */
package org.coursewright.model.project;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The project: where it is, and one container for each subject.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.project.ProjectFactory
 * @model kind="package"
 * @generated
 */
public interface ProjectPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "project";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "project";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ProjectPackage eINSTANCE = org.coursewright.model.project.impl.ProjectPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.project.Marked <em>Marked</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.project.Marked
	 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getMarked()
	 * @generated
	 */
	int MARKED = 0;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKED__MARK = 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKED__NOTE = 1;

	/**
	 * The number of structural features of the '<em>Marked</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKED_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Marked</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKED_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.project.impl.ProjectImpl <em>Project</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.project.impl.ProjectImpl
	 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getProject()
	 * @generated
	 */
	int PROJECT = 1;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__NAME = 0;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CURRENCY = 1;

	/**
	 * The feature id for the '<em><b>Display Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__DISPLAY_UNIT = 2;

	/**
	 * The feature id for the '<em><b>Inch Denominator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__INCH_DENOMINATOR = 3;

	/**
	 * The feature id for the '<em><b>Locale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__LOCALE = 4;

	/**
	 * The feature id for the '<em><b>Site</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SITE = 5;

	/**
	 * The feature id for the '<em><b>Catalogue</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__CATALOGUE = 6;

	/**
	 * The feature id for the '<em><b>Bond Rule</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__BOND_RULE = 7;

	/**
	 * The feature id for the '<em><b>Building</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__BUILDING = 8;

	/**
	 * The feature id for the '<em><b>Estimate</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__ESTIMATE = 9;

	/**
	 * The feature id for the '<em><b>Programme</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__PROGRAMME = 10;

	/**
	 * The feature id for the '<em><b>Supply</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__SUPPLY = 11;

	/**
	 * The feature id for the '<em><b>Register</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__REGISTER = 12;

	/**
	 * The feature id for the '<em><b>Proposals</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT__PROPOSALS = 13;

	/**
	 * The number of structural features of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_FEATURE_COUNT = 14;

	/**
	 * The number of operations of the '<em>Project</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROJECT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.project.impl.SiteImpl <em>Site</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.project.impl.SiteImpl
	 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getSite()
	 * @generated
	 */
	int SITE = 2;

	/**
	 * The feature id for the '<em><b>Latitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__LATITUDE = 0;

	/**
	 * The feature id for the '<em><b>Longitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__LONGITUDE = 1;

	/**
	 * The feature id for the '<em><b>Elevation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ELEVATION = 2;

	/**
	 * The feature id for the '<em><b>Time Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TIME_ZONE = 3;

	/**
	 * The feature id for the '<em><b>Weather Record</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__WEATHER_RECORD = 4;

	/**
	 * The feature id for the '<em><b>Ground</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__GROUND = 5;

	/**
	 * The feature id for the '<em><b>Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__EXPOSURE = 6;

	/**
	 * The number of structural features of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_OPERATION_COUNT = 0;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.project.Marked <em>Marked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Marked</em>'.
	 * @see org.coursewright.model.project.Marked
	 * @generated
	 */
	EClass getMarked();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Marked#getMark <em>Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mark</em>'.
	 * @see org.coursewright.model.project.Marked#getMark()
	 * @see #getMarked()
	 * @generated
	 */
	EAttribute getMarked_Mark();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Marked#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see org.coursewright.model.project.Marked#getNote()
	 * @see #getMarked()
	 * @generated
	 */
	EAttribute getMarked_Note();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.project.Project <em>Project</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Project</em>'.
	 * @see org.coursewright.model.project.Project
	 * @generated
	 */
	EClass getProject();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Project#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.coursewright.model.project.Project#getName()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Project#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see org.coursewright.model.project.Project#getCurrency()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Currency();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Project#getDisplayUnit <em>Display Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Display Unit</em>'.
	 * @see org.coursewright.model.project.Project#getDisplayUnit()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_DisplayUnit();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Project#getInchDenominator <em>Inch Denominator</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inch Denominator</em>'.
	 * @see org.coursewright.model.project.Project#getInchDenominator()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_InchDenominator();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Project#getLocale <em>Locale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locale</em>'.
	 * @see org.coursewright.model.project.Project#getLocale()
	 * @see #getProject()
	 * @generated
	 */
	EAttribute getProject_Locale();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Site</em>'.
	 * @see org.coursewright.model.project.Project#getSite()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Site();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getCatalogue <em>Catalogue</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Catalogue</em>'.
	 * @see org.coursewright.model.project.Project#getCatalogue()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Catalogue();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getBondRule <em>Bond Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Bond Rule</em>'.
	 * @see org.coursewright.model.project.Project#getBondRule()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_BondRule();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getBuilding <em>Building</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Building</em>'.
	 * @see org.coursewright.model.project.Project#getBuilding()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Building();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getEstimate <em>Estimate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Estimate</em>'.
	 * @see org.coursewright.model.project.Project#getEstimate()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Estimate();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getProgramme <em>Programme</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Programme</em>'.
	 * @see org.coursewright.model.project.Project#getProgramme()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Programme();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getSupply <em>Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Supply</em>'.
	 * @see org.coursewright.model.project.Project#getSupply()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Supply();

	/**
	 * Returns the meta object for the containment reference '{@link org.coursewright.model.project.Project#getRegister <em>Register</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Register</em>'.
	 * @see org.coursewright.model.project.Project#getRegister()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Register();

	/**
	 * Returns the meta object for the containment reference list '{@link org.coursewright.model.project.Project#getProposals <em>Proposals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Proposals</em>'.
	 * @see org.coursewright.model.project.Project#getProposals()
	 * @see #getProject()
	 * @generated
	 */
	EReference getProject_Proposals();

	/**
	 * Returns the meta object for class '{@link org.coursewright.model.project.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Site</em>'.
	 * @see org.coursewright.model.project.Site
	 * @generated
	 */
	EClass getSite();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getLatitude <em>Latitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latitude</em>'.
	 * @see org.coursewright.model.project.Site#getLatitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Latitude();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getLongitude <em>Longitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longitude</em>'.
	 * @see org.coursewright.model.project.Site#getLongitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Longitude();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getElevation <em>Elevation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elevation</em>'.
	 * @see org.coursewright.model.project.Site#getElevation()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Elevation();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getTimeZone <em>Time Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time Zone</em>'.
	 * @see org.coursewright.model.project.Site#getTimeZone()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_TimeZone();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getWeatherRecord <em>Weather Record</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weather Record</em>'.
	 * @see org.coursewright.model.project.Site#getWeatherRecord()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_WeatherRecord();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getGround <em>Ground</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ground</em>'.
	 * @see org.coursewright.model.project.Site#getGround()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Ground();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.project.Site#getExposure <em>Exposure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exposure</em>'.
	 * @see org.coursewright.model.project.Site#getExposure()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Exposure();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ProjectFactory getProjectFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.coursewright.model.project.Marked <em>Marked</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.project.Marked
		 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getMarked()
		 * @generated
		 */
		EClass MARKED = eINSTANCE.getMarked();

		/**
		 * The meta object literal for the '<em><b>Mark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKED__MARK = eINSTANCE.getMarked_Mark();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKED__NOTE = eINSTANCE.getMarked_Note();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.project.impl.ProjectImpl <em>Project</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.project.impl.ProjectImpl
		 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getProject()
		 * @generated
		 */
		EClass PROJECT = eINSTANCE.getProject();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__NAME = eINSTANCE.getProject_Name();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__CURRENCY = eINSTANCE.getProject_Currency();

		/**
		 * The meta object literal for the '<em><b>Display Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__DISPLAY_UNIT = eINSTANCE.getProject_DisplayUnit();

		/**
		 * The meta object literal for the '<em><b>Inch Denominator</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__INCH_DENOMINATOR = eINSTANCE.getProject_InchDenominator();

		/**
		 * The meta object literal for the '<em><b>Locale</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROJECT__LOCALE = eINSTANCE.getProject_Locale();

		/**
		 * The meta object literal for the '<em><b>Site</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SITE = eINSTANCE.getProject_Site();

		/**
		 * The meta object literal for the '<em><b>Catalogue</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__CATALOGUE = eINSTANCE.getProject_Catalogue();

		/**
		 * The meta object literal for the '<em><b>Bond Rule</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__BOND_RULE = eINSTANCE.getProject_BondRule();

		/**
		 * The meta object literal for the '<em><b>Building</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__BUILDING = eINSTANCE.getProject_Building();

		/**
		 * The meta object literal for the '<em><b>Estimate</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__ESTIMATE = eINSTANCE.getProject_Estimate();

		/**
		 * The meta object literal for the '<em><b>Programme</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__PROGRAMME = eINSTANCE.getProject_Programme();

		/**
		 * The meta object literal for the '<em><b>Supply</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__SUPPLY = eINSTANCE.getProject_Supply();

		/**
		 * The meta object literal for the '<em><b>Register</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__REGISTER = eINSTANCE.getProject_Register();

		/**
		 * The meta object literal for the '<em><b>Proposals</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROJECT__PROPOSALS = eINSTANCE.getProject_Proposals();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.project.impl.SiteImpl <em>Site</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.project.impl.SiteImpl
		 * @see org.coursewright.model.project.impl.ProjectPackageImpl#getSite()
		 * @generated
		 */
		EClass SITE = eINSTANCE.getSite();

		/**
		 * The meta object literal for the '<em><b>Latitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__LATITUDE = eINSTANCE.getSite_Latitude();

		/**
		 * The meta object literal for the '<em><b>Longitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__LONGITUDE = eINSTANCE.getSite_Longitude();

		/**
		 * The meta object literal for the '<em><b>Elevation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__ELEVATION = eINSTANCE.getSite_Elevation();

		/**
		 * The meta object literal for the '<em><b>Time Zone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__TIME_ZONE = eINSTANCE.getSite_TimeZone();

		/**
		 * The meta object literal for the '<em><b>Weather Record</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__WEATHER_RECORD = eINSTANCE.getSite_WeatherRecord();

		/**
		 * The meta object literal for the '<em><b>Ground</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__GROUND = eINSTANCE.getSite_Ground();

		/**
		 * The meta object literal for the '<em><b>Exposure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__EXPOSURE = eINSTANCE.getSite_Exposure();

	}

} //ProjectPackage
