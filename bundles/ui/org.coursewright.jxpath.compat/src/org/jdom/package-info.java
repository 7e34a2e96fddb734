/** Empty: satisfies a mandatory OSGi import of commons-jxpath, which looks these classes up by reflection only. */
package org.jdom;
