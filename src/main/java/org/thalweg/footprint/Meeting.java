package org.thalweg.footprint;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * The one place where three planes meet, and when. Doubles come with proven bounds of their error and decide where they
 * can; where they cannot, determinants of whole numbers do: every question asked here is the sign of a {@link RootSum}.
 *
 * <p>Of three planes D = det[a b -speed] and K = det[a b c]; they meet at time K / D.
 */
final class Meeting {

    /** Eight times what the few roundings of one term can add up to. */
    static final double NOISE = 0x1p-49;

    private static final MathContext DIGITS = new MathContext(25);
    /** Places known worse than this, in steps of the grid, are worked out again with more digits. */
    private static final double BLURRED = 0x1p-9;

    private final EavePlane one;
    private final EavePlane two;
    private final EavePlane three;
    private final int turn;
    private double x;
    private double y;
    private double time;
    private double errorX;
    private double errorY;
    private double errorTime;

    private Meeting(EavePlane one, EavePlane two, EavePlane three, int turn) {
        this.one = one;
        this.two = two;
        this.three = three;
        this.turn = turn;
    }

    /** The same place whatever the order of the three, and known again as the same. */
    static @Nullable Meeting ordered(EavePlane one, EavePlane two, EavePlane three, Tally tally) {
        if (one.number() > two.number()) {
            return ordered(two, one, three, tally);
        }
        return two.number() > three.number()
                ? one.number() > three.number() ? of(three, one, two, tally) : of(one, three, two, tally)
                : of(one, two, three, tally);
    }

    /** Null if they never meet or always do. */
    static @Nullable Meeting of(EavePlane one, EavePlane two, EavePlane three, Tally tally) {
        double m23 = (double) two.turnTo(three);
        double m13 = (double) one.turnTo(three);
        double m12 = (double) one.turnTo(two);
        double d = -one.speed() * m23 + two.speed() * m13 - three.speed() * m12;
        double errorD =
                NOISE * (Math.abs(one.speed() * m23) + Math.abs(two.speed() * m13) + Math.abs(three.speed() * m12));
        if (Math.abs(d) > 4 * errorD) {
            Meeting meeting = new Meeting(one, two, three, d > 0 ? 1 : -1);
            meeting.roughly(d, errorD, m23, m13, m12);
            if (meeting.errorX + meeting.errorY > BLURRED) {
                meeting.exactly(tally);
            }
            return meeting;
        }
        int turn = tally.exact(divisor(one, two, three));
        if (turn == 0) {
            return null;
        }
        Meeting meeting = new Meeting(one, two, three, turn);
        meeting.exactly(tally);
        return meeting;
    }

    private void roughly(double d, double errorD, double m23, double m13, double m12) {
        double k = one.offset() * m23 - two.offset() * m13 + three.offset() * m12;
        double errorK =
                NOISE * (Math.abs(one.offset() * m23) + Math.abs(two.offset() * m13) + Math.abs(three.offset() * m12));
        double left = Math.abs(d) - errorD;
        time = k / d;
        errorTime = (errorK + Math.abs(time) * errorD) / left + NOISE * Math.abs(time);

        double[] sum = new double[2];
        tally(sum, one, two.offset(), three.b(), three.offset(), two.b(), -1);
        tally(sum, two, one.offset(), three.b(), three.offset(), one.b(), 1);
        tally(sum, three, one.offset(), two.b(), two.offset(), one.b(), -1);
        x = sum[0] / d;
        errorX = (sum[1] + Math.abs(x) * errorD) / left + NOISE * Math.abs(x);

        sum[0] = 0;
        sum[1] = 0;
        tally(sum, one, three.offset(), two.a(), two.offset(), three.a(), -1);
        tally(sum, two, three.offset(), one.a(), one.offset(), three.a(), 1);
        tally(sum, three, two.offset(), one.a(), one.offset(), two.a(), -1);
        y = sum[0] / d;
        errorY = (sum[1] + Math.abs(y) * errorD) / left + NOISE * Math.abs(y);
    }

    /** Adds sign · speed · (p·q - r·s) to a sum and what it may be wrong by to its error. */
    private static void tally(double[] sum, EavePlane plane, double p, long whole, double r, long other, int sign) {
        double speed = plane.speed();
        double q = (double) whole;
        double s = (double) other;
        sum[0] += sign * speed * (p * q - r * s);
        sum[1] += NOISE * speed * (Math.abs(p * q) + Math.abs(r * s));
    }

    private void exactly(Tally tally) {
        BigDecimal d = divisor(one, two, three).value().multiply(new BigDecimal(one.unit()));
        time = allOffsets(new RootSum(), BigInteger.ONE)
                .value()
                .divide(d, DIGITS)
                .doubleValue();
        RootSum alongX = new RootSum();
        alongX.add(whole(two.b()), one, three).add(whole(-three.b()), one, two);
        alongX.add(whole(three.b()), two, one).add(whole(-one.b()), two, three);
        alongX.add(whole(one.b()), three, two).add(whole(-two.b()), three, one);
        tally.weigh(alongX);
        x = alongX.value().divide(d, DIGITS).doubleValue();
        RootSum alongY = new RootSum();
        alongY.add(whole(three.a()), one, two).add(whole(-two.a()), one, three);
        alongY.add(whole(one.a()), two, three).add(whole(-three.a()), two, one);
        alongY.add(whole(two.a()), three, one).add(whole(-one.a()), three, two);
        tally.weigh(alongY);
        y = alongY.value().divide(d, DIGITS).doubleValue();
        errorX = 0x1p-50 * Math.abs(x);
        errorY = 0x1p-50 * Math.abs(y);
        errorTime = 0x1p-50 * Math.abs(time);
    }

    private static BigInteger whole(long number) {
        return BigInteger.valueOf(number);
    }

    private static RootSum divisor(EavePlane one, EavePlane two, EavePlane three) {
        return new RootSum()
                .add(whole(-two.turnTo(three)), one)
                .add(whole(one.turnTo(three)), two)
                .add(whole(-one.turnTo(two)), three);
    }

    private boolean shifted() {
        return one.shifted() || two.shifted() || three.shifted();
    }

    /** Adds K, in units, {@code count} times. */
    private RootSum allOffsets(RootSum sum, BigInteger count) {
        return sum.addOffset(count.multiply(whole(two.turnTo(three))), one)
                .addOffset(count.multiply(whole(-one.turnTo(three))), two)
                .addOffset(count.multiply(whole(one.turnTo(two))), three);
    }

    /** Adds det[a b c] of three planes, in units, times the speed of a fourth, added or taken off. */
    private static void add(RootSum sum, EavePlane speed, int sign, EavePlane p, EavePlane q, EavePlane r) {
        sum.add(whole(sign * q.turnTo(r)), speed, p);
        sum.add(whole(-sign * p.turnTo(r)), speed, q);
        sum.add(whole(sign * p.turnTo(q)), speed, r);
    }

    /** det[a b c], for planes that are not shifted. */
    private static BigInteger offsets(EavePlane one, EavePlane two, EavePlane three) {
        return whole(one.c())
                .multiply(whole(two.turnTo(three)))
                .subtract(whole(two.c()).multiply(whole(one.turnTo(three))))
                .add(whole(three.c()).multiply(whole(one.turnTo(two))));
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    double time() {
        return time;
    }

    double errorTime() {
        return errorTime;
    }

    double error() {
        return Math.max(errorX, errorY);
    }

    /** Before (below 0), at the same instant as, or after another meeting; exact. */
    int compareTime(Meeting other, Tally tally) {
        double apart = time - other.time;
        if (Math.abs(apart) > (errorTime + other.errorTime) * (1 + NOISE)) {
            return apart > 0 ? 1 : -1;
        }
        if (one == other.one && two == other.two && three == other.three) {
            return 0;
        }
        if (shifted() || other.shifted()) {
            return tally.exact(shiftedDifference(other)) * turn * other.turn;
        }
        BigInteger k = offsets(one, two, three);
        BigInteger otherK = offsets(other.one, other.two, other.three).negate();
        RootSum difference = new RootSum()
                .add(otherK.multiply(whole(-two.turnTo(three))), one)
                .add(otherK.multiply(whole(one.turnTo(three))), two)
                .add(otherK.multiply(whole(-one.turnTo(two))), three)
                .add(k.multiply(whole(-other.two.turnTo(other.three))), other.one)
                .add(k.multiply(whole(other.one.turnTo(other.three))), other.two)
                .add(k.multiply(whole(-other.one.turnTo(other.two))), other.three);
        return tally.exact(difference) * turn * other.turn;
    }

    /** K·D' - K'·D. */
    private RootSum shiftedDifference(Meeting other) {
        EavePlane[] mine = {one, two, three};
        EavePlane[] others = {other.one, other.two, other.three};
        long[] minors = {two.turnTo(three), -one.turnTo(three), one.turnTo(two)};
        long[] otherMinors = {other.two.turnTo(other.three), -other.one.turnTo(other.three), other.one.turnTo(other.two)
        };
        RootSum sum = new RootSum();
        for (int i = 0; i < mine.length; i++) {
            for (int k = 0; k < others.length; k++) {
                BigInteger count = whole(minors[i]).multiply(whole(otherMinors[k]));
                sum.add(count, mine[i], others[k]).add(count.negate(), others[k], mine[i]);
            }
        }
        return sum;
    }

    /** Before, at or after the start, when all eaves are at the walls; exact. */
    int sinceStart() {
        if (Math.abs(time) > errorTime) {
            return time > 0 ? 1 : -1;
        }
        return allOffsets(new RootSum(), BigInteger.ONE).signum() * turn;
    }

    /** Whether the eave of a plane has passed here (below 0), is just here, or is still to come; exact. */
    int side(EavePlane plane, Tally tally) {
        if (plane == one || plane == two || plane == three) {
            return 0;
        }
        double ax = plane.a() * x;
        double by = plane.b() * y;
        double st = plane.speed() * time;
        double ahead = ax + by - st - plane.offset();
        double error = (Math.abs(plane.a()) * errorX
                        + Math.abs(plane.b()) * errorY
                        + plane.speed() * errorTime
                        + NOISE * (Math.abs(ax) + Math.abs(by) + Math.abs(st) + Math.abs(plane.offset())))
                * (1 + NOISE);
        if (Math.abs(ahead) > error) {
            return ahead > 0 ? 1 : -1;
        }
        // The determinant of all four rows (a, b, -speed, c), by its third column.
        if (shifted() || plane.shifted()) {
            RootSum rows = new RootSum();
            add(rows, one, -1, two, three, plane);
            add(rows, two, 1, one, three, plane);
            add(rows, three, -1, one, two, plane);
            add(rows, plane, 1, one, two, three);
            return -tally.exact(rows) * turn;
        }
        RootSum rows = new RootSum()
                .add(offsets(two, three, plane).negate(), one)
                .add(offsets(one, three, plane), two)
                .add(offsets(one, two, plane).negate(), three)
                .add(offsets(one, two, three), plane);
        return -tally.exact(rows) * turn;
    }

    /** One of the three that is not parallel to {@code plane}. */
    EavePlane across(EavePlane plane) {
        return plane.turnTo(one) != 0 ? one : plane.turnTo(two) != 0 ? two : three;
    }

    /** Whether another meeting of the same instant is at the same place; exact. */
    boolean samePlace(Meeting other, Tally tally) {
        if (Math.abs(x - other.x) > (errorX + other.errorX) * (1 + NOISE)
                || Math.abs(y - other.y) > (errorY + other.errorY) * (1 + NOISE)) {
            return false;
        }
        EavePlane plane = other.one;
        return side(plane, tally) == 0 && side(other.across(plane), tally) == 0;
    }
}
