/**
 */
package org.coursewright.model.building.impl;

import org.coursewright.model.building.*;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class BuildingFactoryImpl extends EFactoryImpl implements BuildingFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static BuildingFactory init() {
		try {
			BuildingFactory theBuildingFactory = (BuildingFactory)EPackage.Registry.INSTANCE.getEFactory(BuildingPackage.eNS_URI);
			if (theBuildingFactory != null) {
				return theBuildingFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new BuildingFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BuildingFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case BuildingPackage.BUILDING: return createBuilding();
			case BuildingPackage.STOREY: return createStorey();
			case BuildingPackage.WALL: return createWall();
			case BuildingPackage.TOP_POINT: return createTopPoint();
			case BuildingPackage.OPENING: return createOpening();
			case BuildingPackage.JUNCTION: return createJunction();
			case BuildingPackage.JUNCTION_END: return createJunctionEnd();
			case BuildingPackage.GRADE_BEAM: return createGradeBeam();
			case BuildingPackage.BOND_BEAM: return createBondBeam();
			case BuildingPackage.REINFORCEMENT: return createReinforcement();
			case BuildingPackage.FINISH: return createFinish();
			case BuildingPackage.BOND_RULE: return createBondRule();
			case BuildingPackage.GAUGE_PIN: return createGaugePin();
			case BuildingPackage.PIECE_PIN: return createPiecePin();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case BuildingPackage.BOND:
				return createBondFromString(eDataType, initialValue);
			case BuildingPackage.OPENING_KIND:
				return createOpeningKindFromString(eDataType, initialValue);
			case BuildingPackage.WALL_PLACE:
				return createWallPlaceFromString(eDataType, initialValue);
			case BuildingPackage.TEE_TIE:
				return createTeeTieFromString(eDataType, initialValue);
			case BuildingPackage.WALL_SIDE:
				return createWallSideFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case BuildingPackage.BOND:
				return convertBondToString(eDataType, instanceValue);
			case BuildingPackage.OPENING_KIND:
				return convertOpeningKindToString(eDataType, instanceValue);
			case BuildingPackage.WALL_PLACE:
				return convertWallPlaceToString(eDataType, instanceValue);
			case BuildingPackage.TEE_TIE:
				return convertTeeTieToString(eDataType, instanceValue);
			case BuildingPackage.WALL_SIDE:
				return convertWallSideToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Building createBuilding() {
		BuildingImpl building = new BuildingImpl();
		return building;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Storey createStorey() {
		StoreyImpl storey = new StoreyImpl();
		return storey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wall createWall() {
		WallImpl wall = new WallImpl();
		return wall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TopPoint createTopPoint() {
		TopPointImpl topPoint = new TopPointImpl();
		return topPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Opening createOpening() {
		OpeningImpl opening = new OpeningImpl();
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Junction createJunction() {
		JunctionImpl junction = new JunctionImpl();
		return junction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JunctionEnd createJunctionEnd() {
		JunctionEndImpl junctionEnd = new JunctionEndImpl();
		return junctionEnd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GradeBeam createGradeBeam() {
		GradeBeamImpl gradeBeam = new GradeBeamImpl();
		return gradeBeam;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BondBeam createBondBeam() {
		BondBeamImpl bondBeam = new BondBeamImpl();
		return bondBeam;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reinforcement createReinforcement() {
		ReinforcementImpl reinforcement = new ReinforcementImpl();
		return reinforcement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Finish createFinish() {
		FinishImpl finish = new FinishImpl();
		return finish;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BondRule createBondRule() {
		BondRuleImpl bondRule = new BondRuleImpl();
		return bondRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePin createGaugePin() {
		GaugePinImpl gaugePin = new GaugePinImpl();
		return gaugePin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PiecePin createPiecePin() {
		PiecePinImpl piecePin = new PiecePinImpl();
		return piecePin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Bond createBondFromString(EDataType eDataType, String initialValue) {
		Bond result = Bond.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBondToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OpeningKind createOpeningKindFromString(EDataType eDataType, String initialValue) {
		OpeningKind result = OpeningKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOpeningKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WallPlace createWallPlaceFromString(EDataType eDataType, String initialValue) {
		WallPlace result = WallPlace.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWallPlaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TeeTie createTeeTieFromString(EDataType eDataType, String initialValue) {
		TeeTie result = TeeTie.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTeeTieToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WallSide createWallSideFromString(EDataType eDataType, String initialValue) {
		WallSide result = WallSide.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWallSideToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BuildingPackage getBuildingPackage() {
		return (BuildingPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static BuildingPackage getPackage() {
		return BuildingPackage.eINSTANCE;
	}

} //BuildingFactoryImpl
