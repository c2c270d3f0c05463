package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.thalweg.roof.Comparison.Disagreement;
import org.thalweg.roof.Comparison.Why;

/**
 * Roofs that nobody here drew, out of open city models, held against areas, pitches and edge types that were computed from
 * the same surfaces in another way. Sources: see {@code ATTRIBUTION.md} beside the file.
 */
class RealBuildingsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    /** Every edge that is called something else, and why: the reasons are explained at {@link Why}. */
    private static final String LISTED = """
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000002182 | convex_break [0, 4] 0.167 m | ridge | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000002182 | convex_break [0, 4] 0.121 m | ridge | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000002182 | convex_break [0, 4] 2.152 m | ridge | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000002182 | convex_break [0, 4] 0.301 m | ridge | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004464 | eave [2] 0.277 m | angledEave | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004464 | eave [2] 0.260 m | angledEave | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004464 | high_edge [2] 3.553 m | angledRake | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004464 | high_edge [2] 0.153 m | angledRake | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | concave_break [0, 3] 2.409 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | rake [0] 2.168 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | high_edge [0] 2.293 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | rake [0] 2.193 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | high_edge [1] 2.690 m | angledRake | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004554 | high_edge [1] 0.565 m | angledRake | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004632 | concave_break [0, 1] 2.196 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004632 | concave_break [0, 1] 0.491 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000004632 | concave_break [0, 1] 0.133 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0603100000003875 | ridge [1, 10] 0.119 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0603100000003875 | ridge [10, 1] 0.648 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0603100000003875 | ridge [12, 2] 0.823 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0603100000003875 | valley [8, 7] 7.273 m | angledEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | concave_break [0, 5] 2.967 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | ridge [0, 1] 0.382 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | ridge [0, 1] 3.367 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | concave_break [4, 5] 1.344 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | concave_break [4, 5] 0.330 m | levelValley | NEARLY_FLAT
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018414 | ridge [0, 1] 0.129 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018428 | valley [0, 3] 5.132 m | angledEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018428 | hip [1, 3] 0.103 m | angledRake of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000018428 | ridge [3, 1] 2.240 m | highEave of one | APART
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000019606 | rake [2] 2.172 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000019606 | rake [2] 1.968 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000019606 | rake [2] 0.565 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000019606 | rake [2] 2.226 m | opening | RIM_OF_AN_OPENING
            lod2-3dbag-nl | NL.IMBAG.Pand.0503100000019606 | rake [2] 0.178 m | opening | RIM_OF_AN_OPENING
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | overlap [2, 5] 4.578 m | hip of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | overlap [2, 6] 4.578 m | hip of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | hip [5, 7] 4.578 m | hip of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | hip [6, 7] 4.578 m | hip of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | overlap [4, 5] 3.950 m | flush of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | overlap [4, 6] 3.950 m | flush of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | hip [5, 8] 3.950 m | flush of others | CROWDED
            lod2-denhaag-nl | GUID_39830C08-1DEC-4230-A5C1-9B1503CF0869 | hip [6, 8] 3.950 m | flush of others | CROWDED
            lod2-denhaag-nl | GUID_A26446DA-7B59-4594-B396-ACF005AD6C9B | concave_break [1, 0] 6.161 m | eave of one | APART
            lod2-rotterdam-nl | {5511227F-9711-45F2-9D1F-568D75CF41AE} | coplanar [0, 1] 2.256 m | eave of one | APART
            lod2-rotterdam-nl | {5511227F-9711-45F2-9D1F-568D75CF41AE} | coplanar [2, 1] 6.830 m | eave of one | APART
            lod2-rotterdam-nl | {5511227F-9711-45F2-9D1F-568D75CF41AE} | coplanar [2, 0] 1.741 m | eave of one | APART
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 0.488 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 2.267 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 2.268 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 0.487 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | high_edge [8] 4.591 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 1.081 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 1.185 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 1.186 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | rake [8] 1.081 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011530-cf0ab883-2798-437c-b530 | high_edge [8] 4.590 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | rake [0] 2.072 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | eave [0] 0.690 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | rake [0] 2.084 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | high_edge [0] 0.690 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | rake [0] 2.084 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | eave [0] 0.690 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | rake [0] 2.084 m | opening | RIM_OF_AN_OPENING
            lod2-vienna-at | UUID_LOD2_011978-eb576db6-7fb3-427d-afe3 | high_edge [0] 0.690 m | opening | RIM_OF_AN_OPENING
            lod2-zurich-ch | UUID_e02995c9-2a6f-4a76-93f5-f45d896bea93 | concave_break [5, 4] 0.533 m | eave of one | APART
            """;

    @Test
    void theBuildingsKeptHereAreReadWithNoRefusal() {
        Comparison comparison = kept();
        assertThat(comparison.buildings).isEqualTo(36);
        assertThat(comparison.read).isEqualTo(36);
        assertThat(comparison.refused).isEmpty();
    }

    @Test
    void theirAreasAndPitchesAgreeToThePrintedDigits() {
        Comparison comparison = kept();
        assertThat(comparison.planes).isEqualTo(242);
        assertThat(comparison.unlike).isEmpty();
        assertThat(comparison.worstPitchDeg).isLessThanOrEqualTo(0.0005 + 1e-9);
    }

    @Test
    void theirEdgesAgreeButForTheListed() {
        Comparison comparison = kept();
        assertThat(comparison.agreeing).isEqualTo(1397);
        assertThat(comparison.disagreements.stream().map(Disagreement::toString))
                .containsExactlyElementsOf(LISTED.lines().toList());
    }

    private static Comparison kept() {
        Comparison comparison = new Comparison();
        Building.in(KEPT, "").forEach(comparison::add);
        return comparison;
    }

    /**
     * Every building of a folder of folders, each with a file {@code roofs.jsonl}: run with
     * {@code -Dthalweg.buildings=FOLDER}. Prints the counts.
     */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyBuildingOfAFolderAgreesOrIsExplained() {
        Comparison comparison = new Comparison();
        Building.inFolder().forEach(comparison::add);
        System.out.println(comparison.counts());
        comparison.unlike.forEach(System.out::println);
        assertThat(comparison.buildings).isPositive();
        assertThat(comparison.disagreements.stream().filter(d -> d.why() == Why.UNEXPLAINED))
                .isEmpty();
    }
}
