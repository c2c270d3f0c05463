package org.thalweg.api.problem;

import java.util.UUID;
import org.jboss.logging.Logger;

/** Our own failures: an id for the caller, the whole story for the log. */
public final class Failures {

    private static final Logger LOG = Logger.getLogger(Failures.class);

    private Failures() {}

    /** Logs the failure under a new id and tells the caller nothing else. */
    public static ProblemAnswer log(Throwable failure) {
        UUID id = UUID.randomUUID();
        LOG.errorf(failure, "failure %s", id);
        return new NoAnswer(
                        Problem.INTERNAL,
                        "The service failed, through no fault of the request. Its log has the reason under %s; please"
                                        .formatted(id)
                                + " pass that on.")
                .answer();
    }
}
