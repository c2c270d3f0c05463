package org.thalweg.api.json;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.MessageInterpolator;
import jakarta.validation.Path;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.OneForm;
import org.thalweg.api.wire.TrimsOf;
import org.thalweg.api.wire.ValleyForm;
import org.thalweg.finding.Origin;

/** Holds a wire record against its annotations, and puts what they find into our own words and pointers. */
final class ShapeCheck {

    private final Validator validator;

    ShapeCheck(ValidatorFactory factory) {
        this.validator =
                factory.usingContext().messageInterpolator(new AsWritten()).getValidator();
    }

    /** The words are ours, the same in every language, so nothing is looked up or put in. */
    private static final class AsWritten implements MessageInterpolator {

        @Override
        public String interpolate(String message, Context context) {
            return message;
        }

        @Override
        public String interpolate(String message, Context context, Locale locale) {
            return message;
        }
    }

    /** Notes what is missing, out of range, too many or too long, but not again what was found while reading. */
    void check(Object request, Faults faults) {
        Set<ConstraintViolation<Object>> violations = validator.validate(request);
        violations.stream()
                .map(Violated::of)
                .filter(violated -> !faults.cover(violated.at.pointer()))
                .sorted(Comparator.comparing(violated -> violated.at.pointer()))
                .toList()
                .forEach(violated -> faults.add(violated::fault));
    }

    /**
     * One thing an annotation found.
     *
     * @param parent what the value is a member or an element of
     * @param at     the value
     * @param what   the annotation and the value
     */
    private record Violated(Origin parent, Origin at, ConstraintViolation<?> what) {

        static Violated of(ConstraintViolation<?> what) {
            Origin parent = Origin.REQUEST;
            Origin at = Origin.REQUEST;
            for (Path.Node node : what.getPropertyPath()) {
                if (node.isInIterable()) {
                    parent = at;
                    at = at.at(String.valueOf(node.getIndex() == null ? node.getKey() : node.getIndex()));
                }
                if (node.getKind() == ElementKind.PROPERTY) {
                    parent = at;
                    at = at.at(node.getName());
                }
            }
            return new Violated(parent, at, what);
        }

        Fault fault() {
            Annotation rule = what.getConstraintDescriptor().getAnnotation();
            if (rule instanceof NotNull) {
                return missing();
            }
            if (rule instanceof Size size) {
                return size(size);
            }
            if (rule instanceof Min min) {
                return range("at least", min.value());
            }
            if (rule instanceof Max max) {
                return range("at most", max.value());
            }
            if (rule instanceof OneForm) {
                return Fault.of(ReadingCode.ROOF_FORM, at.pointer(), what.getMessage());
            }
            if (rule instanceof ValleyForm || rule instanceof TrimsOf) {
                return Fault.of(ReadingCode.EITHER_OR, at.pointer(), what.getMessage());
            }
            throw new IllegalStateException("no words for " + rule);
        }

        private Fault missing() {
            String pointer = at.pointer();
            String name = pointer.substring(pointer.lastIndexOf('/') + 1);
            return Fault.of(
                    ReadingCode.MISSING_MEMBER, parent.pointer(), "%s is missing here.".formatted(Echo.of(name)));
        }

        private Fault range(String side, long limit) {
            Figure actual = Figure.of(((Number) what.getInvalidValue()).doubleValue());
            return Fault.of(
                    ReadingCode.OUT_OF_RANGE,
                    at.pointer(),
                    "This is %s; it must be %s %d.".formatted(actual.text(), side, limit),
                    actual,
                    Figure.of((double) limit));
        }

        private Fault size(Size size) {
            Object value = what.getInvalidValue();
            return value instanceof String text
                    ? size(text.length(), size, "character", ReadingCode.TOO_SHORT, ReadingCode.TOO_LONG)
                    : size(count(value), size, "1", ReadingCode.TOO_FEW, ReadingCode.TOO_MANY);
        }

        private Fault size(int actual, Size size, String unit, ReadingCode below, ReadingCode above) {
            boolean few = actual < size.min();
            int limit = few ? size.min() : size.max();
            String counted = unit.equals("1") ? "entries" : "characters";
            return Fault.of(
                    few ? below : above,
                    at.pointer(),
                    "This has %d %s; it needs %s %d.".formatted(actual, counted, few ? "at least" : "at most", limit),
                    new Figure(actual, unit),
                    new Figure(limit, unit));
        }

        private static int count(Object value) {
            return value instanceof Map<?, ?> map ? map.size() : ((Collection<?>) value).size();
        }
    }
}
