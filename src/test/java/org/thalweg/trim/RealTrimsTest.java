package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.thalweg.finding.Refused;
import org.thalweg.roof.Building;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.trim.CutEnds.Arm;

/** Trims of roofs that nobody here drew, out of open city models. Sources: see {@code ATTRIBUTION.md} beside the file. */
class RealTrimsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    /** What was seen on a run over many buildings. */
    private static final class Tally {

        private int buildings;
        private int edges;
        private int trims;
        private int pieces;
        private int mitres;
        private int withoutMate;
        private double worst;
        private final Map<String, Integer> findings = new TreeMap<>();
        private final Map<String, Integer> ends = new TreeMap<>();

        void hold(Building building) {
            Roof roof;
            try {
                roof = Roofs.read(building.survey());
            } catch (Refused e) {
                return;
            }
            buildings++;
            edges += (int) roof.edges().stream()
                    .filter(edge -> Family.of(edge.kind()).isPresent())
                    .count();
            List<Trim> laid = Trims.on(roof, TrimJobs.usual()).layOut();
            for (Trim trim : laid) {
                trims++;
                pieces += trim.pieces().size();
                trim.findings().forEach(f -> findings.merge(f.code().name(), 1, Integer::sum));
                TrimLawsTest.assertHolds(trim);
                TrimBlankTest.assertHolds(trim);
                for (Arm arm : CutEnds.arms(trim)) {
                    ends.merge(trim.edge().kind() + " " + arm.meeting().how(), 1, Integer::sum);
                    mitred(arm, laid);
                }
            }
        }

        /**
         * A mitre has two sides, and legs next to the bend are cut on one line. Left out: faces all but in one, and the step of a
         * pitch break, which lies in no face.
         */
        private void mitred(Arm arm, List<Trim> laid) {
            if (!arm.mitred()) {
                return;
            }
            mitres++;
            Optional<Arm> met = CutEnds.met(arm, laid);
            if (met.isEmpty()) {
                withoutMate++;
            } else if (CutEnds.facesMeet(arm, met.get()) && !step(arm)) {
                worst = Math.max(worst, CutEnds.outOfLine(arm, met.get()));
            }
        }

        private static boolean step(Arm arm) {
            return arm.trim().edge().kind() == EdgeKind.PITCH_BREAK && arm.beyond();
        }

        @Override
        public String toString() {
            return "buildings %d, edges %d, trims %d, pieces %d, mitres %d (without mate %d, out of line by %.1e m), findings %s, ends %s"
                    .formatted(buildings, edges, trims, pieces, mitres, withoutMate, worst, findings, ends);
        }
    }

    @Test
    void everyEdgeOfTheBuildingsKeptHereIsTrimmed() {
        Tally tally = new Tally();
        Building.in(KEPT, "").forEach(tally::hold);
        assertThat(tally.buildings).isEqualTo(36);
        assertThat(tally.trims).isEqualTo(tally.edges).isGreaterThan(500);
        assertThat(tally.mitres).isGreaterThan(1_000);
        assertThat(tally.withoutMate).as(tally.toString()).isZero();
        assertThat(tally.worst).isLessThan(1e-9);
    }

    /** Every building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. Prints the counts. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyEdgeOfEveryBuildingOfAFolderIsTrimmed() {
        Tally tally = new Tally();
        Building.inFolder().forEach(tally::hold);
        System.out.println(tally);
        assertThat(tally.trims).isEqualTo(tally.edges).isPositive();
        assertThat(tally.withoutMate).isZero();
        assertThat(tally.worst).isLessThan(1e-9);
    }
}
