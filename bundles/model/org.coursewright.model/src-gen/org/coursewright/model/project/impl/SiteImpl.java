/**
 */
package org.coursewright.model.project.impl;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.project.Site;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getLatitude <em>Latitude</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getLongitude <em>Longitude</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getElevation <em>Elevation</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getTimeZone <em>Time Zone</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getWeatherRecord <em>Weather Record</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getGround <em>Ground</em>}</li>
 *   <li>{@link org.coursewright.model.project.impl.SiteImpl#getExposure <em>Exposure</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SiteImpl extends MinimalEObjectImpl.Container implements Site {
	/**
	 * The default value of the '{@link #getLatitude() <em>Latitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitude()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LATITUDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLatitude() <em>Latitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitude()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal latitude = LATITUDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLongitude() <em>Longitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitude()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LONGITUDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLongitude() <em>Longitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitude()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal longitude = LONGITUDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getElevation() <em>Elevation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevation()
	 * @generated
	 * @ordered
	 */
	protected static final Length ELEVATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElevation() <em>Elevation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevation()
	 * @generated
	 * @ordered
	 */
	protected Length elevation = ELEVATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getTimeZone() <em>Time Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeZone()
	 * @generated
	 * @ordered
	 */
	protected static final String TIME_ZONE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTimeZone() <em>Time Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeZone()
	 * @generated
	 * @ordered
	 */
	protected String timeZone = TIME_ZONE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeatherRecord() <em>Weather Record</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeatherRecord()
	 * @generated
	 * @ordered
	 */
	protected static final String WEATHER_RECORD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeatherRecord() <em>Weather Record</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeatherRecord()
	 * @generated
	 * @ordered
	 */
	protected String weatherRecord = WEATHER_RECORD_EDEFAULT;

	/**
	 * The default value of the '{@link #getGround() <em>Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGround()
	 * @generated
	 * @ordered
	 */
	protected static final String GROUND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGround() <em>Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGround()
	 * @generated
	 * @ordered
	 */
	protected String ground = GROUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getExposure() <em>Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExposure()
	 * @generated
	 * @ordered
	 */
	protected static final String EXPOSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExposure() <em>Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExposure()
	 * @generated
	 * @ordered
	 */
	protected String exposure = EXPOSURE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ProjectPackage.Literals.SITE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLatitude() {
		return latitude;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatitude(BigDecimal newLatitude) {
		BigDecimal oldLatitude = latitude;
		latitude = newLatitude;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__LATITUDE, oldLatitude, latitude));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLongitude() {
		return longitude;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLongitude(BigDecimal newLongitude) {
		BigDecimal oldLongitude = longitude;
		longitude = newLongitude;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__LONGITUDE, oldLongitude, longitude));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getElevation() {
		return elevation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElevation(Length newElevation) {
		Length oldElevation = elevation;
		elevation = newElevation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__ELEVATION, oldElevation, elevation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTimeZone() {
		return timeZone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTimeZone(String newTimeZone) {
		String oldTimeZone = timeZone;
		timeZone = newTimeZone;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__TIME_ZONE, oldTimeZone, timeZone));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWeatherRecord() {
		return weatherRecord;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeatherRecord(String newWeatherRecord) {
		String oldWeatherRecord = weatherRecord;
		weatherRecord = newWeatherRecord;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__WEATHER_RECORD, oldWeatherRecord, weatherRecord));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGround() {
		return ground;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGround(String newGround) {
		String oldGround = ground;
		ground = newGround;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__GROUND, oldGround, ground));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getExposure() {
		return exposure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExposure(String newExposure) {
		String oldExposure = exposure;
		exposure = newExposure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ProjectPackage.SITE__EXPOSURE, oldExposure, exposure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ProjectPackage.SITE__LATITUDE:
				return getLatitude();
			case ProjectPackage.SITE__LONGITUDE:
				return getLongitude();
			case ProjectPackage.SITE__ELEVATION:
				return getElevation();
			case ProjectPackage.SITE__TIME_ZONE:
				return getTimeZone();
			case ProjectPackage.SITE__WEATHER_RECORD:
				return getWeatherRecord();
			case ProjectPackage.SITE__GROUND:
				return getGround();
			case ProjectPackage.SITE__EXPOSURE:
				return getExposure();
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
			case ProjectPackage.SITE__LATITUDE:
				setLatitude((BigDecimal)newValue);
				return;
			case ProjectPackage.SITE__LONGITUDE:
				setLongitude((BigDecimal)newValue);
				return;
			case ProjectPackage.SITE__ELEVATION:
				setElevation((Length)newValue);
				return;
			case ProjectPackage.SITE__TIME_ZONE:
				setTimeZone((String)newValue);
				return;
			case ProjectPackage.SITE__WEATHER_RECORD:
				setWeatherRecord((String)newValue);
				return;
			case ProjectPackage.SITE__GROUND:
				setGround((String)newValue);
				return;
			case ProjectPackage.SITE__EXPOSURE:
				setExposure((String)newValue);
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
			case ProjectPackage.SITE__LATITUDE:
				setLatitude(LATITUDE_EDEFAULT);
				return;
			case ProjectPackage.SITE__LONGITUDE:
				setLongitude(LONGITUDE_EDEFAULT);
				return;
			case ProjectPackage.SITE__ELEVATION:
				setElevation(ELEVATION_EDEFAULT);
				return;
			case ProjectPackage.SITE__TIME_ZONE:
				setTimeZone(TIME_ZONE_EDEFAULT);
				return;
			case ProjectPackage.SITE__WEATHER_RECORD:
				setWeatherRecord(WEATHER_RECORD_EDEFAULT);
				return;
			case ProjectPackage.SITE__GROUND:
				setGround(GROUND_EDEFAULT);
				return;
			case ProjectPackage.SITE__EXPOSURE:
				setExposure(EXPOSURE_EDEFAULT);
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
			case ProjectPackage.SITE__LATITUDE:
				return LATITUDE_EDEFAULT == null ? latitude != null : !LATITUDE_EDEFAULT.equals(latitude);
			case ProjectPackage.SITE__LONGITUDE:
				return LONGITUDE_EDEFAULT == null ? longitude != null : !LONGITUDE_EDEFAULT.equals(longitude);
			case ProjectPackage.SITE__ELEVATION:
				return ELEVATION_EDEFAULT == null ? elevation != null : !ELEVATION_EDEFAULT.equals(elevation);
			case ProjectPackage.SITE__TIME_ZONE:
				return TIME_ZONE_EDEFAULT == null ? timeZone != null : !TIME_ZONE_EDEFAULT.equals(timeZone);
			case ProjectPackage.SITE__WEATHER_RECORD:
				return WEATHER_RECORD_EDEFAULT == null ? weatherRecord != null : !WEATHER_RECORD_EDEFAULT.equals(weatherRecord);
			case ProjectPackage.SITE__GROUND:
				return GROUND_EDEFAULT == null ? ground != null : !GROUND_EDEFAULT.equals(ground);
			case ProjectPackage.SITE__EXPOSURE:
				return EXPOSURE_EDEFAULT == null ? exposure != null : !EXPOSURE_EDEFAULT.equals(exposure);
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
		result.append(" (latitude: ");
		result.append(latitude);
		result.append(", longitude: ");
		result.append(longitude);
		result.append(", elevation: ");
		result.append(elevation);
		result.append(", timeZone: ");
		result.append(timeZone);
		result.append(", weatherRecord: ");
		result.append(weatherRecord);
		result.append(", ground: ");
		result.append(ground);
		result.append(", exposure: ");
		result.append(exposure);
		result.append(')');
		return result.toString();
	}

} //SiteImpl
