/** Labels and property descriptors of the project model, free of any user interface. */
package org.coursewright.model.edit;
