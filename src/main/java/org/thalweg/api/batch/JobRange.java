package org.thalweg.api.batch;

import java.io.IOException;
import java.io.InputStream;

/**
 * Whole lines of a file.
 *
 * @param from where the first of them begins
 * @param to   where the last of them has ended
 */
record JobRange(JobFile file, long from, long to) {

    long size() {
        return to - from;
    }

    InputStream open() throws IOException {
        return file.open(from, to);
    }
}
