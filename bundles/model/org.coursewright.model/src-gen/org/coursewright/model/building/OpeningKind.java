/**
 */
package org.coursewright.model.building;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Opening Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What an opening is for.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.building.BuildingPackage#getOpeningKind()
 * @model
 * @generated
 */
public enum OpeningKind implements Enumerator {
	/**
	 * The '<em><b>DOOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DOOR_VALUE
	 * @generated
	 * @ordered
	 */
	DOOR(0, "DOOR", "door"),

	/**
	 * The '<em><b>WINDOW</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WINDOW_VALUE
	 * @generated
	 * @ordered
	 */
	WINDOW(1, "WINDOW", "window"),

	/**
	 * The '<em><b>PASSAGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PASSAGE_VALUE
	 * @generated
	 * @ordered
	 */
	PASSAGE(2, "PASSAGE", "passage"),

	/**
	 * The '<em><b>VENT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VENT_VALUE
	 * @generated
	 * @ordered
	 */
	VENT(3, "VENT", "vent"),

	/**
	 * The '<em><b>NICHE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NICHE_VALUE
	 * @generated
	 * @ordered
	 */
	NICHE(4, "NICHE", "niche"),

	/**
	 * The '<em><b>OTHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(5, "OTHER", "other");

	/**
	 * The '<em><b>DOOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DOOR
	 * @model literal="door"
	 * @generated
	 * @ordered
	 */
	public static final int DOOR_VALUE = 0;

	/**
	 * The '<em><b>WINDOW</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WINDOW
	 * @model literal="window"
	 * @generated
	 * @ordered
	 */
	public static final int WINDOW_VALUE = 1;

	/**
	 * The '<em><b>PASSAGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PASSAGE
	 * @model literal="passage"
	 * @generated
	 * @ordered
	 */
	public static final int PASSAGE_VALUE = 2;

	/**
	 * The '<em><b>VENT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VENT
	 * @model literal="vent"
	 * @generated
	 * @ordered
	 */
	public static final int VENT_VALUE = 3;

	/**
	 * The '<em><b>NICHE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NICHE
	 * @model literal="niche"
	 * @generated
	 * @ordered
	 */
	public static final int NICHE_VALUE = 4;

	/**
	 * The '<em><b>OTHER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER
	 * @model literal="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 5;

	/**
	 * An array of all the '<em><b>Opening Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final OpeningKind[] VALUES_ARRAY =
		new OpeningKind[] {
			DOOR,
			WINDOW,
			PASSAGE,
			VENT,
			NICHE,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Opening Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<OpeningKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			OpeningKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			OpeningKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind get(int value) {
		switch (value) {
			case DOOR_VALUE: return DOOR;
			case WINDOW_VALUE: return WINDOW;
			case PASSAGE_VALUE: return PASSAGE;
			case VENT_VALUE: return VENT;
			case NICHE_VALUE: return NICHE;
			case OTHER_VALUE: return OTHER;
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
	private OpeningKind(int value, String name, String literal) {
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
	
} //OpeningKind
