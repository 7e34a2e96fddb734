/**
 */
package org.coursewright.model.building;

import org.coursewright.measure.Length;

import org.coursewright.model.catalogue.MixDesign;

import org.coursewright.model.project.Marked;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Grade Beam</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The beam that walls stand on.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getWalls <em>Walls</em>}</li>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getWidth <em>Width</em>}</li>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getTop <em>Top</em>}</li>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getMix <em>Mix</em>}</li>
 *   <li>{@link org.coursewright.model.building.GradeBeam#getReinforcement <em>Reinforcement</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam()
 * @model
 * @generated
 */
public interface GradeBeam extends Marked {
	/**
	 * Returns the value of the '<em><b>Walls</b></em>' reference list.
	 * The list contents are of type {@link org.coursewright.model.building.Wall}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What stands on it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walls</em>' reference list.
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Walls()
	 * @model
	 * @generated
	 */
	EList<Wall> getWalls();

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Across.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Width()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getWidth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GradeBeam#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From top to bottom.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Depth()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getDepth();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GradeBeam#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Length value);

	/**
	 * Returns the value of the '<em><b>Top</b></em>' attribute.
	 * The default value is <code>"0 mm"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Above the project's benchmark.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Top</em>' attribute.
	 * @see #setTop(Length)
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Top()
	 * @model default="0 mm" dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getTop();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GradeBeam#getTop <em>Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Top</em>' attribute.
	 * @see #getTop()
	 * @generated
	 */
	void setTop(Length value);

	/**
	 * Returns the value of the '<em><b>Mix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Concrete.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix</em>' reference.
	 * @see #setMix(MixDesign)
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Mix()
	 * @model
	 * @generated
	 */
	MixDesign getMix();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GradeBeam#getMix <em>Mix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix</em>' reference.
	 * @see #getMix()
	 * @generated
	 */
	void setMix(MixDesign value);

	/**
	 * Returns the value of the '<em><b>Reinforcement</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steel in it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reinforcement</em>' containment reference.
	 * @see #setReinforcement(Reinforcement)
	 * @see org.coursewright.model.building.BuildingPackage#getGradeBeam_Reinforcement()
	 * @model containment="true"
	 * @generated
	 */
	Reinforcement getReinforcement();

	/**
	 * Sets the value of the '{@link org.coursewright.model.building.GradeBeam#getReinforcement <em>Reinforcement</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reinforcement</em>' containment reference.
	 * @see #getReinforcement()
	 * @generated
	 */
	void setReinforcement(Reinforcement value);

} // GradeBeam
