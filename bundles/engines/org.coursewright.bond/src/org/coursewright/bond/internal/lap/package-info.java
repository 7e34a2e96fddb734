/** Where joints of consecutive courses come too near to one another, and how often they must. */
package org.coursewright.bond.internal.lap;
