package lampproof.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The arrows of DEVELOPERS.md are those of the program, and each points up the page. */
class PackagesTest {

    private static final PackagePicture DRAWN =
            PackagePicture.read(SourceTree.top().resolve("DEVELOPERS.md"));

    private static final Map<String, String> ARROWS = Program.arrows();

    @Test
    void everySourceFileWasScanned() {
        Stream<String> sources =
                SourceTree.main().stream().map(SourceTree::classOf).filter(name -> !name.endsWith(".package-info"));
        assertThat(sources).isNotEmpty().allMatch(Program.names()::contains);
    }

    @Test
    void everyPackageIsDrawnInItsModule() {
        assertThat(DRAWN.places())
                .containsExactlyInAnyOrderElementsOf(SourceTree.main().stream()
                        .map(source -> SourceTree.moduleOf(source) + "/" + SourceTree.packageOf(source))
                        .distinct()
                        .toList());
    }

    @Test
    void everyArrowOfTheProgramIsDrawn() {
        Map<String, String> missing = new TreeMap<>(ARROWS);
        missing.keySet().removeAll(DRAWN.arrows());
        assertThat(missing)
                .as("arrows that DEVELOPERS.md lacks, each with a use")
                .isEmpty();
    }

    @Test
    void everyDrawnArrowIsUsed() {
        List<String> unused = new ArrayList<>(DRAWN.arrows());
        unused.removeAll(ARROWS.keySet());
        assertThat(unused).as("arrows of DEVELOPERS.md that no class uses").isEmpty();
    }

    @Test
    void everyArrowPointsUp() {
        List<String> others = new ArrayList<>(DRAWN.arrows());
        others.removeIf(DRAWN::pointsUp);
        assertThat(others).as("arrows of DEVELOPERS.md that point down").isEmpty();
    }

    @Test
    void onlyTheCommandLineTouchesTheStandardStreams() {
        noClasses()
                .should(ACCESS_STANDARD_STREAMS)
                .orShould()
                .accessField(System.class, "in")
                .check(allButTheCommandLine());
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
                .check(allButTheCommandLine());
    }

    private static JavaClasses allButTheCommandLine() {
        return Program.CLASSES.that(resideOutsideOfPackage("lampproof.cli.."));
    }
}
