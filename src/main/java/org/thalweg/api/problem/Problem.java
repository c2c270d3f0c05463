package org.thalweg.api.problem;

import java.util.Locale;

/** Why there is no answer, by kind. A code never changes its meaning; new ones may be added. */
public enum Problem {
    /** The body is not JSON, or goes past a limit of reading. */
    UNREADABLE(400, "The body can't be read"),
    /** The body is JSON and does not fit the contract. */
    INVALID(400, "The request does not fit the contract"),
    /** The address or a header can't be read. */
    BAD_REQUEST(400, "The request line or a header can't be read"),
    /** Nothing is served at the address. */
    NOT_FOUND(404, "Nothing is served here"),
    /** The address is served, by other methods. */
    METHOD_NOT_ALLOWED(405, "This address does not take the method"),
    /** The answer can't be given in a form the caller takes. */
    NOT_ACCEPTABLE(406, "No answer in the form asked for"),
    /** The body is larger than the service reads. */
    TOO_LARGE(413, "The body is too large"),
    /** The body has a form the service does not read. */
    UNSUPPORTED_MEDIA_TYPE(415, "The body has a form that is not read here"),
    /** The request can be read and has no answer: mostly it describes no roof. */
    NOT_A_ROOF(422, "The request can be read and has no answer"),
    /** The job can be read, and something in it has no price. */
    NOT_PRICED(422, "The job has no total"),
    /** The service is at fault. */
    INTERNAL(500, "The service failed"),
    /** The service has more work than it can do. */
    BUSY(503, "The service is busy");

    private final int status;
    private final String title;
    private final String type;

    Problem(int status, String title) {
        this.status = status;
        this.title = title;
        this.type = "/problems/" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The HTTP status it is answered with. */
    public int status() {
        return status;
    }

    /** What kind of problem it is, in words that are the same every time. */
    public String title() {
        return title;
    }

    /** The kind as a URI reference: {@code /problems/not-a-roof}. */
    public String type() {
        return type;
    }

    /** The problem that stands for a status the framework chose. */
    static Problem ofStatus(int status) {
        return switch (status) {
            case 404 -> NOT_FOUND;
            case 405 -> METHOD_NOT_ALLOWED;
            case 406 -> NOT_ACCEPTABLE;
            case 413 -> TOO_LARGE;
            case 415 -> UNSUPPORTED_MEDIA_TYPE;
            case 503 -> BUSY;
            default -> status >= 400 && status < 500 ? BAD_REQUEST : INTERNAL;
        };
    }
}
