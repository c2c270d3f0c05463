package org.thalweg.api.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.drawing.Inspection;
import org.thalweg.drawing.Paper;
import org.thalweg.drawing.Sheet;

/** What holds for every sheet of every job: it can be read, and all of it is on the paper. */
class SheetLawsTest {

    static List<Job> jobs() {
        return Jobs.all();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noTwoLinesOfLetteringMeet(Job job) {
        for (Sheet sheet : job.sheets()) {
            assertThat(Inspection.overlaps(sheet))
                    .as("%s: %s", job, sheet.title())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void nothingRunsOffThePaper(Job job) {
        for (Sheet sheet : job.sheets()) {
            assertThat(Inspection.astray(sheet))
                    .as("%s: %s", job, sheet.title())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void lettersAreLargeEnoughToRead(Job job) {
        for (Sheet sheet : job.sheets()) {
            assertThat(Inspection.tooSmall(sheet))
                    .as("%s: %s", job, sheet.title())
                    .isEmpty();
        }
    }

    /** The same job on the other paper. */
    @ParameterizedTest
    @MethodSource("jobs")
    void theOtherPaperHoldsItToo(Job job) {
        Paper usual = job.sheets().get(0).paper();
        Paper other = usual == Paper.A4 ? Paper.LETTER : Paper.A4;
        for (Sheet sheet : job.sheetsOn(Optional.of(other))) {
            assertThat(Inspection.overlaps(sheet))
                    .as("%s: %s", job, sheet.title())
                    .isEmpty();
            assertThat(Inspection.astray(sheet))
                    .as("%s: %s", job, sheet.title())
                    .isEmpty();
        }
    }
}
