package org.thalweg.wind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Parts of a line, in ascending order and apart from each other.
 *
 * @param spans each from, to
 */
record Spans(List<Span> spans) {

    /** From {@code from} to {@code to}, both ends included. */
    record Span(double from, double to) {}

    /** What any of them holds, whatever their order. */
    static Spans of(List<Span> any) {
        List<Span> sorted = new ArrayList<>(any);
        sorted.sort(Comparator.comparingDouble(Span::from));
        List<Span> joined = new ArrayList<>(sorted.size());
        for (Span span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && span.from <= joined.get(last).to) {
                joined.set(last, new Span(joined.get(last).from, Math.max(joined.get(last).to, span.to)));
            } else {
                joined.add(span);
            }
        }
        return new Spans(joined);
    }

    /** What both hold. */
    List<Span> and(Spans others) {
        List<Span> both = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < spans.size() && j < others.spans.size()) {
            Span one = spans.get(i);
            Span other = others.spans.get(j);
            double from = Math.max(one.from, other.from);
            double to = Math.min(one.to, other.to);
            if (from <= to) {
                both.add(new Span(from, to));
            }
            if (one.to < other.to) {
                i++;
            } else {
                j++;
            }
        }
        return both;
    }

    boolean holds(double place) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (spans.get(middle).to < place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low < spans.size() && spans.get(low).from <= place;
    }
}
