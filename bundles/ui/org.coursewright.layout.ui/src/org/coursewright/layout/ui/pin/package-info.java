/** What is fixed by hand in a wall: joints of runs and pieces. */
package org.coursewright.layout.ui.pin;
