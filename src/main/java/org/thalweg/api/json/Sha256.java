package org.thalweg.api.json;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The one digest there is. */
public final class Sha256 {

    private Sha256() {}

    /** A digest of nothing yet. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
