/**
 * Holds the build to its architecture: which bundle may use which, what manifests may require, how things are named, and
 * that nothing in the repository is forgotten. It reads compiled classes, manifests, sources and build files of every
 * bundle. Each rule is a function from what it reads to a list of complaints, and each has a test with a fixture that
 * breaks it, so that a rule which cannot fail is noticed.
 */
package org.coursewright.architecture;
