/**
 */
package org.coursewright.model.programme.impl;

import java.util.Collection;

import org.coursewright.model.programme.Activity;
import org.coursewright.model.programme.Agreed;
import org.coursewright.model.programme.Link;
import org.coursewright.model.programme.Programme;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.programme.Progress;
import org.coursewright.model.programme.WorkCalendar;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Programme</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.programme.impl.ProgrammeImpl#getActivities <em>Activities</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ProgrammeImpl#getLinks <em>Links</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ProgrammeImpl#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ProgrammeImpl#getProgress <em>Progress</em>}</li>
 *   <li>{@link org.coursewright.model.programme.impl.ProgrammeImpl#getAgreed <em>Agreed</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProgrammeImpl extends MinimalEObjectImpl.Container implements Programme {
	/**
	 * The cached value of the '{@link #getActivities() <em>Activities</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActivities()
	 * @generated
	 * @ordered
	 */
	protected EList<Activity> activities;

	/**
	 * The cached value of the '{@link #getLinks() <em>Links</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLinks()
	 * @generated
	 * @ordered
	 */
	protected EList<Link> links;

	/**
	 * The cached value of the '{@link #getCalendars() <em>Calendars</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalendars()
	 * @generated
	 * @ordered
	 */
	protected EList<WorkCalendar> calendars;

	/**
	 * The cached value of the '{@link #getProgress() <em>Progress</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgress()
	 * @generated
	 * @ordered
	 */
	protected EList<Progress> progress;

	/**
	 * The cached value of the '{@link #getAgreed() <em>Agreed</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgreed()
	 * @generated
	 * @ordered
	 */
	protected EList<Agreed> agreed;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProgrammeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProgrammePackage.Literals.PROGRAMME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Activity> getActivities() {
		if (activities == null) {
			activities = new EObjectContainmentEList<Activity>(Activity.class, this, ProgrammePackage.PROGRAMME__ACTIVITIES);
		}
		return activities;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Link> getLinks() {
		if (links == null) {
			links = new EObjectContainmentEList<Link>(Link.class, this, ProgrammePackage.PROGRAMME__LINKS);
		}
		return links;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<WorkCalendar> getCalendars() {
		if (calendars == null) {
			calendars = new EObjectContainmentEList<WorkCalendar>(WorkCalendar.class, this, ProgrammePackage.PROGRAMME__CALENDARS);
		}
		return calendars;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Progress> getProgress() {
		if (progress == null) {
			progress = new EObjectContainmentEList<Progress>(Progress.class, this, ProgrammePackage.PROGRAMME__PROGRESS);
		}
		return progress;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Agreed> getAgreed() {
		if (agreed == null) {
			agreed = new EObjectContainmentEList<Agreed>(Agreed.class, this, ProgrammePackage.PROGRAMME__AGREED);
		}
		return agreed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ProgrammePackage.PROGRAMME__ACTIVITIES:
				return ((InternalEList<?>)getActivities()).basicRemove(otherEnd, msgs);
			case ProgrammePackage.PROGRAMME__LINKS:
				return ((InternalEList<?>)getLinks()).basicRemove(otherEnd, msgs);
			case ProgrammePackage.PROGRAMME__CALENDARS:
				return ((InternalEList<?>)getCalendars()).basicRemove(otherEnd, msgs);
			case ProgrammePackage.PROGRAMME__PROGRESS:
				return ((InternalEList<?>)getProgress()).basicRemove(otherEnd, msgs);
			case ProgrammePackage.PROGRAMME__AGREED:
				return ((InternalEList<?>)getAgreed()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProgrammePackage.PROGRAMME__ACTIVITIES:
				return getActivities();
			case ProgrammePackage.PROGRAMME__LINKS:
				return getLinks();
			case ProgrammePackage.PROGRAMME__CALENDARS:
				return getCalendars();
			case ProgrammePackage.PROGRAMME__PROGRESS:
				return getProgress();
			case ProgrammePackage.PROGRAMME__AGREED:
				return getAgreed();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ProgrammePackage.PROGRAMME__ACTIVITIES:
				getActivities().clear();
				getActivities().addAll((Collection<? extends Activity>)newValue);
				return;
			case ProgrammePackage.PROGRAMME__LINKS:
				getLinks().clear();
				getLinks().addAll((Collection<? extends Link>)newValue);
				return;
			case ProgrammePackage.PROGRAMME__CALENDARS:
				getCalendars().clear();
				getCalendars().addAll((Collection<? extends WorkCalendar>)newValue);
				return;
			case ProgrammePackage.PROGRAMME__PROGRESS:
				getProgress().clear();
				getProgress().addAll((Collection<? extends Progress>)newValue);
				return;
			case ProgrammePackage.PROGRAMME__AGREED:
				getAgreed().clear();
				getAgreed().addAll((Collection<? extends Agreed>)newValue);
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
			case ProgrammePackage.PROGRAMME__ACTIVITIES:
				getActivities().clear();
				return;
			case ProgrammePackage.PROGRAMME__LINKS:
				getLinks().clear();
				return;
			case ProgrammePackage.PROGRAMME__CALENDARS:
				getCalendars().clear();
				return;
			case ProgrammePackage.PROGRAMME__PROGRESS:
				getProgress().clear();
				return;
			case ProgrammePackage.PROGRAMME__AGREED:
				getAgreed().clear();
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
			case ProgrammePackage.PROGRAMME__ACTIVITIES:
				return activities != null && !activities.isEmpty();
			case ProgrammePackage.PROGRAMME__LINKS:
				return links != null && !links.isEmpty();
			case ProgrammePackage.PROGRAMME__CALENDARS:
				return calendars != null && !calendars.isEmpty();
			case ProgrammePackage.PROGRAMME__PROGRESS:
				return progress != null && !progress.isEmpty();
			case ProgrammePackage.PROGRAMME__AGREED:
				return agreed != null && !agreed.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //ProgrammeImpl
