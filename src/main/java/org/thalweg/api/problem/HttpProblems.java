package org.thalweg.api.problem;

import jakarta.inject.Singleton;

/** Words for what HTTP itself refuses, before a resource sees the request. */
@Singleton
public class HttpProblems {

    private final Served served;

    HttpProblems(Served served) {
        this.served = served;
    }

    /**
     * Tells the caller why there is no answer.
     *
     * @param problem what is wrong
     * @param method  the request's method
     * @param path    the request's path
     */
    ProblemAnswer of(Problem problem, String method, String path) {
        return new NoAnswer(problem, detail(problem, method, path)).answer();
    }

    private String detail(Problem problem, String method, String path) {
        return switch (problem) {
            case NOT_FOUND ->
                "Nothing is served at %s. The contract at /openapi lists what is.".formatted(Echo.of(path));
            case METHOD_NOT_ALLOWED ->
                "%s does not take the method %s. It takes %s."
                        .formatted(Echo.of(path), Echo.of(method), served.methods(path));
            case NOT_ACCEPTABLE ->
                "%s has no answer in a form that the Accept header asks for. It answers %s."
                        .formatted(Echo.of(path), served.answers(path));
            case UNSUPPORTED_MEDIA_TYPE ->
                "%s does not read a body of this Content-Type. It reads %s."
                        .formatted(Echo.of(path), served.reads(path));
            case BUSY -> "The service has more work than it can do now. Try again a little later.";
            default -> "The request line or a header can't be read. Check the address and its percent signs.";
        };
    }

    /** What an Allow header has to say. */
    String allow(String path) {
        return served.methods(path);
    }
}
