package org.coursewright.cli;

import java.util.Arrays;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/**
 * Runs a headless command inside OSGi, for those who start the product's launcher rather than its {@code coursewright}
 * script. It knows the commands of this bundle.
 */
public final class HeadlessApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        context.applicationRunning();
        String[] args = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        boolean marked = args.length > 0 && args[0].equals("--");
        return CommandLineEntry.run(marked ? Arrays.copyOfRange(args, 1, args.length) : args, System.out, System.err);
    }

    @Override
    public void stop() {
        // a command ends by itself
    }
}
