/**
 */
package org.coursewright.model.project;

import java.math.BigDecimal;

import org.coursewright.measure.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The place of the building.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.coursewright.model.project.Site#getLatitude <em>Latitude</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getLongitude <em>Longitude</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getElevation <em>Elevation</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getTimeZone <em>Time Zone</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getWeatherRecord <em>Weather Record</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getGround <em>Ground</em>}</li>
 *   <li>{@link org.coursewright.model.project.Site#getExposure <em>Exposure</em>}</li>
 * </ul>
 *
 * @see org.coursewright.model.project.ProjectPackage#getSite()
 * @model
 * @generated
 */
public interface Site extends EObject {
	/**
	 * Returns the value of the '<em><b>Latitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Degrees north, -90 to 90.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Latitude</em>' attribute.
	 * @see #setLatitude(BigDecimal)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_Latitude()
	 * @model
	 * @generated
	 */
	BigDecimal getLatitude();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getLatitude <em>Latitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latitude</em>' attribute.
	 * @see #getLatitude()
	 * @generated
	 */
	void setLatitude(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Longitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Degrees east, -180 to 180.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Longitude</em>' attribute.
	 * @see #setLongitude(BigDecimal)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_Longitude()
	 * @model
	 * @generated
	 */
	BigDecimal getLongitude();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getLongitude <em>Longitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Longitude</em>' attribute.
	 * @see #getLongitude()
	 * @generated
	 */
	void setLongitude(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Elevation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Above sea level.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Elevation</em>' attribute.
	 * @see #setElevation(Length)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_Elevation()
	 * @model dataType="org.coursewright.model.types.Length"
	 * @generated
	 */
	Length getElevation();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getElevation <em>Elevation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation</em>' attribute.
	 * @see #getElevation()
	 * @generated
	 */
	void setElevation(Length value);

	/**
	 * Returns the value of the '<em><b>Time Zone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * IANA time zone, such as Etc/UTC.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time Zone</em>' attribute.
	 * @see #setTimeZone(String)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_TimeZone()
	 * @model
	 * @generated
	 */
	String getTimeZone();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getTimeZone <em>Time Zone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time Zone</em>' attribute.
	 * @see #getTimeZone()
	 * @generated
	 */
	void setTimeZone(String value);

	/**
	 * Returns the value of the '<em><b>Weather Record</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Reference of the weather record used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weather Record</em>' attribute.
	 * @see #setWeatherRecord(String)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_WeatherRecord()
	 * @model
	 * @generated
	 */
	String getWeatherRecord();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getWeatherRecord <em>Weather Record</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weather Record</em>' attribute.
	 * @see #getWeatherRecord()
	 * @generated
	 */
	void setWeatherRecord(String value);

	/**
	 * Returns the value of the '<em><b>Ground</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Soil and bearing as reported.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ground</em>' attribute.
	 * @see #setGround(String)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_Ground()
	 * @model
	 * @generated
	 */
	String getGround();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getGround <em>Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ground</em>' attribute.
	 * @see #getGround()
	 * @generated
	 */
	void setGround(String value);

	/**
	 * Returns the value of the '<em><b>Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wind, driving rain and shade.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Exposure</em>' attribute.
	 * @see #setExposure(String)
	 * @see org.coursewright.model.project.ProjectPackage#getSite_Exposure()
	 * @model
	 * @generated
	 */
	String getExposure();

	/**
	 * Sets the value of the '{@link org.coursewright.model.project.Site#getExposure <em>Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exposure</em>' attribute.
	 * @see #getExposure()
	 * @generated
	 */
	void setExposure(String value);

} // Site
