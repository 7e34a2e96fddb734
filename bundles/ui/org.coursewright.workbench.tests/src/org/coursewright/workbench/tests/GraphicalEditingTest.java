package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.runtime.Platform;
import org.eclipse.gef.EditDomain;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;

/** The graphical editing framework is in the product for the plan and wall-face editors. */
class GraphicalEditingTest {

    @Test
    void frameworkResolvesInTheProduct() {
        Bundle bundle = Platform.getBundle("org.eclipse.gef");

        assertNotNull(bundle);
        assertTrue((bundle.getState() & (Bundle.RESOLVED | Bundle.STARTING | Bundle.ACTIVE)) != 0);
        assertNotNull(new EditDomain().getCommandStack());
    }

    @Test
    void assertionClassComesFromOurFragment() throws ClassNotFoundException {
        Class<?> assertion = Platform.getBundle("org.eclipse.gef").loadClass("org.eclipse.jface.util.Assert");

        Bundle[] fragments = Platform.getFragments(Platform.getBundle("org.eclipse.gef"));
        assertEquals("org.coursewright.gef.compat", fragments[0].getSymbolicName());
        assertNotNull(assertion.getProtectionDomain());
    }
}
