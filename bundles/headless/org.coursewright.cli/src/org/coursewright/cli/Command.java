package org.coursewright.cli;

import java.util.concurrent.Callable;

/**
 * A headless command: a class with the annotations of picocli for its name, options and description.
 *
 * <p>It writes its result only when it is complete, and nothing if it fails. It throws {@link BadInputException}, or a
 * {@link org.coursewright.core.session.ProjectFileException} it got, if what was typed or what a file holds is at fault;
 * any other exception is a fault in the program.
 */
public interface Command extends Callable<Integer> {

    /**
     * Does the job.
     *
     * @return how it ended
     * @throws Exception if it could not be done
     */
    ExitStatus run() throws Exception;

    @Override
    default Integer call() throws Exception {
        return run().code();
    }
}
