/** How a project wants its values shown. */
package org.coursewright.core.display;
