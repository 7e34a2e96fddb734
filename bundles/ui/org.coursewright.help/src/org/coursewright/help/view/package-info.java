/** The view in which help pages are read. */
package org.coursewright.help.view;
