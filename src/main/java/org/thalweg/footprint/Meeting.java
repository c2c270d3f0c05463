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
                meeting.exactly();
            }
            return meeting;
        }
        int turn = tally.exact(divisor(one, two, three).signum());
        if (turn == 0) {
            return null;
        }
        Meeting meeting = new Meeting(one, two, three, turn);
        meeting.exactly();
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

    private void exactly() {
        BigDecimal d = divisor(one, two, three).value();
        time = new BigDecimal(offsets(one, two, three)).divide(d, DIGITS).doubleValue();
        RootSum alongX = new RootSum()
                .add(minor(three.c(), two.b(), two.c(), three.b()), one)
                .add(minor(one.c(), three.b(), three.c(), one.b()), two)
                .add(minor(two.c(), one.b(), one.c(), two.b()), three);
        x = alongX.value().divide(d, DIGITS).doubleValue();
        RootSum alongY = new RootSum()
                .add(minor(two.c(), three.a(), three.c(), two.a()), one)
                .add(minor(three.c(), one.a(), one.c(), three.a()), two)
                .add(minor(one.c(), two.a(), two.c(), one.a()), three);
        y = alongY.value().divide(d, DIGITS).doubleValue();
        errorX = 0x1p-50 * Math.abs(x);
        errorY = 0x1p-50 * Math.abs(y);
        errorTime = 0x1p-50 * Math.abs(time);
    }

    private static BigInteger minor(long p, long q, long r, long s) {
        return BigInteger.valueOf(p)
                .multiply(BigInteger.valueOf(q))
                .subtract(BigInteger.valueOf(r).multiply(BigInteger.valueOf(s)));
    }

    private static RootSum divisor(EavePlane one, EavePlane two, EavePlane three) {
        return new RootSum()
                .add(BigInteger.valueOf(-two.turnTo(three)), one)
                .add(BigInteger.valueOf(one.turnTo(three)), two)
                .add(BigInteger.valueOf(-one.turnTo(two)), three);
    }

    /** K: det[a b c]. */
    private static BigInteger offsets(EavePlane one, EavePlane two, EavePlane three) {
        return BigInteger.valueOf(one.c())
                .multiply(BigInteger.valueOf(two.turnTo(three)))
                .subtract(BigInteger.valueOf(two.c()).multiply(BigInteger.valueOf(one.turnTo(three))))
                .add(BigInteger.valueOf(three.c()).multiply(BigInteger.valueOf(one.turnTo(two))));
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
        BigInteger k = offsets(one, two, three);
        BigInteger otherK = offsets(other.one, other.two, other.three).negate();
        RootSum difference = new RootSum()
                .add(otherK.multiply(BigInteger.valueOf(-two.turnTo(three))), one)
                .add(otherK.multiply(BigInteger.valueOf(one.turnTo(three))), two)
                .add(otherK.multiply(BigInteger.valueOf(-one.turnTo(two))), three)
                .add(k.multiply(BigInteger.valueOf(-other.two.turnTo(other.three))), other.one)
                .add(k.multiply(BigInteger.valueOf(other.one.turnTo(other.three))), other.two)
                .add(k.multiply(BigInteger.valueOf(-other.one.turnTo(other.two))), other.three);
        return tally.exact(difference.signum()) * turn * other.turn;
    }

    /** Before, at or after the start, when all eaves are at the walls; exact. */
    int sinceStart() {
        if (Math.abs(time) > errorTime) {
            return time > 0 ? 1 : -1;
        }
        return offsets(one, two, three).signum() * turn;
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
        RootSum rows = new RootSum()
                .add(offsets(two, three, plane).negate(), one)
                .add(offsets(one, three, plane), two)
                .add(offsets(one, two, plane).negate(), three)
                .add(offsets(one, two, three), plane);
        return -tally.exact(rows.signum()) * turn;
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
