/**
 */
package org.coursewright.model.register.impl;

import java.time.LocalDate;

import org.coursewright.model.register.Certificate;
import org.coursewright.model.register.RegisterPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Certificate</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.register.impl.CertificateImpl#getMark <em>Mark</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.CertificateImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.CertificateImpl#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.CertificateImpl#getIssuedOn <em>Issued On</em>}</li>
 *   <li>{@link org.coursewright.model.register.impl.CertificateImpl#getFile <em>File</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CertificateImpl extends MinimalEObjectImpl.Container implements Certificate {
	/**
	 * The default value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected static final String MARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMark() <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMark()
	 * @generated
	 * @ordered
	 */
	protected String mark = MARK_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLaboratory() <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaboratory()
	 * @generated
	 * @ordered
	 */
	protected static final String LABORATORY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLaboratory() <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaboratory()
	 * @generated
	 * @ordered
	 */
	protected String laboratory = LABORATORY_EDEFAULT;

	/**
	 * The default value of the '{@link #getIssuedOn() <em>Issued On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIssuedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ISSUED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIssuedOn() <em>Issued On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIssuedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate issuedOn = ISSUED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getFile() <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected static final String FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFile() <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected String file = FILE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CertificateImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return RegisterPackage.Literals.CERTIFICATE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMark() {
		return mark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMark(String newMark) {
		String oldMark = mark;
		mark = newMark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.CERTIFICATE__MARK, oldMark, mark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.CERTIFICATE__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLaboratory() {
		return laboratory;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLaboratory(String newLaboratory) {
		String oldLaboratory = laboratory;
		laboratory = newLaboratory;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.CERTIFICATE__LABORATORY, oldLaboratory, laboratory));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getIssuedOn() {
		return issuedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIssuedOn(LocalDate newIssuedOn) {
		LocalDate oldIssuedOn = issuedOn;
		issuedOn = newIssuedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.CERTIFICATE__ISSUED_ON, oldIssuedOn, issuedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFile() {
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFile(String newFile) {
		String oldFile = file;
		file = newFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, RegisterPackage.CERTIFICATE__FILE, oldFile, file));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case RegisterPackage.CERTIFICATE__MARK:
				return getMark();
			case RegisterPackage.CERTIFICATE__NOTE:
				return getNote();
			case RegisterPackage.CERTIFICATE__LABORATORY:
				return getLaboratory();
			case RegisterPackage.CERTIFICATE__ISSUED_ON:
				return getIssuedOn();
			case RegisterPackage.CERTIFICATE__FILE:
				return getFile();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case RegisterPackage.CERTIFICATE__MARK:
				setMark((String)newValue);
				return;
			case RegisterPackage.CERTIFICATE__NOTE:
				setNote((String)newValue);
				return;
			case RegisterPackage.CERTIFICATE__LABORATORY:
				setLaboratory((String)newValue);
				return;
			case RegisterPackage.CERTIFICATE__ISSUED_ON:
				setIssuedOn((LocalDate)newValue);
				return;
			case RegisterPackage.CERTIFICATE__FILE:
				setFile((String)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case RegisterPackage.CERTIFICATE__MARK:
				setMark(MARK_EDEFAULT);
				return;
			case RegisterPackage.CERTIFICATE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case RegisterPackage.CERTIFICATE__LABORATORY:
				setLaboratory(LABORATORY_EDEFAULT);
				return;
			case RegisterPackage.CERTIFICATE__ISSUED_ON:
				setIssuedOn(ISSUED_ON_EDEFAULT);
				return;
			case RegisterPackage.CERTIFICATE__FILE:
				setFile(FILE_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case RegisterPackage.CERTIFICATE__MARK:
				return MARK_EDEFAULT == null ? mark != null : !MARK_EDEFAULT.equals(mark);
			case RegisterPackage.CERTIFICATE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case RegisterPackage.CERTIFICATE__LABORATORY:
				return LABORATORY_EDEFAULT == null ? laboratory != null : !LABORATORY_EDEFAULT.equals(laboratory);
			case RegisterPackage.CERTIFICATE__ISSUED_ON:
				return ISSUED_ON_EDEFAULT == null ? issuedOn != null : !ISSUED_ON_EDEFAULT.equals(issuedOn);
			case RegisterPackage.CERTIFICATE__FILE:
				return FILE_EDEFAULT == null ? file != null : !FILE_EDEFAULT.equals(file);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (mark: ");
		result.append(mark);
		result.append(", note: ");
		result.append(note);
		result.append(", laboratory: ");
		result.append(laboratory);
		result.append(", issuedOn: ");
		result.append(issuedOn);
		result.append(", file: ");
		result.append(file);
		result.append(')');
		return result.toString();
	}

} //CertificateImpl
