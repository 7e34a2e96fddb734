/** From the project's walls to the bond engine and back. */
package org.coursewright.core.bond;
