package org.thalweg.api.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.thalweg.api.Limits;

/** What one stage of reading finds wrong: the first of them in full, the rest counted. */
public final class Faults {

    private final List<Fault> first = new ArrayList<>();
    private int count;

    public static Faults none() {
        return new Faults();
    }

    public static Faults of(Fault fault) {
        Faults faults = new Faults();
        faults.add(() -> fault);
        return faults;
    }

    /** Adds one; it is only put into words while there is room, because a hostile body has faults by the million. */
    public void add(Supplier<Fault> fault) {
        count++;
        if (first.size() < Limits.ERRORS) {
            first.add(fault.get());
        }
    }

    public boolean isEmpty() {
        return count == 0;
    }

    public int count() {
        return count;
    }

    /** At most {@link Limits#ERRORS}, in the order they were found. */
    public List<Fault> first() {
        return List.copyOf(first);
    }

    /** Whether something was found wrong at {@code pointer}, or at what it lies in. */
    public boolean cover(String pointer) {
        return first.stream().anyMatch(fault -> covers(fault.pointer(), pointer));
    }

    private static boolean covers(String faulty, String pointer) {
        return pointer.startsWith(faulty)
                && (pointer.length() == faulty.length() || pointer.charAt(faulty.length()) == '/');
    }
}
