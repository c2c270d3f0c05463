package org.thalweg.api;

import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Who answers: the same engine gives the same answer to the same request, byte for byte. */
@Singleton
public class Engine {

    private final String name;

    Engine(@ConfigProperty(name = "quarkus.application.version") String version) {
        this.name = "thalweg/" + version;
    }

    /** {@code thalweg/0.1.0}. */
    public String name() {
        return name;
    }
}
