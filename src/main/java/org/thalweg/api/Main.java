package org.thalweg.api;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** Starts the service. */
@QuarkusMain
public final class Main {

    Main() {}

    /**
     * The framework answers an address that is no URI, such as one with a bad percent escape, with a bare status. Told
     * to let such addresses through, it leaves them to our own handlers, which answer a problem.
     */
    public static void main(String... args) {
        System.setProperty("vertx.disableURIValidation", "true");
        Quarkus.run(args);
    }
}
