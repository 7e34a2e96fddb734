/**
 */
package org.coursewright.model.estimate;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Work Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What is done.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.estimate.EstimatePackage#getWorkKind()
 * @model
 * @generated
 */
public enum WorkKind implements Enumerator {
	/**
	 * The '<em><b>LAY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAY_VALUE
	 * @generated
	 * @ordered
	 */
	LAY(0, "LAY", "lay"),

	/**
	 * The '<em><b>CUT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CUT_VALUE
	 * @generated
	 * @ordered
	 */
	CUT(1, "CUT", "cut"),

	/**
	 * The '<em><b>PRESS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRESS_VALUE
	 * @generated
	 * @ordered
	 */
	PRESS(2, "PRESS", "press"),

	/**
	 * The '<em><b>MIX</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MIX_VALUE
	 * @generated
	 * @ordered
	 */
	MIX(3, "MIX", "mix"),

	/**
	 * The '<em><b>PLASTER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTER(4, "PLASTER", "plaster"),

	/**
	 * The '<em><b>SEAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEAL_VALUE
	 * @generated
	 * @ordered
	 */
	SEAL(5, "SEAL", "seal"),

	/**
	 * The '<em><b>SET LINTEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_LINTEL_VALUE
	 * @generated
	 * @ordered
	 */
	SET_LINTEL(6, "SET_LINTEL", "set-lintel"),

	/**
	 * The '<em><b>CAST BEAM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CAST_BEAM_VALUE
	 * @generated
	 * @ordered
	 */
	CAST_BEAM(7, "CAST_BEAM", "cast-beam"),

	/**
	 * The '<em><b>SCAFFOLD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCAFFOLD_VALUE
	 * @generated
	 * @ordered
	 */
	SCAFFOLD(8, "SCAFFOLD", "scaffold");

	/**
	 * The '<em><b>LAY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAY
	 * @model literal="lay"
	 * @generated
	 * @ordered
	 */
	public static final int LAY_VALUE = 0;

	/**
	 * The '<em><b>CUT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CUT
	 * @model literal="cut"
	 * @generated
	 * @ordered
	 */
	public static final int CUT_VALUE = 1;

	/**
	 * The '<em><b>PRESS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRESS
	 * @model literal="press"
	 * @generated
	 * @ordered
	 */
	public static final int PRESS_VALUE = 2;

	/**
	 * The '<em><b>MIX</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MIX
	 * @model literal="mix"
	 * @generated
	 * @ordered
	 */
	public static final int MIX_VALUE = 3;

	/**
	 * The '<em><b>PLASTER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER
	 * @model literal="plaster"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTER_VALUE = 4;

	/**
	 * The '<em><b>SEAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEAL
	 * @model literal="seal"
	 * @generated
	 * @ordered
	 */
	public static final int SEAL_VALUE = 5;

	/**
	 * The '<em><b>SET LINTEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SET_LINTEL
	 * @model literal="set-lintel"
	 * @generated
	 * @ordered
	 */
	public static final int SET_LINTEL_VALUE = 6;

	/**
	 * The '<em><b>CAST BEAM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CAST_BEAM
	 * @model literal="cast-beam"
	 * @generated
	 * @ordered
	 */
	public static final int CAST_BEAM_VALUE = 7;

	/**
	 * The '<em><b>SCAFFOLD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCAFFOLD
	 * @model literal="scaffold"
	 * @generated
	 * @ordered
	 */
	public static final int SCAFFOLD_VALUE = 8;

	/**
	 * An array of all the '<em><b>Work Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final WorkKind[] VALUES_ARRAY =
		new WorkKind[] {
			LAY,
			CUT,
			PRESS,
			MIX,
			PLASTER,
			SEAL,
			SET_LINTEL,
			CAST_BEAM,
			SCAFFOLD,
		};

	/**
	 * A public read-only list of all the '<em><b>Work Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<WorkKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Work Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WorkKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Work Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WorkKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Work Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkKind get(int value) {
		switch (value) {
			case LAY_VALUE: return LAY;
			case CUT_VALUE: return CUT;
			case PRESS_VALUE: return PRESS;
			case MIX_VALUE: return MIX;
			case PLASTER_VALUE: return PLASTER;
			case SEAL_VALUE: return SEAL;
			case SET_LINTEL_VALUE: return SET_LINTEL;
			case CAST_BEAM_VALUE: return CAST_BEAM;
			case SCAFFOLD_VALUE: return SCAFFOLD;
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
	private WorkKind(int value, String name, String literal) {
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
	
} //WorkKind
