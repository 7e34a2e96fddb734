/**
 */
package org.coursewright.model.proposal;

import org.coursewright.model.project.ProjectPackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
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
 * Changes of dimension offered to the architect.
 * <!-- end-model-doc -->
 * @see org.coursewright.model.proposal.ProposalFactory
 * @model kind="package"
 * @generated
 */
public interface ProposalPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "proposal";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://coursewright.org/project/1/proposal";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "proposal";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ProposalPackage eINSTANCE = org.coursewright.model.proposal.impl.ProposalPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.coursewright.model.proposal.impl.ProposalImpl <em>Proposal</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.proposal.impl.ProposalImpl
	 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getProposal()
	 * @generated
	 */
	int PROPOSAL = 0;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__MARK = ProjectPackage.MARKED__MARK;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__NOTE = ProjectPackage.MARKED__NOTE;

	/**
	 * The feature id for the '<em><b>Wall</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__WALL = ProjectPackage.MARKED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Opening</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__OPENING = ProjectPackage.MARKED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Dimension</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__DIMENSION = ProjectPackage.MARKED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__FROM = ProjectPackage.MARKED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__TO = ProjectPackage.MARKED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__REASON = ProjectPackage.MARKED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__STATE = ProjectPackage.MARKED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Comment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__COMMENT = ProjectPackage.MARKED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__BY = ProjectPackage.MARKED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL__AT = ProjectPackage.MARKED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Proposal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL_FEATURE_COUNT = ProjectPackage.MARKED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Proposal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROPOSAL_OPERATION_COUNT = ProjectPackage.MARKED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.coursewright.model.proposal.ProposalState <em>State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.proposal.ProposalState
	 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getProposalState()
	 * @generated
	 */
	int PROPOSAL_STATE = 1;

	/**
	 * The meta object id for the '{@link org.coursewright.model.proposal.Dimension <em>Dimension</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.coursewright.model.proposal.Dimension
	 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getDimension()
	 * @generated
	 */
	int DIMENSION = 2;


	/**
	 * Returns the meta object for class '{@link org.coursewright.model.proposal.Proposal <em>Proposal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Proposal</em>'.
	 * @see org.coursewright.model.proposal.Proposal
	 * @generated
	 */
	EClass getProposal();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.proposal.Proposal#getWall <em>Wall</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Wall</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getWall()
	 * @see #getProposal()
	 * @generated
	 */
	EReference getProposal_Wall();

	/**
	 * Returns the meta object for the reference '{@link org.coursewright.model.proposal.Proposal#getOpening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Opening</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getOpening()
	 * @see #getProposal()
	 * @generated
	 */
	EReference getProposal_Opening();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getDimension <em>Dimension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dimension</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getDimension()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_Dimension();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getFrom()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_From();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getTo()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_To();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getReason()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_Reason();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getState()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_State();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getComment <em>Comment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Comment</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getComment()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_Comment();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getBy()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_By();

	/**
	 * Returns the meta object for the attribute '{@link org.coursewright.model.proposal.Proposal#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.coursewright.model.proposal.Proposal#getAt()
	 * @see #getProposal()
	 * @generated
	 */
	EAttribute getProposal_At();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.proposal.ProposalState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>State</em>'.
	 * @see org.coursewright.model.proposal.ProposalState
	 * @generated
	 */
	EEnum getProposalState();

	/**
	 * Returns the meta object for enum '{@link org.coursewright.model.proposal.Dimension <em>Dimension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Dimension</em>'.
	 * @see org.coursewright.model.proposal.Dimension
	 * @generated
	 */
	EEnum getDimension();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ProposalFactory getProposalFactory();

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
		 * The meta object literal for the '{@link org.coursewright.model.proposal.impl.ProposalImpl <em>Proposal</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.proposal.impl.ProposalImpl
		 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getProposal()
		 * @generated
		 */
		EClass PROPOSAL = eINSTANCE.getProposal();

		/**
		 * The meta object literal for the '<em><b>Wall</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROPOSAL__WALL = eINSTANCE.getProposal_Wall();

		/**
		 * The meta object literal for the '<em><b>Opening</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROPOSAL__OPENING = eINSTANCE.getProposal_Opening();

		/**
		 * The meta object literal for the '<em><b>Dimension</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__DIMENSION = eINSTANCE.getProposal_Dimension();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__FROM = eINSTANCE.getProposal_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__TO = eINSTANCE.getProposal_To();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__REASON = eINSTANCE.getProposal_Reason();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__STATE = eINSTANCE.getProposal_State();

		/**
		 * The meta object literal for the '<em><b>Comment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__COMMENT = eINSTANCE.getProposal_Comment();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__BY = eINSTANCE.getProposal_By();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROPOSAL__AT = eINSTANCE.getProposal_At();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.proposal.ProposalState <em>State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.proposal.ProposalState
		 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getProposalState()
		 * @generated
		 */
		EEnum PROPOSAL_STATE = eINSTANCE.getProposalState();

		/**
		 * The meta object literal for the '{@link org.coursewright.model.proposal.Dimension <em>Dimension</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.coursewright.model.proposal.Dimension
		 * @see org.coursewright.model.proposal.impl.ProposalPackageImpl#getDimension()
		 * @generated
		 */
		EEnum DIMENSION = eINSTANCE.getDimension();

	}

} //ProposalPackage
