package org.thalweg.api.json;

import jakarta.validation.ValidatorFactory;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.MessageBodyReader;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.InputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;

/** The one place where bodies are read: bytes in, a request of the right shape and its digest out. */
@Provider
@Consumes(MediaType.APPLICATION_JSON)
public class PostedReader implements MessageBodyReader<Posted<?>> {

    private final ConcurrentMap<Class<?>, StrictJson> readers = new ConcurrentHashMap<>();
    private final ShapeCheck shapeCheck;

    public PostedReader(ValidatorFactory factory) {
        this.shapeCheck = new ShapeCheck(factory);
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
        return type == Posted.class;
    }

    @Override
    public Posted<?> readFrom(
            Class<Posted<?>> type,
            Type genericType,
            Annotation[] annotations,
            MediaType mediaType,
            MultivaluedMap<String, String> headers,
            InputStream body) {
        Class<?> of = (Class<?>) ((ParameterizedType) genericType).getActualTypeArguments()[0];
        return read(bytes(body), of);
    }

    /** All of a body, or one byte more than is read. */
    public static byte[] bytes(InputStream body) {
        try {
            return body.readNBytes(Limits.BODY_BYTES + 1);
        } catch (IOException e) {
            throw cutOff();
        }
    }

    /** What to throw where a body ends before its end. */
    public static NoAnswer cutOff() {
        return NoAnswer.of(
                Problem.UNREADABLE,
                Fault.of(ReadingCode.CUT_OFF, "#", "The connection broke off before the body was complete."));
    }

    /** Reads a request of type {@code of}. */
    public Posted<?> read(byte[] body, Class<?> of) {
        Object request = bind(body, of);
        return new Posted<>(request, Canonical.digest(body, StrictJson.start(body)));
    }

    /** Reads a request of type {@code of} for a caller who needs no digest. */
    public Object bind(byte[] body, Class<?> of) {
        if (body.length > Limits.BODY_BYTES) {
            throw NoAnswer.tooLarge(OptionalLong.empty());
        }
        StrictJson.checkText(body);
        int start = StrictJson.start(body);
        Faults faults = Faults.none();
        Object request = readers.computeIfAbsent(of, StrictJson::new).read(body, start, faults);
        if (request != null) {
            shapeCheck.check(request, faults);
        }
        if (request == null || !faults.isEmpty()) {
            throw NoAnswer.of(Problem.INVALID, faults);
        }
        return request;
    }
}
