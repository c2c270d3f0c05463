package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.units.Count;

/** Single habits of the reader, on the made-up hut (see {@code cityjson-made-up/README.md}) and on the FZK-Haus. */
class CityJsonReaderTest {

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private static final Origin AT = Origin.REQUEST.at("roof").at("cityjson");

    private final ObjectNode hut = resource("/cityjson-made-up/hut.city.json");

    // What is read

    @Test
    void theFzkHausHasTheTwoPlanesOfItsFile() {
        List<PlaneOutline> planes = read(resource("/cityjson/fzk_haus.city.json"));

        assertThat(planes).extracting(PlaneOutline::id).containsExactly("r1", "r2");
        assertThat(planes.get(0).outline())
                .usingRecursiveComparison()
                .withComparatorForType(CityJsonReaderTest::withinATenthOfAMicrometre, Double.class)
                .isEqualTo(List.of(
                        new Point3(458912, 5438790, 120.018),
                        new Point3(458900, 5438790, 120.018),
                        new Point3(458900, 5438785, 117.131),
                        new Point3(458912, 5438785, 117.131)));
        assertThat(planes.get(1).outline())
                .usingRecursiveComparison()
                .withComparatorForType(CityJsonReaderTest::withinATenthOfAMicrometre, Double.class)
                .isEqualTo(List.of(
                        new Point3(458900, 5438790, 120.018),
                        new Point3(458912, 5438790, 120.018),
                        new Point3(458912, 5438795, 117.131),
                        new Point3(458900, 5438795, 117.131)));
    }

    /**
     * The file rounds to millimetres: it rises 2.887 m in 5 m, so 30.002° and 12 · √(5² + 2.887²) = 69.2835 m², where the
     * house itself has 30° and 69.282 m².
     */
    @Test
    void theFzkHausHasTheSlopeAndAreaThatItsMillimetresGive() {
        List<Point3> south =
                read(resource("/cityjson/fzk_haus.city.json")).get(0).outline();

        Vector3 along = south.get(1).minus(south.get(0));
        Vector3 down = south.get(2).minus(south.get(1));
        assertThat(along.cross(down).length()).isEqualTo(69.2835, offset(0.00005));
        assertThat(Math.toDegrees(Math.asin(-down.z() / down.length()))).isEqualTo(30.002, offset(0.0005));
    }

    @Test
    void aBuildingIsReadWithItsPartsInTheOrderOfTheDocument() {
        assertThat(read(hut)).extracting(PlaneOutline::id).containsExactly("r1", "r2", "porch roof");
    }

    @Test
    void aVertexIsStepsOnAGridThatStartsAtTheTranslation() {
        assertThat(read(hut).get(1).outline().get(0))
                .usingRecursiveComparison()
                .withComparatorForType(CityJsonReaderTest::withinATenthOfAMicrometre, Double.class)
                .isEqualTo(new Point3(400002, 5600000, 124));
    }

    @Test
    void withoutATransformVerticesAreCoordinates() {
        hut.remove("transform");
        assertThat(read(hut).get(1).outline().get(0)).isEqualTo(new Point3(2000, 0, 400));
    }

    @Test
    void aHoleIsAnOpening() {
        PlaneOutline west = read(hut).get(0);
        assertThat(west.openings()).hasSize(1);
        assertThat(west.openings().get(0).id()).isEqualTo("o1");
        assertThat(west.openings().get(0).outline()).hasSize(4);
        assertThat(read(hut).get(1).openings()).isEmpty();
    }

    @Test
    void aPlaneKnowsWhereItsFaceAndRingsStandInTheRequest() {
        PlaneOutline west = read(hut).get(0);
        String face = "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/5";
        assertThat(west.at()).hasToString(face);
        assertThat(west.outlineAt()).hasToString(face + "/0");
        assertThat(west.openings().get(0).outlineAt()).hasToString(face + "/1");
    }

    @Test
    void aFeatureTakesTheTransformOfItsFilesFirstLine() {
        assertThat(read(asFeature(hut))).hasSameSizeAs(read(hut));
        assertThat(read(asFeature(hut)).get(0).outline())
                .isEqualTo(read(hut).get(0).outline());
        assertThat(read(asFeature(hut)).get(0).at())
                .hasToString("#/roof/cityjson/feature/CityObjects/hut/geometry/0/boundaries/0/5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.0", "1.0.1", "1.1", "2.0", "2.0.1"})
    void theseVersionsAreRead(String version) {
        hut.put("version", version);
        assertThat(read(hut)).hasSize(3);
    }

    @Test
    void aPartCanBeChosenByItself() {
        assertThat(read(hut, "porch")).extracting(PlaneOutline::id).containsExactly("porch roof");
    }

    @Test
    void ofSeveralBuildingsTheChosenOneIsReadAndNoOther() {
        hut.withObject("/CityObjects").set("ruin", parse("{\"type\": \"Building\", \"geometry\": \"rubble\"}"));
        assertThat(read(hut, "hut")).hasSize(3);
    }

    @Test
    void theHighestLevelOfDetailTwoIsRead() {
        ArrayNode geometry = (ArrayNode) hut.at("/CityObjects/porch/geometry");
        ObjectNode finer = geometry.get(0).deepCopy();
        finer.put("lod", "2.2").set("boundaries", parse("[[[14, 15, 16]]]"));
        ObjectNode finest = geometry.get(0).deepCopy();
        finest.put("lod", "3").set("boundaries", parse("[[[14, 15, 17]]]"));
        geometry.insert(0, finer).add(finest);
        assertThat(read(hut, "porch").get(0).outline()).hasSize(3);
        assertThat(read(hut, "porch").get(0).at())
                .hasToString("#/roof/cityjson/CityObjects/porch/geometry/0/boundaries/0");
    }

    @Test
    void aLevelOfDetailMayBeANumberAsInVersionOne() {
        set("/CityObjects/porch/geometry/0/lod", "2.2");
        assertThat(read(hut, "porch")).hasSize(1);
    }

    @Test
    void ofOneLevelOfDetailTheLabelledGeometryIsRead() {
        ObjectNode bare = hut.at("/CityObjects/porch/geometry/0").deepCopy();
        bare.remove("semantics");
        ((ArrayNode) hut.at("/CityObjects/porch/geometry")).insert(0, bare);
        assertThat(read(hut, "porch").get(0).at().pointer()).contains("/geometry/1/");
    }

    @Test
    void solidsInASolidOfSolidsAreRead() {
        ObjectNode geometry = (ObjectNode) hut.at("/CityObjects/hut/geometry/0");
        geometry.put("type", "CompositeSolid").set("boundaries", listOf(geometry.get("boundaries")));
        geometry.withObject("/semantics").set("values", listOf(geometry.at("/semantics/values")));
        assertThat(read(hut).get(1).at()).hasToString("#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/0/6");
    }

    @Test
    void theShellOfAVoidInsideASolidIsNoRoof() {
        ((ArrayNode) hut.at("/CityObjects/hut/geometry/0/boundaries")).add(parse("[[[8, 5, 6, 9]]]"));
        ((ArrayNode) hut.at("/CityObjects/hut/geometry/0/semantics/values")).add(parse("[2]"));
        assertThat(read(hut)).hasSize(3);
    }

    @Test
    void withoutAnyRoofSurfaceTheUnlabelledFacesThatLookUpAreTheRoof() {
        remove("/CityObjects/hut/geometry/0", "semantics");
        remove("/CityObjects/porch/geometry/0", "semantics");
        assertThat(read(hut))
                .extracting(PlaneOutline::at)
                .map(Origin::pointer)
                .containsExactly(
                        "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/5",
                        "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/6",
                        "#/roof/cityjson/CityObjects/porch/geometry/0/boundaries/0");
    }

    @Test
    void faceThatLooksUpButIsLabelledOtherwiseIsNoRoof() {
        set("/CityObjects/hut/geometry/0/semantics/values", "[[0, 1, 1, 1, 1, null, 1]]");
        remove("/CityObjects/porch/geometry/0", "semantics");
        assertThat(read(hut))
                .extracting(PlaneOutline::at)
                .map(Origin::pointer)
                .containsExactly(
                        "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/5",
                        "#/roof/cityjson/CityObjects/porch/geometry/0/boundaries/0");
    }

    @Test
    void aFaceSteeperThanEightyDegreesIsAWallUnlessLabelledRoof() {
        set("/vertices/15", "[4050, 1000, 200]"); // falls 0.5 m in 0.05 m: 84.3°
        set("/vertices/16", "[4050, 4000, 200]");
        assertThat(read(hut, "porch")).hasSize(1);
        remove("/CityObjects/porch/geometry/0", "semantics");
        assertThat(refusal(hut, "porch").code()).isEqualTo(RefusalCode.CITYJSON_NO_ROOF);
    }

    @Test
    void aFaceThatHasShrunkToALineIsLeftOut() {
        set("/CityObjects/hut/geometry/0/boundaries/0/6", "[[8, 5, 8]]");
        assertThat(read(hut)).extracting(PlaneOutline::id).containsExactly("r1", "porch roof");
    }

    @Test
    void aNameSharedByTwoPlanesOrLikeANumberIsNotUsed() {
        set("/CityObjects/hut/geometry/0/semantics/surfaces/2/id", "\"both\"");
        set("/CityObjects/porch/geometry/0/semantics/surfaces/0/id", "\"r1\"");
        assertThat(read(hut)).extracting(PlaneOutline::id).containsExactly("r1", "r2", "r3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://www.opengis.net/def/crs/EPSG/0/7415",
                "urn:ogc:def:crs:EPSG::28992",
                "EPSG:2056",
                "http://www.opengis.net/def/crs/EPSG/6.12/3068",
                "urn:ogc:def:crs,crs:EPSG::25832,crs:EPSG::5783",
                "some town's own grid"
            })
    void referenceSystemsInMetresAreRead(String name) {
        hut.withObject("/metadata").put("referenceSystem", name);
        assertThat(read(hut)).hasSize(3);
    }

    /** 4326 and the like in degrees; 4978 geocentric; 2263 New York in feet; 8716 compound of feet. EPSG dataset v11.022. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://www.opengis.net/def/crs/EPSG/0/4326",
                "https://www.opengis.net/def/crs/EPSG/0/4979",
                "http://www.opengis.net/def/crs/EPSG/0/6697",
                "urn:ogc:def:crs:EPSG::4258",
                "EPSG:4269",
                "https://www.opengis.net/def/crs/EPSG/0/4978",
                "https://www.opengis.net/def/crs/EPSG/0/2263",
                "https://www.opengis.net/def/crs/EPSG/0/8716",
                "urn:ogc:def:crs,crs:EPSG::4258,crs:EPSG::5783",
                "http://www.opengis.net/def/crs/OGC/1.3/CRS84",
                "https://www.opengis.net/def/crs/OGC/0/CRS84h"
            })
    void referenceSystemsInOtherUnitsAreRefused(String name) {
        hut.withObject("/metadata").put("referenceSystem", name);
        Refusal refusal = refusal(hut);
        assertThat(refusal.code()).isEqualTo(RefusalCode.CITYJSON_UNREADABLE);
        assertThat(refusal.at()).hasToString("#/roof/cityjson/metadata/referenceSystem");
        assertThat(refusal.detail()).contains("projected system in metres");
    }

    // What is refused

    /** One place of the hut is set to something else; an empty value takes the place away. */
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(delimiter = '|', textBlock = """
        /type                                          |                       | CITYJSON_UNREADABLE     |
        /type                                          | "CityGML"             | CITYJSON_UNREADABLE     | /type
        /type                                          | "CityJSONFeature"     | CITYJSON_UNREADABLE     | /type
        /version                                       |                       | CITYJSON_UNREADABLE     |
        /version                                       | 2.0                   | CITYJSON_UNREADABLE     | /version
        /version                                       | "0.9"                 | CITYJSON_UNREADABLE     | /version
        /metadata                                      | "none"                | CITYJSON_UNREADABLE     | /metadata
        /metadata/referenceSystem                      | 25832                 | CITYJSON_UNREADABLE     | /metadata/referenceSystem
        /transform                                     | 1                     | CITYJSON_UNREADABLE     | /transform
        /transform/scale                               |                       | CITYJSON_UNREADABLE     | /transform
        /transform/scale                               | [1, 1]                | CITYJSON_UNREADABLE     | /transform/scale
        /transform/scale                               | [1, 0, 1]             | CITYJSON_UNREADABLE     | /transform/scale
        /transform/scale                               | [1, 1, "1"]           | CITYJSON_UNREADABLE     | /transform/scale/2
        /transform/scale                               | [1, NaN, 1]           | CITYJSON_UNREADABLE     | /transform/scale/1
        /transform/translate                           | [0, 1e999, 0]         | CITYJSON_UNREADABLE     | /transform/translate/1
        /transform/translate                           | [0, 1e300, 0]         | CITYJSON_UNREADABLE     | /vertices/4
        /vertices                                      |                       | CITYJSON_UNREADABLE     |
        /vertices                                      | {}                    | CITYJSON_UNREADABLE     | /vertices
        /vertices/4                                    | [0, 0]                | CITYJSON_UNREADABLE     | /vertices/4
        /vertices/4                                    | [0, 0, null]          | CITYJSON_UNREADABLE     | /vertices/4/2
        /vertices/4                                    | [0, 0, Infinity]      | CITYJSON_UNREADABLE     | /vertices/4/2
        /vertices/4                                    | [0, 0, 1000000001]    | CITYJSON_UNREADABLE     | /vertices/4
        /CityObjects                                   |                       | CITYJSON_UNREADABLE     |
        /CityObjects                                   | []                    | CITYJSON_UNREADABLE     | /CityObjects
        /CityObjects                                   | {}                    | CITYJSON_NO_ROOF        | /CityObjects
        /CityObjects/hut/type                          | "Bridge"              | CITYJSON_NO_ROOF        | /CityObjects
        /CityObjects/tree/type                         | "Building"            | CITYJSON_WHICH_BUILDING | /CityObjects
        /CityObjects/hut/children                      | "porch"               | CITYJSON_UNREADABLE     | /CityObjects/hut/children
        /CityObjects/hut/children                      | [7]                   | CITYJSON_UNREADABLE     | /CityObjects/hut/children/0
        /CityObjects/hut/children                      | ["cellar"]            | CITYJSON_UNREADABLE     | /CityObjects/hut/children/0
        /CityObjects/hut/children                      | ["porch", "porch"]    | CITYJSON_UNREADABLE     | /CityObjects/hut/children/1
        /CityObjects/hut/children                      | ["hut"]               | CITYJSON_UNREADABLE     | /CityObjects/hut/children/0
        /CityObjects/porch/children                    | ["hut"]               | CITYJSON_UNREADABLE     | /CityObjects/porch/children/0
        /CityObjects/porch                             | 7                     | CITYJSON_UNREADABLE     | /CityObjects/hut/children/0
        /CityObjects/hut/geometry                      | {}                    | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry
        /CityObjects/hut/geometry/0                    | []                    | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0
        /CityObjects/hut/geometry/0/type               |                       | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0
        /CityObjects/hut/geometry/0/lod                |                       | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0
        /CityObjects/hut/geometry/0/lod                | [2]                   | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/lod
        /CityObjects/hut/geometry/0/boundaries         |                       | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0
        /CityObjects/hut/geometry/0/type               | "MultiSurface"        | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values/0
        /CityObjects/hut/geometry/0/type               | "MultiSolid"          | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values/0/0
        /CityObjects/porch/geometry/0/type             | "Solid"               | CITYJSON_UNREADABLE     | /CityObjects/porch/geometry/0/semantics/values/0
        /CityObjects/hut/geometry/0/boundaries         | [7]                   | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0
        /CityObjects/hut/geometry/0/boundaries/0/6     | 7                     | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6
        /CityObjects/hut/geometry/0/boundaries/0/6     | []                    | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6
        /CityObjects/hut/geometry/0/boundaries/0/6     | [8, 5, 6, 9]          | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5]]              | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, [6]]]         | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/2
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, 18]]          | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/2
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, -1, 6]]          | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/1
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, 6.0]]         | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/2
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, 4294967302]]  | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/2
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, "6"]]         | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/0/2
        /CityObjects/hut/geometry/0/boundaries/0/6     | [[8, 5, 6], null]     | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/boundaries/0/6/1
        /CityObjects/hut/geometry/0/semantics          | []                    | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics
        /CityObjects/hut/geometry/0/semantics/surfaces |                       | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics
        /CityObjects/hut/geometry/0/semantics/surfaces | [1, 2, 3]             | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/surfaces/0
        /CityObjects/hut/geometry/0/semantics/surfaces | [{}, {}, {}]          | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/surfaces/0
        /CityObjects/hut/geometry/0/semantics/values   | {}                    | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values
        /CityObjects/hut/geometry/0/semantics/values   | [0, 1, 1, 1, 1, 2, 2] | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values
        /CityObjects/hut/geometry/0/semantics/values   | [[0, 1, 1, 1, 1, 2]]  | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values/0
        /CityObjects/hut/geometry/0/semantics/values   | [[0,1,1,1,1,2,3]]     | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values/0/6
        /CityObjects/hut/geometry/0/semantics/values   | [[0,1,1,1,1,2,"2"]]   | CITYJSON_UNREADABLE     | /CityObjects/hut/geometry/0/semantics/values/0/6
        """)
    void aDocumentBrokenInOnePlaceIsRefusedWithThatPlace(String place, String value, RefusalCode code, String pointer) {
        if (value == null) {
            int name = place.lastIndexOf('/');
            remove(place.substring(0, name), place.substring(name + 1));
        } else {
            set(place, value);
        }
        Refusal refusal = refusal(hut);
        assertThat(refusal.code()).as(refusal.detail()).isEqualTo(code);
        assertThat(refusal.at()).as(refusal.detail()).hasToString("#/roof/cityjson" + (pointer == null ? "" : pointer));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        null                                | #/roof/cityjson
        7                                   | #/roof/cityjson
        []                                  | #/roof/cityjson
        {}                                  | #/roof/cityjson
        {"feature": {}}                     | #/roof/cityjson
        {"feature": 7, "metadata": 7}       | #/roof/cityjson/metadata
        {"feature": {}, "metadata": {}}     | #/roof/cityjson/metadata
        """)
    void whatIsNoCityJsonAtAllIsRefused(String posted, String pointer) {
        Refusal refusal = refusal(parse(posted));
        assertThat(refusal.code()).isEqualTo(RefusalCode.CITYJSON_UNREADABLE);
        assertThat(refusal.at()).hasToString(pointer);
    }

    @Test
    void aFeatureOfAnotherTypeIsRefused() {
        ObjectNode both = asFeature(hut);
        both.withObject("/feature").put("type", "Feature");
        assertThat(refusal(both).at()).hasToString("#/roof/cityjson/feature/type");
    }

    @Test
    void nothingAtAllIsRefused() {
        assertThat(refusal(MissingNode.getInstance()).code()).isEqualTo(RefusalCode.CITYJSON_UNREADABLE);
    }

    @Test
    void whereSeveralBuildingsCouldBeMeantTheRefusalNamesSome() {
        for (int i = 1; i <= 6; i++) {
            hut.withObject("/CityObjects").set("hut " + i, parse("{\"type\": \"Building\"}"));
        }
        assertThat(refusal(hut).code()).isEqualTo(RefusalCode.CITYJSON_WHICH_BUILDING);
        assertThat(refusal(hut).detail())
                .isEqualTo("The document has 7 buildings; choose one with building: "
                        + "\"hut\", \"hut 1\", \"hut 2\", \"hut 3\", \"hut 4\", ….");
    }

    @ParameterizedTest
    @ValueSource(strings = {"barn", "tree", ""})
    void whatIsNoBuildingCannotBeChosen(String id) {
        Refusal refusal = refusal(hut, id);
        assertThat(refusal.code()).isEqualTo(RefusalCode.CITYJSON_WHICH_BUILDING);
        assertThat(refusal.detail()).contains("\"" + id + "\"").contains("\"hut\"");
    }

    @Test
    void anEndlessIdIsCutInTheRefusal() {
        assertThat(refusal(hut, "x".repeat(100_000)).detail()).hasSizeLessThan(200);
    }

    @Test
    void aBuildingWithoutALevelOfDetailTwoHasNoRoof() {
        set("/CityObjects/hut/geometry/0/lod", "\"1.3\"");
        set("/CityObjects/porch/geometry/0/lod", "\"3\"");
        assertThat(refusal(hut).code()).isEqualTo(RefusalCode.CITYJSON_NO_ROOF);
        assertThat(refusal(hut).at()).hasToString("#/roof/cityjson/CityObjects/hut");
    }

    @Test
    void everyBrokenPlaneIsNamedAtOnce() {
        set("/CityObjects/hut/geometry/0/boundaries/0/5", "[[4, 8, 99, 7]]");
        set("/CityObjects/hut/geometry/0/boundaries/0/6", "[[8, -5, 6, 9]]");
        assertThat(refused(hut, Optional.empty()).refusals())
                .extracting(refusal -> refusal.at().pointer())
                .containsExactly(
                        "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/5/0/2",
                        "#/roof/cityjson/CityObjects/hut/geometry/0/boundaries/0/6/0/1");
    }

    @Test
    void moreCornersThanTheLimitAreRefusedWithBothNumbers() {
        ArrayNode ring = (ArrayNode) hut.at("/CityObjects/porch/geometry/0/boundaries/0/0");
        while (ring.size() <= CityJsonReader.CORNERS_AT_MOST) {
            ring.add(14);
        }
        Refusal refusal = refusal(hut, "porch");
        assertThat(refusal.code()).isEqualTo(RefusalCode.CITYJSON_UNREADABLE);
        assertThat(refusal.actual()).contains(new Count(20_001));
        assertThat(refusal.limit()).contains(new Count(20_000));
    }

    @Test
    void morePlanesThanTheLimitAreRefusedWithBothNumbers() {
        ArrayNode faces = (ArrayNode) hut.at("/CityObjects/porch/geometry/0/boundaries");
        ArrayNode values = (ArrayNode) hut.at("/CityObjects/porch/geometry/0/semantics/values");
        while (faces.size() <= CityJsonReader.PLANES_AT_MOST) {
            faces.add(parse("[[14, 15, 16, 17]]"));
            values.add(0);
        }
        Refusal refusal = refusal(hut, "porch");
        assertThat(refusal.actual()).contains(new Count(2_001));
        assertThat(refusal.limit()).contains(new Count(2_000));
    }

    @Test
    void aLongLineOfChildrenIsNoTrouble() {
        ObjectNode objects = hut.withObject("/CityObjects");
        for (int i = 0; i < 50_000; i++) {
            objects.withObject("/porch" + (i == 0 ? "" : "-" + i))
                    .put("type", "BuildingPart")
                    .putArray("children")
                    .add("porch-" + (i + 1));
        }
        objects.withObject("/porch-50000").put("type", "BuildingPart");
        assertThat(read(hut)).hasSize(3);
    }

    private static List<PlaneOutline> read(JsonNode cityjson) {
        return CityJsonReader.read(cityjson, Optional.empty(), AT);
    }

    private static List<PlaneOutline> read(JsonNode cityjson, String building) {
        return CityJsonReader.read(cityjson, Optional.of(building), AT);
    }

    private static Refusal refusal(JsonNode cityjson) {
        return refused(cityjson, Optional.empty()).refusals().get(0);
    }

    private static Refusal refusal(JsonNode cityjson, String building) {
        return refused(cityjson, Optional.of(building)).refusals().get(0);
    }

    private static Refused refused(JsonNode cityjson, Optional<String> building) {
        Refused refused = catchThrowableOfType(Refused.class, () -> CityJsonReader.read(cityjson, building, AT));
        assertThat(refused).as("a refusal").isNotNull();
        return refused;
    }

    /** Sets the member or element at {@code place} of the hut. */
    private void set(String place, String value) {
        JsonPointer pointer = JsonPointer.compile(place);
        JsonNode holder = hut.at(pointer.head());
        if (holder instanceof ArrayNode list) {
            list.set(pointer.last().getMatchingIndex(), parse(value));
        } else {
            ((ObjectNode) holder).set(pointer.last().getMatchingProperty(), parse(value));
        }
    }

    private void remove(String holder, String name) {
        ((ObjectNode) hut.at(holder)).remove(name);
    }

    private static ObjectNode asFeature(ObjectNode document) {
        ObjectNode both = JSON.createObjectNode();
        both.putObject("metadata")
                .put("type", "CityJSON")
                .put("version", "2.0")
                .set("transform", document.get("transform"));
        both.putObject("feature")
                .put("type", "CityJSONFeature")
                .put("id", "hut")
                .<ObjectNode>set("CityObjects", document.get("CityObjects"))
                .set("vertices", document.get("vertices"));
        return both;
    }

    private static ArrayNode listOf(JsonNode only) {
        return JSON.createArrayNode().add(only);
    }

    private static JsonNode parse(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }

    private static ObjectNode resource(String name) {
        try (InputStream in = Objects.requireNonNull(CityJsonReaderTest.class.getResourceAsStream(name), name)) {
            return (ObjectNode) JSON.readTree(in);
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static int withinATenthOfAMicrometre(double a, double b) {
        return Math.abs(a - b) <= 1e-7 ? 0 : Double.compare(a, b);
    }
}
