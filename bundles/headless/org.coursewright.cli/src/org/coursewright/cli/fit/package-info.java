/** The command about dimensions whose change spares cuts. */
package org.coursewright.cli.fit;
