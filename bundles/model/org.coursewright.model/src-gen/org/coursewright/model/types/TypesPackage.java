/**
 */
package org.coursewright.model.types;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;

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
 * Values that are stored as text: lengths, money, quantities, dates.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.types.TypesFactory
 * @model kind="package"
 * @generated
 */
public interface TypesPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "types";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/types";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "types";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	TypesPackage eINSTANCE = org.coursewright.model.types.impl.TypesPackageImpl.init();

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.measure.Length
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 0;

	/**
	 * The meta object id for the '<em>Money</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.measure.Money
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getMoney()
	 * @generated
	 */
	int MONEY = 1;

	/**
	 * The meta object id for the '<em>Quantity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.measure.Quantity
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getQuantity()
	 * @generated
	 */
	int QUANTITY = 2;

	/**
	 * The meta object id for the '<em>Display Unit</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.measure.DisplayUnit
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getDisplayUnit()
	 * @generated
	 */
	int DISPLAY_UNIT = 3;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getDate()
	 * @generated
	 */
	int DATE = 4;

	/**
	 * The meta object id for the '<em>Time</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalTime
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getTime()
	 * @generated
	 */
	int TIME = 5;

	/**
	 * The meta object id for the '<em>Moment</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.Instant
	 * @see org.coursewright.model.types.impl.TypesPackageImpl#getMoment()
	 * @generated
	 */
	int MOMENT = 6;


	/**
	 * Returns the meta object for data type '{@link org.coursewright.measure.Length <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Exact length, stored as decimal millimetres with the unit.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see org.coursewright.measure.Length
	 * @model instanceClass="org.coursewright.measure.Length"
	 * @generated
	 */
	EDataType getLength();

	/**
	 * Returns the meta object for data type '{@link org.coursewright.measure.Money <em>Money</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Amount with its ISO 4217 code.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Money</em>'.
	 * @see org.coursewright.measure.Money
	 * @model instanceClass="org.coursewright.measure.Money"
	 * @generated
	 */
	EDataType getMoney();

	/**
	 * Returns the meta object for data type '{@link org.coursewright.measure.Quantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Number with its UN/ECE Recommendation 20 code.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Quantity</em>'.
	 * @see org.coursewright.measure.Quantity
	 * @model instanceClass="org.coursewright.measure.Quantity"
	 * @generated
	 */
	EDataType getQuantity();

	/**
	 * Returns the meta object for data type '{@link org.coursewright.measure.DisplayUnit <em>Display Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * How lengths are shown, stored as the unit symbol.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Display Unit</em>'.
	 * @see org.coursewright.measure.DisplayUnit
	 * @model instanceClass="org.coursewright.measure.DisplayUnit"
	 * @generated
	 */
	EDataType getDisplayUnit();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Calendar date, ISO 8601.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 * @generated
	 */
	EDataType getDate();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Time of day, ISO 8601.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Time</em>'.
	 * @see java.time.LocalTime
	 * @model instanceClass="java.time.LocalTime"
	 * @generated
	 */
	EDataType getTime();

	/**
	 * Returns the meta object for data type '{@link java.time.Instant <em>Moment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * Point in time, ISO 8601 in UTC.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Moment</em>'.
	 * @see java.time.Instant
	 * @model instanceClass="java.time.Instant"
	 * @generated
	 */
	EDataType getMoment();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	TypesFactory getTypesFactory();

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
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.measure.Length
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

		/**
		 * The meta object literal for the '<em>Money</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.measure.Money
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getMoney()
		 * @generated
		 */
		EDataType MONEY = eINSTANCE.getMoney();

		/**
		 * The meta object literal for the '<em>Quantity</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.measure.Quantity
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getQuantity()
		 * @generated
		 */
		EDataType QUANTITY = eINSTANCE.getQuantity();

		/**
		 * The meta object literal for the '<em>Display Unit</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.measure.DisplayUnit
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getDisplayUnit()
		 * @generated
		 */
		EDataType DISPLAY_UNIT = eINSTANCE.getDisplayUnit();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getDate()
		 * @generated
		 */
		EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Time</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalTime
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getTime()
		 * @generated
		 */
		EDataType TIME = eINSTANCE.getTime();

		/**
		 * The meta object literal for the '<em>Moment</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.Instant
		 * @see org.coursewright.model.types.impl.TypesPackageImpl#getMoment()
		 * @generated
		 */
		EDataType MOMENT = eINSTANCE.getMoment();

	}

} //TypesPackage
