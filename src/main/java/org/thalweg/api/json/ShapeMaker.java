package org.thalweg.api.json;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.JsonSpan;
import org.thalweg.api.wire.PassesOver;
import org.thalweg.api.wire.WireDecimal;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.api.wire.WirePlanCorner;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.api.wire.Words;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/** Makes the shape of a wire record from its components, once, when the service starts. */
final class ShapeMaker {

    private static final Map<Type, Shape> PLAIN = Map.of(
            String.class, new Shapes.Text(),
            Double.class, new Shapes.AnyNumber(),
            Long.class, new Shapes.WholeNumber(),
            Boolean.class, new Shapes.YesOrNo(),
            JsonNode.class, new TreeShape(),
            JsonSpan.class, new SpanShape(),
            WireDecimal.class, new DecimalShape(),
            WireLength.class, new MeasureShapes.LengthShape(),
            WirePlanCorner.class, new MeasureShapes.PlanCornerShape(new MeasureShapes.LengthShape()),
            WirePoint.class, new MeasureShapes.PointShape(new MeasureShapes.LengthShape()));

    private ShapeMaker() {}

    static RecordShape record(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Map<String, RecordShape.Member> members = new LinkedHashMap<>();
        for (int i = 0; i < components.length; i++) {
            RecordComponent component = components[i];
            members.put(
                    component.getName(),
                    new RecordShape.Member(i, shape(component.getGenericType(), component.getAccessor())));
        }
        return new RecordShape(constructor(type, components), members, type.isAnnotationPresent(PassesOver.class));
    }

    private static Constructor<?> constructor(Class<?> type, RecordComponent[] components) {
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has this constructor", e);
        }
    }

    private static Shape shape(Type type, AnnotatedElement member) {
        Shape plain = PLAIN.get(type);
        if (plain != null) {
            return plain;
        }
        if (type == WirePitch.class) {
            return new MeasureShapes.PitchShape(record(MeasureShapes.RiseAndRun.class));
        }
        if (type instanceof ParameterizedType many) {
            return many(many, member);
        }
        Class<?> one = (Class<?>) type;
        return one.isEnum() ? word(one) : record(one);
    }

    private static Shape many(ParameterizedType type, AnnotatedElement member) {
        int most = Optional.ofNullable(member.getAnnotation(Size.class))
                .map(Size::max)
                .orElseThrow(() -> new IllegalStateException(member + " must say how many it may hold"));
        Type[] of = type.getActualTypeArguments();
        return type.getRawType() == List.class
                ? new Shapes.Many(shape(of[0], member), most)
                : new Shapes.Named(shape(of[1], member), most);
    }

    private static Shape word(Class<?> type) {
        boolean unit = type == LengthUnit.class || type == AreaUnit.class || type == MassUnit.class;
        Map<String, Object> words = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            words.put(Words.of((Enum<?>) constant), constant);
        }
        return new Shapes.Word(words, unit ? ReadingCode.BAD_UNIT : ReadingCode.UNKNOWN_VALUE);
    }
}
