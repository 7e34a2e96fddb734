/**
 * From the project's walls to the bond engine and back.
 *
 * <p>Start with {@link org.coursewright.core.bond.BuildingLayout}. {@link org.coursewright.core.bond.BondTranslator}
 * reads the model once and hands the engine immutable records; what cannot be laid becomes a finding and is left out, and
 * the rest of the building is still laid.
 */
package org.coursewright.core.bond;
