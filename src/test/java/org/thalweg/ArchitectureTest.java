package org.thalweg;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** One direction between the rooms, which one module cannot keep by itself, and what no room may hold. */
class ArchitectureTest {

    private static final String ALL_ABOVE = "every room above";
    /** Tables of published figures are read with it, and lists of an answer written: the one library of two rooms. */
    private static final String LISTS = "org.apache.commons.csv..";

    private static final String[] ROOF_AND_BELOW = {"units", "geometry", "finding", "reference", "roof"};

    /** What speaks JSON and HTTP, reads the command line or wires the service together. */
    private static final String[] WEB = {
        "com.fasterxml.jackson..",
        "io.micrometer..",
        "io.netty..",
        "io.quarkus..",
        "io.smallrye..",
        "io.vertx..",
        "jakarta..",
        "org.eclipse.microprofile..",
        "org.erdtman.jcs..",
        "org.jboss..",
        "picocli.."
    };

    /**
     * The house, one line a room, in the order a request walks through it. A room may use the rooms on its line, which
     * all stand above it, and the libraries on its line, which no other room may; a room not built yet may be here.
     */
    private static final List<Room> HOUSE = List.of(
            room("units"),
            room("geometry").uses("units").imports("org.locationtech.jts.."),
            room("finding").uses("units", "geometry"),
            room("reference").uses("units", "finding").imports(LISTS),
            room("roof").uses("units", "geometry", "finding", "reference"),
            room("footprint").uses(ROOF_AND_BELOW),
            room("wind").uses(ROOF_AND_BELOW),
            room("underlayment").uses(ROOF_AND_BELOW),
            room("panel").uses(ROOF_AND_BELOW),
            room("valley").uses(ROOF_AND_BELOW),
            room("trim").uses(ROOF_AND_BELOW),
            room("fastening").uses("units", "geometry", "finding", "reference", "roof", "wind", "panel", "valley"),
            room("sealing")
                    .uses("units", "geometry", "finding", "reference", "roof", "panel", "valley", "trim", "fastening"),
            room("drainage").uses(ROOF_AND_BELOW),
            room("movement").uses("units", "finding", "reference"),
            room("stock").uses("units", "finding", "geometry"),
            room("takeoff").uses(ALL_ABOVE),
            room("pricing").uses("units", "finding"),
            room("packet").uses(ALL_ABOVE),
            room("drawing")
                    .uses("units")
                    .imports("javax.xml.stream..", "org.apache.pdfbox..", "org.apache.fontbox..", LISTS),
            room("api").uses(ALL_ABOVE).imports(WEB));

    private static final JavaClasses BUILT = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.thalweg");

    static List<Room> house() {
        return HOUSE;
    }

    @Test
    void everyClassLivesInARoomOfTheHouse() {
        classes().should().resideInAnyPackage(packages(names(HOUSE))).check(BUILT);
    }

    @Test
    void everyLineNamesOnlyRoomsAboveIt() {
        for (Room room : HOUSE) {
            assertThat(above(room)).as(room.name()).containsAll(neighbours(room));
        }
    }

    @ParameterizedTest
    @MethodSource("house")
    void everyRoomUsesOnlyTheRoomsAndLibrariesOnItsLine(Room room) {
        check(classes()
                .that()
                .resideInAPackage(room.contents())
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(mayUse(room)));
    }

    // The next four hold whatever the lines say: a line is easily changed, a promise is not.

    @Test
    void nobodyImportsTheDoor() {
        check(outside("api").should().dependOnClassesThat().resideInAPackage("org.thalweg.api.."));
    }

    @Test
    void onlyTheDoorKnowsJsonHttpOrQuarkus() {
        check(outside("api").should().dependOnClassesThat().resideInAnyPackage(WEB));
    }

    @Test
    void onlyOneRoomKnowsEachLibrary() {
        check(outside("geometry").should().dependOnClassesThat().resideInAPackage("org.locationtech.."));
        check(outside("drawing").should().dependOnClassesThat().resideInAPackage("org.apache.pdfbox.."));
        assertThat(HOUSE.stream().flatMap(room -> room.libraries().stream()).filter(library -> !library.equals(LISTS)))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({"panel, valley, trim", "valley, trim, panel", "trim, panel, valley"})
    void panelValleyAndTrimDoNotKnowEachOther(String own, String left, String right) {
        check(noClasses()
                .that()
                .resideInAPackage(room(own).contents())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages(List.of(left, right))));
    }

    @Test
    void noPackageIsNamedForNothing() {
        check(noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..", "..manager..", "..impl.."));
    }

    @Test
    void everyPackageStartsWithAWordOnTheTradeAndIsMarkedForNulls() throws IOException {
        for (Path folder : foldersWithJava()) {
            assertThat(folder.resolve("package-info.java"))
                    .isRegularFile()
                    .content()
                    .startsWith("/**")
                    .contains("@NullMarked");
        }
    }

    @Test
    void whatEverybodySeesNobodyChanges() {
        check(fields().that()
                .arePublic()
                .should()
                .beFinal()
                .andShould()
                .notHaveRawType(describe("an array", JavaClass::isArray)));
    }

    @Test
    void noRoomLooksAtTheClock() {
        check(noClasses()
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethodWhere(target(name("now")).and(target(owner(resideInAPackage("java.time..")))))
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(Clock.class, Date.class, Calendar.class));
    }

    @Test
    void noRoomRollsDice() {
        check(noClasses()
                .should()
                .callMethod(Math.class, "random")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(RandomGenerator.class));
    }

    /**
     * @param name      the room's package under {@code org.thalweg}
     * @param uses      rooms it may import
     * @param libraries packages outside of the house it may import
     */
    private record Room(String name, List<String> uses, List<String> libraries) {

        Room uses(String... rooms) {
            return new Room(name, List.of(rooms), libraries);
        }

        Room imports(String... packages) {
            return new Room(name, uses, List.of(packages));
        }

        String contents() {
            return "org.thalweg." + name + "..";
        }

        /** Only the name, so that a failing case says which. */
        @Override
        public String toString() {
            return name;
        }
    }

    private static Room room(String name) {
        return new Room(name, List.of(), List.of());
    }

    private static List<String> names(List<Room> rooms) {
        return rooms.stream().map(Room::name).toList();
    }

    private static List<String> above(Room room) {
        return names(HOUSE.subList(0, HOUSE.indexOf(room)));
    }

    private static List<String> neighbours(Room room) {
        return room.uses().contains(ALL_ABOVE) ? above(room) : room.uses();
    }

    /** Itself, the rooms and libraries on its line, the language and its null marks. */
    private static String[] mayUse(Room room) {
        return Stream.of(
                        Stream.of(room.contents(), "java..", "org.jspecify.."),
                        Stream.of(packages(neighbours(room))),
                        room.libraries().stream())
                .flatMap(allowed -> allowed)
                .toArray(String[]::new);
    }

    private static String[] packages(List<String> rooms) {
        return rooms.stream().map(name -> room(name).contents()).toArray(String[]::new);
    }

    private static GivenClassesConjunction outside(String room) {
        return noClasses().that().resideOutsideOfPackage(room(room).contents());
    }

    /** A rule also holds for a room that nobody has built yet. */
    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(BUILT);
    }

    private static List<Path> foldersWithJava() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .distinct()
                    .sorted()
                    .toList();
        }
    }
}
