package org.thalweg.api;

import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Who answers: the same engine gives the same answer to the same request, byte for byte. */
@Singleton
public class Engine {

    private final String name;

    /** This one, which was built with the pom's version. */
    public Engine() {
        this.name = "thalweg/" + version();
    }

    /** Not from the framework's configuration, which an operator may change and a batch does not start. */
    private static String version() {
        try (InputStream text = Objects.requireNonNull(Engine.class.getResourceAsStream("version.txt"))) {
            return new String(text.readAllBytes(), StandardCharsets.US_ASCII).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
