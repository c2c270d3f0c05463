package org.thalweg.units;

/**
 * Water that passes a place: how much of it in how long.
 *
 * @param cubicMetresPerSecond finite, 0 or more
 */
public record Flow(double cubicMetresPerSecond) implements Measure, Comparable<Flow> {

    public Flow {
        if (!(cubicMetresPerSecond >= 0 && Double.isFinite(cubicMetresPerSecond))) {
            throw new IllegalArgumentException("a flow (%s m3/s) must be 0 or more".formatted(cubicMetresPerSecond));
        }
    }

    public double in(FlowUnit unit) {
        return unit.from(this);
    }

    @Override
    public int compareTo(Flow other) {
        return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
    }
}
