package org.thalweg.api.problem;

import static java.util.stream.Collectors.joining;

import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What is served where: the framework refuses a method or a media type without saying which would do. */
@Singleton
public class Served {

    /**
     * One operation.
     *
     * @param address which paths reach it
     * @param method  its HTTP method
     * @param reads   media types of bodies it reads; none when it reads no body
     * @param answers media types it answers
     */
    private record Operation(Pattern address, String method, List<String> reads, List<String> answers) {}

    private final List<Operation> operations = new ArrayList<>();

    Served(BeanManager beans) {
        for (Bean<?> bean : beans.getBeans(Object.class, Any.Literal.INSTANCE)) {
            Class<?> resource = bean.getBeanClass();
            if (resource.isAnnotationPresent(Path.class)) {
                Stream.of(resource.getMethods()).forEach(method -> add(resource, method));
            }
        }
    }

    private void add(Class<?> resource, Method method) {
        for (Annotation annotation : method.getAnnotations()) {
            HttpMethod http = annotation.annotationType().getAnnotation(HttpMethod.class);
            if (http != null) {
                operations.add(new Operation(
                        address(resource, method),
                        http.value(),
                        types(either(resource, method, Consumes.class).map(Consumes::value)),
                        types(either(resource, method, Produces.class).map(Produces::value))));
            }
        }
    }

    private static <A extends Annotation> Optional<A> either(Class<?> resource, Method method, Class<A> annotation) {
        return Optional.ofNullable(method.getAnnotation(annotation))
                .or(() -> Optional.ofNullable(resource.getAnnotation(annotation)));
    }

    /** As callers name them, without which the service would rather give. */
    private static List<String> types(Optional<String[]> types) {
        return types.stream()
                .flatMap(Arrays::stream)
                .map(type -> type.split(";", 2)[0])
                .toList();
    }

    /** A path of the contract as a pattern: {@code {name}} stands for one step, whatever it is. */
    private static Pattern address(Class<?> resource, Method method) {
        String path = resource.getAnnotation(Path.class).value()
                + Optional.ofNullable(method.getAnnotation(Path.class))
                        .map(more -> "/" + more.value())
                        .orElse("");
        return Pattern.compile(Stream.of(path.split("/"))
                .filter(step -> !step.isEmpty())
                .map(step -> step.startsWith("{") ? "/[^/]+" : "/" + Pattern.quote(step))
                .collect(joining("", "", "/?")));
    }

    /** The methods {@code path} takes, as an Allow header lists them. */
    String methods(String path) {
        return list(path, operation -> Stream.of(operation.method));
    }

    /** The media types of bodies that {@code path} reads. */
    String reads(String path) {
        return list(path, operation -> operation.reads.stream());
    }

    /** The media types {@code path} answers in. */
    String answers(String path) {
        return list(path, operation -> operation.answers.stream());
    }

    private String list(String path, Function<Operation, Stream<String>> of) {
        return operations.stream()
                .filter(operation -> operation.address.matcher(path).matches())
                .flatMap(of)
                .distinct()
                .sorted()
                .collect(joining(", "));
    }
}
