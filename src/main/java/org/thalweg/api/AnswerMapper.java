package org.thalweg.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import java.io.IOException;
import org.thalweg.api.wire.Words;

/** How answers become JSON: enums as the contract's words, absent members left out, numbers as short as they are. */
@Singleton
public class AnswerMapper implements ObjectMapperCustomizer {

    @Override
    public void customize(ObjectMapper mapper) {
        mapper.setSerializationInclusion(JsonInclude.Include.NON_ABSENT);
        mapper.getFactory().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER.mappedFeature());
        mapper.registerModule(new SimpleModule("words")
                .addSerializer(new WordWriter())
                .addSerializer(double.class, new NumberWriter())
                .addSerializer(Double.class, new NumberWriter()));
    }

    /** Writes an enum constant as callers know it. */
    private static final class WordWriter extends StdSerializer<Enum<?>> {

        private static final long serialVersionUID = 1L;

        WordWriter() {
            super(Enum.class, false);
        }

        @Override
        public void serialize(Enum<?> constant, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeString(Words.of(constant));
        }
    }

    /** Writes a whole number without a fraction: 480, not 480.0. */
    private static final class NumberWriter extends StdSerializer<Double> {

        private static final long serialVersionUID = 1L;

        /** Every whole number up to here is a double, and a double up to here has no exponent. */
        private static final double LARGEST_PLAIN = 1e15;

        NumberWriter() {
            super(Double.class);
        }

        @Override
        public void serialize(Double number, JsonGenerator json, SerializerProvider provider) throws IOException {
            double value = number;
            if (value == Math.rint(value) && Math.abs(value) < LARGEST_PLAIN) {
                json.writeNumber((long) value);
            } else {
                json.writeNumber(value);
            }
        }
    }
}
