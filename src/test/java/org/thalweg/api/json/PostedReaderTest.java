package org.thalweg.api.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import jakarta.validation.Validation;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.ProblemAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.LayoutRequest.LayingForm;
import org.thalweg.api.wire.LayoutRequest.Leads;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.StartBy;
import org.thalweg.api.wire.LayoutRequest.StartForm;
import org.thalweg.api.wire.LayoutRequest.TreatmentForm;
import org.thalweg.api.wire.NamedEdgeKind;
import org.thalweg.api.wire.RoofForm;
import org.thalweg.api.wire.RoofForm.NamedEdgeForm;
import org.thalweg.api.wire.RoofForm.OpeningForm;
import org.thalweg.api.wire.RoofForm.PlaneForm;
import org.thalweg.api.wire.RoofRequest;
import org.thalweg.api.wire.UnitsForm;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.api.wire.WirePoint;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

class PostedReaderTest {

    private static final PostedReader READER = new PostedReader(Validation.buildDefaultValidatorFactory());

    private static final String UNITS = "\"units\":{\"length\":\"in\",\"area\":\"ft2\",\"mass\":\"lb\"}";
    private static final String POINTS = "\"points\":{\"A\":[0,0,0],\"B\":[480,0,0],\"R\":[240,240,120]}";
    private static final String PLANES = "\"planes\":[{\"id\":\"south\",\"outline\":[\"A\",\"B\",\"R\"]}]";
    private static final String WALLS = "\"footprint\":{\"outline\":[[0,0],[9,0],[9,9]],\"pitch\":\"6:12\"}";
    private static final String ROOF = "\"roof\":{" + POINTS + "," + PLANES + "}";

    @Test
    void aRoofRequestIsReadMemberByMember() {
        RoofRequest request =
                roof("{" + UNITS + ",\"roof\":{\"points\":{\"A\":[0,\"12' 3 1/2\\\"\",-1.5],\"B\":[480,0,0],"
                        + "\"R\":[240,240,120]},\"planes\":[{\"id\":\"south\",\"outline\":[\"A\",\"B\",\"R\"],"
                        + "\"openings\":[{\"id\":\"chimney\",\"outline\":[\"A\",\"B\",\"R\"]}]}],"
                        + "\"edges\":[{\"between\":[\"A\",\"B\"],\"kind\":\"headWall\"}]},"
                        + "\"tolerance\":0.125,\"minimumSlope\":\"1/2:12\"}");
        assertThat(request)
                .isEqualTo(new RoofRequest(
                        new UnitsForm(LengthUnit.INCH, AreaUnit.SQUARE_FOOT, MassUnit.POUND),
                        new RoofForm(
                                Map.of(
                                        "A", new WirePoint(number(0), WireLength.of("12' 3 1/2\""), number(-1.5)),
                                        "B", new WirePoint(number(480), number(0), number(0)),
                                        "R", new WirePoint(number(240), number(240), number(120))),
                                List.of(new PlaneForm(
                                        "south",
                                        List.of("A", "B", "R"),
                                        List.of(new OpeningForm("chimney", List.of("A", "B", "R"))))),
                                List.of(new NamedEdgeForm(List.of("A", "B"), NamedEdgeKind.HEAD_WALL)),
                                null,
                                null,
                                null,
                                null),
                        number(0.125),
                        WirePitch.of("1/2:12")));
    }

    @Test
    void aPitchMayBeRiseAndRun() {
        RoofRequest request = roof("{" + UNITS + "," + ROOF + ",\"minimumSlope\":{\"run\":12,\"rise\":3}}");
        assertThat(request.minimumSlope()).isEqualTo(WirePitch.of(3, 12));
    }

    @Test
    void nullMeansAbsentEverywhere() {
        RoofRequest request = roof("{" + UNITS
                + ",\"roof\":{\"points\":{\"A\":[0,0,0],\"B\":[480,0,0],\"R\":[240,240,120]," + "\"gone\":null},"
                + PLANES + ",\"edges\":null,\"cityjson\":null},\"tolerance\":null,\"minimumSlope\":null}");
        assertThat(request.tolerance()).isNull();
        assertThat(request.minimumSlope()).isNull();
        assertThat(request.roof().edges()).isNull();
        assertThat(request.roof().cityjson()).isNull();
        assertThat(request.roof().points()).doesNotContainKey("gone");
    }

    @Test
    void aLayoutRequestIsReadMemberByMember() {
        Posted<?> posted = READER.read(
                bytes("{" + UNITS + "," + ROOF + ",\"panel\":{\"cover\":18,\"seamHeight\":1.75,\"girth\":21,"
                        + "\"metal\":\"galvanized-steel\",\"thickness\":0.0276,\"longest\":\"40 ft\",\"shortest\":6,"
                        + "\"orderIncrement\":0.25,\"narrowestRip\":4,\"leads\":\"left\",\"endLap\":12,\"stagger\":24,"
                        + "\"minimumSlope\":\"3:12\"},\"start\":{\"by\":\"leastWaste\"},"
                        + "\"edgeTreatments\":{\"eave\":{\"setback\":-1,\"hem\":1},\"A-B\":{\"turnUp\":1}},"
                        + "\"laying\":{\"south\":{\"fallDeg\":270,\"leads\":\"right\",\"start\":{\"by\":\"offset\","
                        + "\"offset\":3}}},\"include\":[\"offcuts\",\"world\"],\"tolerance\":\"1 mm\"}"),
                LayoutRequest.class);
        LayoutRequest request = (LayoutRequest) posted.request();
        assertThat(request.panel())
                .isEqualTo(new PanelForm(
                        number(18),
                        number(1.75),
                        number(21),
                        "galvanized-steel",
                        number(0.0276),
                        WireLength.of("40 ft"),
                        number(6),
                        number(0.25),
                        number(4),
                        Leads.LEFT,
                        number(12),
                        number(24),
                        WirePitch.of("3:12")));
        assertThat(request.start()).isEqualTo(new StartForm(StartBy.LEAST_WASTE, null));
        assertThat(request.edgeTreatments())
                .isEqualTo(Map.of(
                        "eave", new TreatmentForm(number(-1), number(1), null, null),
                        "A-B", new TreatmentForm(null, null, number(1), null)));
        assertThat(request.laying())
                .isEqualTo(
                        Map.of("south", new LayingForm(270.0, Leads.RIGHT, new StartForm(StartBy.OFFSET, number(3)))));
        assertThat(request.include()).containsExactly(Include.OFFCUTS, Include.WORLD);
        assertThat(request.tolerance()).isEqualTo(WireLength.of("1 mm"));
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        ProblemAnswer answer = refused("{\"units\":{\"length\":\"yd\",\"area\":\"ft2\"},\"rof\":1,\"roof\":{"
                + "\"points\":{\"A\":[0,0],\"B\":[480,0,0],\"R\":[240,240,120]},"
                + "\"planes\":[{\"id\":\"\",\"outline\":[\"A\",1,\"R\"],\"pitch\":\"6:12\"}]},\"tolerance\":true}");
        assertThat(answer.errors())
                .extracting(fault -> fault.code() + " " + fault.pointer())
                .containsExactly(
                        "BAD_UNIT #/units/length",
                        "UNKNOWN_MEMBER #/rof",
                        "TOO_FEW #/roof/points/A",
                        "WRONG_TYPE #/roof/planes/0/outline/1",
                        "UNKNOWN_MEMBER #/roof/planes/0/pitch",
                        "WRONG_TYPE #/tolerance",
                        "TOO_SHORT #/roof/planes/0/id",
                        "MISSING_MEMBER #/units");
        assertThat(answer.errorCount()).isEqualTo(8);
    }

    @Test
    void anUnknownMemberIsToldWithTheNamesThatAreKnown() {
        Fault fault = only("{" + UNITS + "," + ROOF + ",\"tolerence\":1}");
        assertThat(fault.code()).isEqualTo("UNKNOWN_MEMBER");
        assertThat(fault.pointer()).isEqualTo("#/tolerence");
        assertThat(fault.detail())
                .isEqualTo("\"tolerence\" is not known here. Did you mean \"tolerance\"?"
                        + " Known: units, roof, tolerance, minimumSlope.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{" + POINTS + "}",
                "{" + PLANES + "}",
                "{\"building\":\"b\"}",
                "{\"cityjson\":{}," + PLANES + "}",
                "{\"cityjson\":{}," + POINTS + "," + PLANES + "}",
                "{" + POINTS + "," + PLANES + ",\"building\":\"b\"}",
                "{\"cityjson\":{},\"edges\":[]}",
                "{" + WALLS + "," + PLANES + "}",
                "{" + WALLS + ",\"cityjson\":{}}",
                "{" + WALLS + ",\"building\":\"b\"}"
            })
    void aRoofComesInExactlyOneForm(String form) {
        Fault fault = only("{" + UNITS + ",\"roof\":" + form + "}");
        assertThat(fault.code()).isEqualTo("ROOF_FORM");
        assertThat(fault.pointer()).isEqualTo("#/roof");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{\"metadata\":{},\"feature\":{\"a\":[1,2.5,true,null,\"x\",12345678901234567890]}}"})
    void aCityJsonDocumentIsKeptAsItIs(String document) {
        RoofRequest request = roof("{" + UNITS + ",\"roof\":{\"cityjson\":" + document + ",\"building\":\"b\"}}");
        assertThat(request.roof().cityjson())
                .hasToString(document.replace("12345678901234567890", "1.2345678901234567E19"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"units\":{},\"units\":{}}|#/units",
                "{\"roof\":{\"points\":{\"A\":[0,0,0],\"A\":[1,1,1]}}}|#/roof/points/A",
                "{\"roof\":{\"cityjson\":{\"a\":{\"b\":1,\"b\":2}}}}|#/roof/cityjson/a/b"
            })
    void aSecondMemberOfTheSameNameIsRefused(String body, String pointer) {
        assertThat(refused(body).errors()).anySatisfy(fault -> assertThat(fault.code() + fault.pointer())
                .isEqualTo("DUPLICATE_MEMBER" + pointer));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"units\":\"in\"|WRONG_TYPE|#/units",
                "\"units\":[]|WRONG_TYPE|#/units",
                "\"units\":{\"length\":1,\"area\":\"ft2\",\"mass\":\"lb\"}|WRONG_TYPE|#/units/length",
                "\"units\":{\"length\":\"IN\",\"area\":\"ft2\",\"mass\":\"lb\"}|BAD_UNIT|#/units/length",
                "\"units\":{\"length\":\"\",\"area\":\"ft2\",\"mass\":\"lb\"}|BAD_UNIT|#/units/length"
            })
    void whatIsNoUnitIsRefused(String units, String code, String pointer) {
        Fault fault = only("{" + units + "," + ROOF + "}");
        assertThat(fault.code()).isEqualTo(code);
        assertThat(fault.pointer()).isEqualTo(pointer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"tolerance\":1e400|OUT_OF_RANGE|#/tolerance",
                "\"tolerance\":-1e400|OUT_OF_RANGE|#/tolerance",
                "\"tolerance\":[]|WRONG_TYPE|#/tolerance",
                "\"tolerance\":{\"value\":1}|WRONG_TYPE|#/tolerance",
                "\"tolerance\":\"12345678901234567890123456789012345678901\"|TOO_LONG|#/tolerance",
                "\"minimumSlope\":3|WRONG_TYPE|#/minimumSlope",
                "\"minimumSlope\":{\"rise\":3}|MISSING_MEMBER|#/minimumSlope",
                "\"minimumSlope\":{\"rise\":\"3\",\"run\":12}|WRONG_TYPE|#/minimumSlope/rise",
                "\"minimumSlope\":{\"rise\":3,\"run\":12,\"runs\":1}|UNKNOWN_MEMBER|#/minimumSlope/runs"
            })
    void whatIsNoLengthOrPitchIsRefused(String member, String code, String pointer) {
        ProblemAnswer answer = refused("{" + UNITS + "," + ROOF + "," + member + "}");
        assertThat(answer.errors().get(0).code()).isEqualTo(code);
        assertThat(answer.errors().get(0).pointer()).isEqualTo(pointer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "+1", "01", "1.", ".5", "0x10", "1_000", "1e", "'1'"})
    void whatIsNoJsonNumberIsNotJson(String number) {
        assertThat(unreadable("{\"tolerance\":" + number + "}").code()).isEqualTo("MALFORMED_JSON");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"NaN\"", "\"Infinity\"", "\"1e5\""})
    void aNumberInQuotesIsATapeStringAndForTheReaderToJudge(String number) {
        assertThat(roof("{" + UNITS + "," + ROOF + ",\"tolerance\":" + number + "}")
                        .tolerance())
                .isEqualTo(WireLength.of(number.replace("\"", "")));
    }

    @Test
    void missingMembersArePointedAtWhereTheyAreMissingFrom() {
        assertThat(refused("{}").errors())
                .extracting(Fault::code, Fault::pointer, Fault::detail)
                .containsExactly(
                        tuple("MISSING_MEMBER", "#", "\"roof\" is missing here."),
                        tuple("MISSING_MEMBER", "#", "\"units\" is missing here."));
    }

    @Test
    void aNumberOutsideItsRangeIsToldWithTheLimit() {
        String body = "{" + UNITS + "," + ROOF + ",\"panel\":{\"cover\":18},\"laying\":{\"south\":{\"fallDeg\":361}}}";
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> READER.read(bytes(body), LayoutRequest.class));
        Fault fault = refusal.answer().errors().get(0);
        assertThat(fault.code()).isEqualTo("OUT_OF_RANGE");
        assertThat(fault.pointer()).isEqualTo("#/laying/south/fallDeg");
        assertThat(fault.actual()).contains(Figure.of(361));
        assertThat(fault.limit()).contains(Figure.of(360));
        assertThat(fault.detail()).isEqualTo("This is 361; it must be at most 360.");
    }

    @Test
    void aWordThatIsNotKnownIsToldWithThoseThatAre() {
        Fault fault = only("{" + UNITS + ",\"roof\":{" + POINTS + "," + PLANES
                + ",\"edges\":[{\"between\":[\"A\",\"B\"],\"kind\":\"eave\"}]}}");
        assertThat(fault.code()).isEqualTo("UNKNOWN_VALUE");
        assertThat(fault.pointer()).isEqualTo("#/roof/edges/0/kind");
        assertThat(fault.detail())
                .isEqualTo("\"eave\" is not known here. Use one of sideWall, headWall, expansionJoint.");
    }

    @Test
    void aNullInAListIsNotAnAbsentEntry() {
        Fault fault = only("{" + UNITS + ",\"roof\":{" + POINTS
                + ",\"planes\":[{\"id\":\"south\",\"outline\":[\"A\",\"B\",null,\"R\"]}]}}");
        assertThat(fault.code()).isEqualTo("WRONG_TYPE");
        assertThat(fault.pointer()).isEqualTo("#/roof/planes/0/outline/2");
        assertThat(fault.detail()).isEqualTo("This is null where a string is needed.");
    }

    @Test
    void aListThatIsTooLongIsCountedToTheEndAndRefused() {
        String many = "\"A\",".repeat(Limits.CORNERS_OF_A_RING) + "\"A\"";
        Fault fault = only(
                "{" + UNITS + ",\"roof\":{" + POINTS + ",\"planes\":[{\"id\":\"s\",\"outline\":[" + many + "]}]}}");
        assertThat(fault.code()).isEqualTo("TOO_MANY");
        assertThat(fault.pointer()).isEqualTo("#/roof/planes/0/outline");
        assertThat(fault.actual()).contains(Figure.of(Limits.CORNERS_OF_A_RING + 1));
        assertThat(fault.limit()).contains(Figure.of(Limits.CORNERS_OF_A_RING));
    }

    @Test
    void aNameThatIsTooLongIsRefusedWhereItStands() {
        String name = "n".repeat(Limits.ID_LENGTH + 1);
        Fault fault = only("{" + UNITS + ",\"roof\":{\"points\":{\"A\":[0,0,0],\"B\":[480,0,0],\"R\":[240,240,120],\""
                + name + "\":[0,0,0]}," + PLANES + "}}");
        assertThat(fault.code()).isEqualTo("TOO_LONG");
        assertThat(fault.pointer()).isEqualTo("#/roof/points/" + name);
    }

    @Test
    void pointersEscapeWhatAPointerNeedsEscaped() {
        assertThat(only("{" + UNITS + "," + ROOF + ",\"a/b~c d\":1}").pointer()).isEqualTo("#/a~1b~0c d");
    }

    @Test
    void onlyTheFirstHundredFaultsAreToldAndTheRestAreCounted() {
        String wrong = "1,".repeat(999) + "1";
        ProblemAnswer answer = refused(
                "{" + UNITS + ",\"roof\":{" + POINTS + ",\"planes\":[{\"id\":\"s\",\"outline\":[" + wrong + "]}]}}");
        assertThat(answer.errors()).hasSize(Limits.ERRORS);
        assertThat(answer.errorCount()).isEqualTo(1000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\t "})
    void anEmptyBodyIsToldAsOne(String body) {
        assertThat(unreadable(body).code()).isEqualTo("EMPTY_BODY");
    }

    @Test
    void whereTheJsonBreaksIsToldByLineAndColumn() {
        Fault fault = unreadable("{\n  \"units\": {\n    \"length\": in\n  }\n}");
        assertThat(fault.code()).isEqualTo("MALFORMED_JSON");
        assertThat(fault.detail())
                .startsWith("This is not JSON at line 3, column 1")
                .contains("near \"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{} {}", "{},", "{}]", "{}x", "{}\u0000"})
    void nothingMayFollowTheRequest(String body) {
        assertThat(unreadable(body).code()).isEqualTo("MALFORMED_JSON");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\\ud800\"", "\"\\udc00 \"", "\"\\ud83dx\"", "\"\\ude00\\ud83d\""})
    void halfOfASurrogatePairIsNoText(String half) {
        assertThat(unreadable("{\"units\":{\"length\":" + half + "}}").code()).isEqualTo("MALFORMED_TEXT");
        assertThat(unreadable("{" + half + ":1}").code()).isEqualTo("MALFORMED_JSON");
        assertThat(unreadable("{\"roof\":{\"cityjson\":{\"a\":" + half + "}}}").code())
                .isEqualTo("MALFORMED_TEXT");
    }

    @Test
    void bytesThatAreNotUtf8AreRefusedWithTheirPlace() {
        byte[] body = bytes("{\"a\":\"?\"}");
        body[6] = (byte) 0xFF;
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> READER.read(body, RoofRequest.class));
        assertThat(refusal.answer().errors().get(0).code()).isEqualTo("MALFORMED_TEXT");
        assertThat(refusal.answer().detail()).contains("Byte 7 ");
    }

    @Test
    void utf16IsNotTaken() {
        byte[] body = ("{" + UNITS + "," + ROOF + "}").getBytes(StandardCharsets.UTF_16LE);
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> READER.read(body, RoofRequest.class));
        assertThat(refusal.answer().code()).isEqualTo("UNREADABLE");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        Posted<?> with = READER.read(bytes("\uFEFF{" + UNITS + "," + ROOF + "}"), RoofRequest.class);
        Posted<?> without = READER.read(bytes("{" + UNITS + "," + ROOF + "}"), RoofRequest.class);
        assertThat(with).isEqualTo(without);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":", "{\"roof\":{\"cityjson\":{\"a\":["})
    void depthBombsAreRefused(String step) {
        Fault fault = unreadable(step.repeat(100_000));
        assertThat(fault.code()).isEqualTo("TOO_DEEP");
        assertThat(fault.limit()).contains(Figure.of(Limits.NESTING));
    }

    @Test
    void aDocumentAsDeepAsTheLimitIsRead() {
        int inside = Limits.NESTING - 3;
        String deep = "[".repeat(inside) + "]".repeat(inside);
        String body = "{" + UNITS + ",\"roof\":{\"cityjson\":{\"a\":%s}}}";
        assertThat(roof(body.formatted(deep)).roof().cityjson()).isNotNull();
        assertThat(unreadable(body.formatted("[" + deep + "]")).code()).isEqualTo("TOO_DEEP");
    }

    @Test
    void aBodyOfTooManyTokensIsRefused() {
        Fault fault = unreadable("[" + "1,".repeat(Limits.TOKENS) + "1]");
        assertThat(fault.code()).isEqualTo("TOO_MANY");
        assertThat(fault.limit()).contains(Figure.of(Limits.TOKENS));
    }

    @Test
    void stringsNamesAndNumbersPastTheLimitOfReadingAreRefused() {
        assertThat(unreadable("{\"tolerance\":\"" + "x".repeat(Limits.STRING_LENGTH + 1) + "\"}")
                        .code())
                .isEqualTo("TOO_LONG");
        assertThat(unreadable("{\"" + "x".repeat(Limits.NAME_BYTES + 1) + "\":1}")
                        .code())
                .isEqualTo("TOO_LONG");
        assertThat(unreadable("{\"tolerance\":" + "1".repeat(Limits.NUMBER_LENGTH + 1) + "}")
                        .code())
                .isEqualTo("TOO_LONG");
        assertThat(unreadable("{\"tolerance\":0." + "1".repeat(Limits.NUMBER_LENGTH) + "}")
                        .code())
                .isEqualTo("TOO_LONG");
    }

    @Test
    void aBodyOverTheLimitIsRefusedWithoutReadingIt() {
        NoAnswer refusal = catchThrowableOfType(
                NoAnswer.class, () -> READER.read(new byte[Limits.BODY_BYTES + 1], RoofRequest.class));
        assertThat(refusal.answer().code()).isEqualTo("TOO_LARGE");
        assertThat(refusal.answer().status()).isEqualTo(413);
    }

    private static WireLength number(double number) {
        return WireLength.of(number);
    }

    private static RoofRequest roof(String body) {
        return (RoofRequest) READER.read(bytes(body), RoofRequest.class).request();
    }

    private static ProblemAnswer refused(String body) {
        NoAnswer refusal = catchThrowableOfType(NoAnswer.class, () -> READER.read(bytes(body), RoofRequest.class));
        assertThat(refusal).as("refused").isNotNull();
        return refusal.answer();
    }

    private static Fault only(String body) {
        ProblemAnswer answer = refused(body);
        assertThat(answer.code()).isEqualTo("INVALID");
        List<Fault> faults = answer.errors();
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static Fault unreadable(String body) {
        ProblemAnswer answer = refused(body);
        assertThat(answer.code()).isEqualTo("UNREADABLE");
        assertThat(answer.errors()).hasSize(1);
        return answer.errors().get(0);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
