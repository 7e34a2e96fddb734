/**
 */
package org.coursewright.model.programme;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Lag Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a lag counts.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.programme.ProgrammePackage#getLagKind()
 * @model
 * @generated
 */
public enum LagKind implements Enumerator {
	/**
	 * The '<em><b>WORKING TIME</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING_TIME_VALUE
	 * @generated
	 * @ordered
	 */
	WORKING_TIME(0, "WORKING_TIME", "working-time"),

	/**
	 * The '<em><b>ELAPSED TIME</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELAPSED_TIME_VALUE
	 * @generated
	 * @ordered
	 */
	ELAPSED_TIME(1, "ELAPSED_TIME", "elapsed-time"),

	/**
	 * The '<em><b>CURING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CURING_VALUE
	 * @generated
	 * @ordered
	 */
	CURING(2, "CURING", "curing");

	/**
	 * The '<em><b>WORKING TIME</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WORKING_TIME
	 * @model literal="working-time"
	 * @generated
	 * @ordered
	 */
	public static final int WORKING_TIME_VALUE = 0;

	/**
	 * The '<em><b>ELAPSED TIME</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELAPSED_TIME
	 * @model literal="elapsed-time"
	 * @generated
	 * @ordered
	 */
	public static final int ELAPSED_TIME_VALUE = 1;

	/**
	 * The '<em><b>CURING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CURING
	 * @model literal="curing"
	 * @generated
	 * @ordered
	 */
	public static final int CURING_VALUE = 2;

	/**
	 * An array of all the '<em><b>Lag Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final LagKind[] VALUES_ARRAY =
		new LagKind[] {
			WORKING_TIME,
			ELAPSED_TIME,
			CURING,
		};

	/**
	 * A public read-only list of all the '<em><b>Lag Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<LagKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Lag Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LagKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			LagKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lag Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LagKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			LagKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lag Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LagKind get(int value) {
		switch (value) {
			case WORKING_TIME_VALUE: return WORKING_TIME;
			case ELAPSED_TIME_VALUE: return ELAPSED_TIME;
			case CURING_VALUE: return CURING;
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
	private LagKind(int value, String name, String literal) {
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
	
} //LagKind
