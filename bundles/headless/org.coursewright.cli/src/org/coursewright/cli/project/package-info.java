/** Commands that make a project, check it and tell what is in it. */
package org.coursewright.cli.project;
