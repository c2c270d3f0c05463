package org.thalweg.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An example's request and its answer as bytes, and the peer that reads and writes as much JSON plainly. */
final class Exchange {

    private final ObjectMapper mapper = new ObjectMapper();
    final byte[] request;
    private final byte[] answer;

    Exchange(String example) throws IOException {
        mapper.findAndRegisterModules();
        new AnswerMapper().customize(mapper);
        request = Files.readAllBytes(Path.of("openapi", "examples", example + ".request.json"));
        answer = Files.readAllBytes(Path.of("openapi", "examples", example + ".answer.json"));
    }

    /** The request read as a tree, the answer read as a tree and written again. */
    byte[] echo() {
        try {
            mapper.readTree(request);
            return write(mapper.readTree(answer));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] write(Object written) {
        try {
            return mapper.writeValueAsBytes(written);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
