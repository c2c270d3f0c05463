package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.validation.Validation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.thalweg.api.json.Posted;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyJobs;

/** Requests answered as the resources answer them, without HTTP. */
public final class Answered {

    private static final PostedReader READER = new PostedReader(Validation.buildDefaultValidatorFactory());
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static {
        MAPPER.findAndRegisterModules();
        new AnswerMapper().customize(MAPPER);
    }

    private Answered() {}

    /** The request of an example, by the name of its file. */
    public static String example(String name) {
        try {
            return Files.readString(Path.of("openapi", "examples", name + ".request.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static LayoutAnswer layout(String request) {
        Posted<LayoutRequest> posted = read(request, LayoutRequest.class);
        LayoutRequest asked = posted.request();
        LayoutCase read = LayoutReader.read(asked);
        return new LayoutWriter(asked.units().units())
                .answer(Layouts.layOut(read), read, asked, new Engine().name(), posted.digest());
    }

    public static ValleysAnswer valley(String request) {
        Posted<ValleyRequest> posted = read(request, ValleyRequest.class);
        ValleyRequest asked = posted.request();
        ValleyCase read = ValleyReader.read(asked);
        return new ValleyAloneWriter(asked.units().units())
                .answer(ValleyJobs.layOut(read), read, asked, new Engine().name(), posted.digest());
    }

    private static <T> Posted<T> read(String request, Class<T> kind) {
        try {
            Posted<?> posted = READER.read(request.getBytes(StandardCharsets.UTF_8), kind);
            return new Posted<>(kind.cast(posted.request()), posted.digest());
        } catch (NoAnswer refused) {
            throw new IllegalArgumentException(String.valueOf(refused.answer()), refused);
        }
    }

    /** An answer as callers see it. */
    public static JsonNode json(Object answer) {
        return MAPPER.valueToTree(answer);
    }
}
