/** Actions on what is selected in a plan. */
package org.coursewright.layout.ui.plan.action;
