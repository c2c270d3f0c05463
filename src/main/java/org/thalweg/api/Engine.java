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

    /**
     * Name and first two numbers, {@code thalweg/0.1}: within a generation the lines of takeoffs keep their meaning, and one that was
     * saved can be priced by any engine of it.
     */
    public String generation() {
        int second = name.indexOf('.', name.indexOf('.') + 1);
        return second < 0 ? name : name.substring(0, second);
    }

    /** Whether {@code other} is the name of an engine of this generation. */
    public boolean sameGeneration(String other) {
        return other.equals(name) || other.startsWith(generation() + ".");
    }
}
