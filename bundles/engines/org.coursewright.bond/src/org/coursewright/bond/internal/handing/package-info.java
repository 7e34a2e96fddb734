/** Which wall runs through where walls meet, in odd and in even courses. */
package org.coursewright.bond.internal.handing;
