package org.thalweg;

import io.fabric8.kubernetes.api.model.KubernetesResource;
import io.fabric8.kubernetes.client.utils.KubernetesSerialization;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * One YAML document and what Kubernetes makes of it.
 *
 * <p>The models of a Kubernetes client forgive: a misspelt member goes to a side pocket of its object, a quoted number
 * is read as a number. A cluster refuses both or, worse, drops the first. So both are looked for here.
 *
 * @param file    where it was read
 * @param written the document as plain maps, lists and scalars; a member written twice was refused on reading
 * @param model   the same as the client's model
 */
public record Manifest(String file, Map<String, Object> written, KubernetesResource model) {

    private static final KubernetesSerialization CLIENT = new KubernetesSerialization();
    private static final String MODELS = "io.fabric8.kubernetes.api.model";

    /** Every document of every manifest in a folder, by file name. */
    public static List<Manifest> readAll(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !file.endsWith("kustomization.yaml"))
                    .sorted()
                    .flatMap(file -> read(file.getFileName().toString(), text(file)).stream())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Manifest> read(String file, String yaml) {
        return documents(yaml).stream()
                .map(written -> new Manifest(file, written, CLIENT.convertValue(written, KubernetesResource.class)))
                .toList();
    }

    /** Every document of a stream, as the YAML says it and nothing more. */
    @SuppressWarnings("unchecked")
    public static List<Map<String, Object>> documents(String yaml) {
        Load strict =
                new Load(LoadSettings.builder().setAllowDuplicateKeys(false).build());
        return StreamSupport.stream(strict.loadAllFromString(yaml).spliterator(), false)
                .map(document -> (Map<String, Object>) document)
                .toList();
    }

    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The document as the model writes it again: differs from {@link #written} where a value had the wrong type. */
    Map<String, Object> writtenAgain() {
        return documents(CLIENT.asJson(model)).get(0); // JSON is YAML too
    }

    /** Paths of members that Kubernetes has no name for, at any depth. */
    List<String> unknownMembers() {
        List<String> found = new ArrayList<>();
        collectUnknown("", model, found);
        return found;
    }

    private static void collectUnknown(String path, @Nullable Object value, List<String> found) {
        if (value instanceof Collection<?> list) {
            int index = 0;
            for (Object item : list) {
                collectUnknown(path + "/" + index++, item, found);
            }
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((name, item) -> collectUnknown(path + "/" + name, item, found));
        } else if (value != null && value.getClass().getName().startsWith(MODELS)) {
            getters(value).forEach(getter -> collectFrom(getter, path, value, found));
        }
    }

    private static void collectFrom(Method getter, String path, Object owner, List<String> found) {
        Object value = call(getter, owner);
        if (getter.getName().equals("getAdditionalProperties") && value instanceof Map<?, ?> unknown) {
            unknown.keySet().forEach(name -> found.add(path + "/" + name));
        } else {
            String name = getter.getName().substring("get".length());
            collectUnknown(path + "/" + Character.toLowerCase(name.charAt(0)) + name.substring(1), value, found);
        }
    }

    /** One per member; what an interface works out for every object, its plural for one, is no member. */
    private static List<Method> getters(Object model) {
        return Arrays.stream(model.getClass().getMethods())
                .filter(method -> method.getParameterCount() == 0)
                .filter(method -> method.getName().matches("get[A-Z].*"))
                .filter(method -> !method.isDefault() && method.getDeclaringClass() != Object.class)
                .sorted(Comparator.comparing(Method::getName))
                .toList();
    }

    private static @Nullable Object call(Method getter, Object owner) {
        try {
            return getter.invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("%s of %s".formatted(getter.getName(), owner.getClass()), e);
        }
    }

    /** Only the file, so that a failing case says where. */
    @Override
    public String toString() {
        return file;
    }
}
