/** Projects in files: loading, editing, saving, recovery. */
package org.coursewright.core.session;
