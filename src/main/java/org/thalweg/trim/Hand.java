package org.thalweg.trim;

/** One of two sides that mirror each other. */
public enum Hand {
    LEFT,
    RIGHT;

    Hand other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
