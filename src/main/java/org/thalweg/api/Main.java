package org.thalweg.api;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.thalweg.api.batch.Commands;

/** Starts the service, or does what the command line says and ends. */
@QuarkusMain
public final class Main {

    Main() {}

    /**
     * The framework answers an address that is no URI, such as one with a bad percent escape, with a bare status. Told
     * to let such addresses through, it leaves them to our own handlers, which answer a problem.
     */
    public static void main(String... args) {
        if (args.length > 0) {
            // Before the framework starts: a batch takes no port and is at work in a fraction of a second.
            System.exit(Commands.run(args));
        }
        System.setProperty("vertx.disableURIValidation", "true");
        Quarkus.run();
    }
}
