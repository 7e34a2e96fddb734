package org.eclipse.jface.util;

/**
 * Stands in for the assertion class that the published GEF calls and that the platform has since moved to
 * {@link org.eclipse.core.runtime.Assert}.
 */
public final class Assert {
    private Assert() {
    }

    public static boolean isLegal(boolean expression) {
        return org.eclipse.core.runtime.Assert.isLegal(expression);
    }

    public static boolean isLegal(boolean expression, String message) {
        return org.eclipse.core.runtime.Assert.isLegal(expression, message);
    }

    public static void isNotNull(Object object) {
        org.eclipse.core.runtime.Assert.isNotNull(object);
    }

    public static void isNotNull(Object object, String message) {
        org.eclipse.core.runtime.Assert.isNotNull(object, message);
    }

    public static boolean isTrue(boolean expression) {
        return org.eclipse.core.runtime.Assert.isTrue(expression);
    }

    public static boolean isTrue(boolean expression, String message) {
        return org.eclipse.core.runtime.Assert.isTrue(expression, message);
    }
}
