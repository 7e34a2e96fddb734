/**
 */
package org.coursewright.model.estimate;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Rate Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What is paid for.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.estimate.EstimatePackage#getRateKind()
 * @model
 * @generated
 */
public enum RateKind implements Enumerator {
	/**
	 * The '<em><b>MATERIAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MATERIAL_VALUE
	 * @generated
	 * @ordered
	 */
	MATERIAL(0, "MATERIAL", "material"),

	/**
	 * The '<em><b>LABOUR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LABOUR_VALUE
	 * @generated
	 * @ordered
	 */
	LABOUR(1, "LABOUR", "labour"),

	/**
	 * The '<em><b>PLANT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLANT_VALUE
	 * @generated
	 * @ordered
	 */
	PLANT(2, "PLANT", "plant"),

	/**
	 * The '<em><b>HAULAGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAULAGE_VALUE
	 * @generated
	 * @ordered
	 */
	HAULAGE(3, "HAULAGE", "haulage");

	/**
	 * The '<em><b>MATERIAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MATERIAL
	 * @model literal="material"
	 * @generated
	 * @ordered
	 */
	public static final int MATERIAL_VALUE = 0;

	/**
	 * The '<em><b>LABOUR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LABOUR
	 * @model literal="labour"
	 * @generated
	 * @ordered
	 */
	public static final int LABOUR_VALUE = 1;

	/**
	 * The '<em><b>PLANT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLANT
	 * @model literal="plant"
	 * @generated
	 * @ordered
	 */
	public static final int PLANT_VALUE = 2;

	/**
	 * The '<em><b>HAULAGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAULAGE
	 * @model literal="haulage"
	 * @generated
	 * @ordered
	 */
	public static final int HAULAGE_VALUE = 3;

	/**
	 * An array of all the '<em><b>Rate Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RateKind[] VALUES_ARRAY =
		new RateKind[] {
			MATERIAL,
			LABOUR,
			PLANT,
			HAULAGE,
		};

	/**
	 * A public read-only list of all the '<em><b>Rate Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RateKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Rate Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RateKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			RateKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Rate Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RateKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			RateKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Rate Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RateKind get(int value) {
		switch (value) {
			case MATERIAL_VALUE: return MATERIAL;
			case LABOUR_VALUE: return LABOUR;
			case PLANT_VALUE: return PLANT;
			case HAULAGE_VALUE: return HAULAGE;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private RateKind(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
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
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //RateKind
