package org.coursewright.workbench.internal.welcome;

/**
 * One way to begin.
 *
 * @param icon name of its icon
 * @param label what it is called
 * @param description what it does
 * @param command that does it, as the platform writes commands with their parameters
 */
record Start(String icon, String label, String description, String command) {

    /** @return id of the command, without its parameters */
    String commandId() {
        return command.replaceFirst("\\(.*", "");
    }
}
