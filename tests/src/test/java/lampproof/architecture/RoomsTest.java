package lampproof.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoomsTest {

    /** Each room and the rooms that it may use. Nothing may use the door, {@code cli}. */
    private static final List<Room> ROOMS = """
            fault       ->
            file        -> fault
            spec        -> file fault
            physics     -> fault
            design      -> spec physics fault
            quasistatic -> design physics fault
            event       -> quasistatic design physics fault
            dimming     -> quasistatic design fault
            prediction  -> event quasistatic design physics spec file fault
            choice      -> prediction quasistatic design physics spec file fault
            template    ->
            part        -> lint spec fault
            deck        -> template part prediction event quasistatic design physics spec file fault
            lint        -> fault
            simulator   -> fault
            waveform    -> fault
            measure     -> waveform fault
            capture     -> measure waveform physics spec fault
            compare     -> measure waveform prediction design quasistatic spec physics fault
            report      -> choice compare dimming capture measure waveform prediction quasistatic design spec file fault
            page        -> template choice compare dimming measure waveform prediction quasistatic design physics spec fault
            cli         -> page report choice compare dimming capture measure waveform simulator lint deck part prediction quasistatic design physics spec file fault
            """.lines().map(Room::of).toList();

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("lampproof");

    @Test
    void everySourceFileWasScanned() {
        assertThat(SourceTree.main().stream().map(RoomsTest::className).filter(name -> !name.endsWith("package-info")))
                .isNotEmpty()
                .allMatch(CLASSES::contain);
    }

    @Test
    void everyClassIsInAKnownRoom() {
        classes()
                .should()
                .resideInAnyPackage(packages(ROOMS.stream().map(Room::name)))
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomUsesOnlyTheRoomsThatItsArrowsName(Room room) {
        classes()
                .that()
                .resideInAPackage(packagesOf(room.name()))
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage("lampproof..")
                        .or(resideInAnyPackage(packages(Stream.concat(Stream.of(room.name()), room.uses().stream())))))
                .allowEmptyShould(true) // a room may still be planned
                .check(CLASSES);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching("lampproof.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyTheCommandLineTouchesTheStandardStreams() {
        noClasses()
                .should(ACCESS_STANDARD_STREAMS)
                .orShould()
                .accessField(System.class, "in")
                .check(allRoomsBut("cli"));
    }

    @Test
    void onlyTheCommandLineEndsTheProgram() {
        noClasses()
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(allRoomsBut("cli"));
    }

    private static JavaClasses allRoomsBut(String excluded) {
        return CLASSES.that(resideOutsideOfPackage(packagesOf(excluded)));
    }

    private static String[] packages(Stream<String> rooms) {
        return rooms.map(RoomsTest::packagesOf).toArray(String[]::new);
    }

    private static String packagesOf(String room) {
        return "lampproof." + room + "..";
    }

    private static String className(Path source) {
        String path = source.toString().replace('\\', '/');
        return path.substring(path.indexOf("/src/main/java/") + 15, path.length() - ".java".length())
                .replace('/', '.');
    }

    static List<Room> rooms() {
        return ROOMS;
    }

    /** A room and the rooms that it may use. */
    private record Room(String name, List<String> uses) {

        static Room of(String arrow) {
            List<String> words = List.of(arrow.replace("->", "").strip().split(" +", -1));
            return new Room(words.get(0), words.subList(1, words.size()));
        }

        @Override
        public String toString() {
            return name;
        }
    }
}
