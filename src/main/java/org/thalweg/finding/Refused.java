package org.thalweg.finding;

import java.util.List;

/** Thrown at the door when a request describes no roof; carries every refusal of the stage, never none. */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Refusal> refusals;

    public Refused(List<Refusal> refusals) {
        super(refusals.toString(), null, false, false);
        if (refusals.isEmpty()) {
            throw new IllegalArgumentException("a refusal needs a reason");
        }
        this.refusals = List.copyOf(refusals);
    }

    public Refused(Refusal refusal) {
        this(List.of(refusal));
    }

    public List<Refusal> refusals() {
        return refusals;
    }
}
