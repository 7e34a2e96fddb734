/** Where walls meet, and how long they are from face to face. */
package org.coursewright.core.geometry;
