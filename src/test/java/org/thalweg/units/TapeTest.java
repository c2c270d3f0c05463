package org.thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tape marks, written and read. */
class TapeTest {

    private static final double HALF_A_SIXTEENTH = 0.0254 / 32;
    private static final double HALF_A_MILLIMETRE = 0.0005;
    private static final double ROUNDING_NOISE = 1e-8;

    /** Against the US Navy's and US Army's worked examples and the tie cases of the same file. */
    @ParameterizedTest(name = "{0} in is {2}")
    @CsvFileSource(resources = "/published/rounding-examples.csv", numLinesToSkip = 1)
    void marksAgreeWithPublishedRounding(
            double inches,
            String halfEven,
            String halfUp,
            String floor,
            String ceiling,
            String thirtySeconds,
            double millimetres) {
        Length length = Length.inches(inches);
        assertThat(Tape.mark(length, LengthUnit.FOOT)).isEqualTo(halfUp);
        assertThat(length.in(LengthUnit.MILLIMETRE)).isCloseTo(millimetres, within(0.005 + 1e-9));
    }

    /** NIST Handbook 44 (App. A, 10.3) would read the even mark: 1/8 and not 3/16. Ours is the Navy's rule. */
    @Test
    void halfwayIsTheMarkFurtherFromZeroAndNotTheEvenOne() {
        assertThat(Tape.mark(Length.inches(0.15625), LengthUnit.INCH)).isEqualTo("3/16\"");
        assertThat(Tape.mark(Length.inches(-0.15625), LengthUnit.INCH)).isEqualTo("-3/16\"");
        assertThat(Tape.mark(Length.millimetres(510.5), LengthUnit.MILLIMETRE)).isEqualTo("511 mm");
        assertThat(Tape.mark(Length.millimetres(-510.5), LengthUnit.METRE)).isEqualTo("-511 mm");
    }

    /** A square corner of 6:12 roofs under an 18 in panel rises 20.1246 in; a crew marks 20 1/8. [geometry] */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "20.1246, INCH, 20 1/8\"",
                "20.1246, FOOT, 1' 8 1/8\"",
                "20.1246, MILLIMETRE, 511 mm",
                "20.1246, CENTIMETRE, 511 mm",
                "20.1246, METRE, 511 mm",
                "-1.5, INCH, -1 1/2\"",
                "-1.5, FOOT, -0' 1 1/2\"",
                "0, INCH, 0\"",
                "0, FOOT, 0' 0\"",
                "0, METRE, 0 mm",
                "-0.01, INCH, 0\"",
                "-0.01, FOOT, 0' 0\"",
                "-0.01, MILLIMETRE, 0 mm",
                "0.5, INCH, 1/2\"",
                "12, INCH, 12\"",
                "12, FOOT, 1' 0\"",
                "11.96875, INCH, 12\"",
                "480.4375, INCH, 480 7/16\"",
                "480.4375, FOOT, 40' 0 7/16\""
            })
    void marksAreWrittenAsATapeIsRead(double inches, LengthUnit unit, String mark) {
        assertThat(Tape.mark(Length.inches(inches), unit)).isEqualTo(mark);
    }

    @Test
    void everySixteenthIsInLowestTerms() {
        assertThat(IntStream.rangeClosed(0, 16).mapToObj(n -> Tape.mark(Length.inches(n / 16.0), LengthUnit.INCH)))
                .containsExactly(
                        "0\"", "1/16\"", "1/8\"", "3/16\"", "1/4\"", "5/16\"", "3/8\"", "7/16\"", "1/2\"", "9/16\"",
                        "5/8\"", "11/16\"", "3/4\"", "13/16\"", "7/8\"", "15/16\"", "1\"");
    }

    @ParameterizedTest
    @EnumSource
    void theRuleSaysWhereHalfwayGoes(LengthUnit unit) {
        String step =
                unit == LengthUnit.INCH || unit == LengthUnit.FOOT ? "sixteenth of an inch" : "nearest millimetre";
        assertThat(Tape.rule(unit)).contains(step).contains("further from zero").endsWith(".");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "12' 3 1/2\", 3746.5",
                "12'-3 1/2\", 3746.5",
                "12'3 1/2\", 3746.5",
                "12′ 3 1/2″, 3746.5",
                "12', 3657.6",
                "12' 3\", 3733.8",
                "12' 3.5\", 3746.5",
                "12' 0\", 3657.6",
                "12' 1/2\", 3670.3",
                "0' 0 1/16\", 1.5875",
                "3 1/2\", 88.9",
                "3.5\", 88.9",
                "3 1/2 in, 88.9",
                "3in, 76.2",
                "3 in, 76.2",
                "1/2\", 12.7",
                "2 ft, 609.6",
                "2 ft 6 in, 762",
                "2ft 6in, 762",
                "2 ft-6 in, 762",
                "2.5 ft, 762",
                "2 1/2', 762",
                "1050 mm, 1050",
                "10.5 cm, 105",
                "1.05 m, 1050",
                "1.05m, 1050",
                "-1 1/2\", -38.1",
                "-1' 6\", -457.2",
                "-1'-6\", -457.2",
                "-511 mm, -511",
                "-0\", 0",
                "`  3   1/2  \"  `, 88.9",
                "00012', 3657.6"
            })
    void readsATapeMark(String text, double millimetres) {
        assertThat(Tape.read(text, LengthUnit.METRE))
                .hasValueSatisfying(length ->
                        assertThat(length.in(LengthUnit.MILLIMETRE)).isCloseTo(millimetres, within(ROUNDING_NOISE)));
    }

    @ParameterizedTest
    @CsvSource({
        "42, INCH, 1066.8",
        "3 1/2, INCH, 88.9",
        "1/2, FOOT, 152.4",
        "10.5, CENTIMETRE, 105",
        "3 1/2, MILLIMETRE, 3.5",
        "-2, METRE, -2000",
        "0, METRE, 0"
    })
    void aFigureWithoutAMarkIsInTheGivenUnit(String text, LengthUnit unit, double millimetres) {
        assertThat(Tape.read(text, unit)).hasValueSatisfying(length -> assertThat(LengthUnit.MILLIMETRE.round(length))
                .isEqualTo(millimetres));
    }

    @Test
    void feetAndInchesAreTheVeryLengthOfTheSameInches() {
        assertThat(Tape.read("12' 3 1/2\"", LengthUnit.MILLIMETRE)).contains(Length.inches(147.5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "'",
                "\"",
                "ft",
                "in",
                "mm",
                "NaN",
                "Infinity",
                "-Infinity",
                "1e400",
                "1e3",
                "1E3 mm",
                "0x10",
                "1/0",
                "0/0",
                "1/",
                "/2",
                "1//2",
                "1/2/3",
                "3 1/0\"",
                "31/2\"",
                "12' 31/2\"",
                "3 5/4\"",
                "2/2",
                ".5",
                "5.",
                "3.\"",
                ".5\"",
                "1.2.3",
                "3.5 1/2",
                "3 .5",
                "1,050 mm",
                "1 050 mm",
                "+3",
                "--3",
                "- 3",
                "3-",
                "3-1/2\"",
                "12' 12\"",
                "12' 15\"",
                "12.5' 3\"",
                "1/2' 3\"",
                "12' -3\"",
                "12'- 3\"",
                "12' - 3\"",
                "12'--3\"",
                "12'-",
                "12' 3",
                "12 3\"",
                "3\" 12'",
                "12' 3' 4\"",
                "3''",
                "3`",
                "3’",
                "3”",
                "3 In",
                "3 MM",
                "3 inches",
                "3 yd",
                "3 km",
                "3 m m",
                "3 mm 2",
                "2 ft 6 mm",
                "5 ft 2 ft",
                "٣",
                "３",
                "3½",
                "½",
                "Ⅻ",
                "二",
                "3\t1/2",
                "3\n",
                "\u00a03",
                "3\u0000",
                "1f",
                "1d",
                "1L",
                "1_000",
                "0b1",
                "true",
                "null",
                "[1]",
                "{}",
                "${7*7}",
                "'; DROP TABLE panels; --",
                "\ud83d\udccf",
                "\ud83d",
                "\u202e3"
            })
    void everythingElseIsNoLength(String text) {
        for (LengthUnit unit : LengthUnit.values()) {
            assertThat(Tape.read(text, unit)).as(unit.name()).isEmpty();
        }
    }

    @Test
    void fortyCharactersAreReadAndFortyOneAreNot() {
        assertThat(Tape.read("0".repeat(39) + "7", LengthUnit.INCH)).contains(Length.inches(7));
        assertThat(Tape.read("0".repeat(40) + "7", LengthUnit.INCH)).isEmpty();
        assertThat(Tape.read(" ".repeat(40) + "7", LengthUnit.INCH)).isEmpty();
    }

    @Test
    void theLongestTextsGiveFiniteLengthsOrNone() {
        assertThat(Tape.read("9".repeat(40), LengthUnit.METRE))
                .hasValueSatisfying(length -> assertThat(length.metres()).isFinite());
        assertThat(Tape.read("9".repeat(39) + "'", LengthUnit.METRE))
                .hasValueSatisfying(length -> assertThat(length.metres()).isFinite());
        assertThat(Tape.read("1".repeat(10_000_000), LengthUnit.METRE)).isEmpty();
    }

    @ParameterizedTest(name = "{0}, seed 51")
    @EnumSource
    void everyMarkReadsBackAsTheNearestMark(LengthUnit unit) {
        boolean inches = unit == LengthUnit.INCH || unit == LengthUnit.FOOT;
        double halfStep = inches ? HALF_A_SIXTEENTH : HALF_A_MILLIMETRE;
        SplittableRandom random = new SplittableRandom(51);
        for (int i = 0; i < 20_000; i++) {
            Length length = Length.metres(random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-4, 4)));
            String mark = Tape.mark(length, unit);
            Length read = Tape.read(mark, unit).orElseThrow();
            assertThat(read.metres()).as(mark).isCloseTo(length.metres(), within(halfStep + ROUNDING_NOISE));
            assertThat(Tape.mark(read, unit)).isEqualTo(mark);
        }
    }

    /** Whatever is thrown at it, it answers; texts made of the very characters marks are made of. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {61, 62, 63})
    void anyHeapOfMarksIsReadOrRefusedAndNeverFails(long seed) {
        String letters = "0123456789 /.-'\"′″ftinmc";
        SplittableRandom random = new SplittableRandom(seed);
        int read = 0;
        for (int i = 0; i < 100_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(1, 12); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            if (Tape.read(text.toString(), LengthUnit.INCH).isPresent()) {
                read++;
            }
        }
        assertThat(read).as("some of them are lengths").isGreaterThan(1_000);
    }

    @Test
    void noLocaleChangesAMark() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Tape.mark(Length.inches(20.125), LengthUnit.FOOT)).isEqualTo("1' 8 1/8\"");
            assertThat(Tape.read("3.5\"", LengthUnit.METRE)).contains(Length.inches(3.5));
        } finally {
            Locale.setDefault(before);
        }
    }
}
