package lampproof.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesTest {

    private static final Pattern PUBLIC_TYPE =
            Pattern.compile("^public .*\\b(class|record|interface|enum) ", Pattern.MULTILINE);

    @TempDir
    private Path folder;

    @Test
    void everyJavaFileIsTheSourceOfAModule() {
        assertThat(SourceTree.main()).isNotEmpty();
        assertThat(SourceTree.test()).isNotEmpty();
        List<Path> others = new ArrayList<>(SourceTree.all());
        others.removeAll(SourceTree.main());
        others.removeAll(SourceTree.test());
        assertThat(others)
                .as("Java files outside src/main/java and src/test/java")
                .isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        assertThat(SourceTree.main().stream().map(Path::getParent).distinct())
                .isNotEmpty()
                .allSatisfy(folder -> assertThat(folder.resolve("package-info.java"))
                        .content()
                        .contains("/**"));
    }

    @Test
    void everyPublicTypeAndNumberIsDocumented() {
        JavadocRule rule = new JavadocRule();
        assertThat(rule.faults(SourceTree.main())).isEmpty();
        assertThat(rule.types())
                .isPositive()
                .isEqualTo(SourceTree.main().stream()
                        .filter(SourcesTest::holdsPublicType)
                        .count());
    }

    @Test
    void everyClassAndMethodIsNamedAfterWhatItIs() {
        assertThat(new NameRule().faults(SourceTree.main())).isEmpty();
        assertThat(new NameRule().faults(SourceTree.test())).isEmpty();
    }

    @Test
    void numbersBecomeTextInOnePackage() {
        List<Path> others = SourceTree.main().stream()
                .filter(file -> !file.getParent().endsWith("lampproof/unit"))
                .toList();
        assertThat(others).hasSizeLessThan(SourceTree.main().size());
        assertThat(new NumberFormatRule().faults(others)).isEmpty();
    }

    @Test
    void noTestIsSwitchedOff() {
        assertThat(new NoDisabledTestRule().faults(SourceTree.test())).isEmpty();
    }

    @Test
    void missingDocumentationIsFound() throws IOException {
        List<String> faults = new JavadocRule().faults(source("""
                public record Bus(double peak) {
                    /** The mean [V] of two values. */
                    public static double mean(double a, double b) {
                        return (a + b) / 2;
                    }
                    /**
                     * Scales.
                     *
                     * @param factor how much, 0 to 1 [0, 1]
                     * @return the scaled peak [V]
                     */
                    public double scaled(double factor) {
                        return factor * peak;
                    }
                    /** The ripple. */
                    public double ripple() {
                        return 0;
                    }
                }
                """));
        assertThat(faults)
                .containsExactly(
                        "Sample.java:1: Bus has no Javadoc",
                        "Sample.java:1: peak is a number without its unit",
                        "Sample.java:12: factor is a number without its unit",
                        "Sample.java:16: ripple answers a number without its unit");
    }

    @Test
    void aUnitIsFoundInTheTagTheMainTextAndTheRecord() throws IOException {
        List<String> faults = new JavadocRule().faults(source("""
                /**
                 * A bus.
                 *
                 * @param peak the peak [V]
                 */
                public record Bus(double peak) {
                    /** A bus without a filter. */
                    public static Bus bare(double peak) {
                        return new Bus(peak);
                    }
                    /** The ripple [V]. */
                    public double ripple() {
                        return 0;
                    }
                    /**
                     * Scales.
                     *
                     * @param factor how much [-]
                     * @return the scaled peak [V]
                     */
                    public double scaled(double factor) {
                        return factor * peak;
                    }
                }
                """));
        assertThat(faults).isEmpty();
    }

    @Test
    void emptyNamesAreFound() throws IOException {
        List<String> faults = new NameRule().faults(source("""
                class BusUtils implements Named {
                    public int getRipple() { return 0; }
                    @Override public String getName() { return ""; }
                }
                """));
        assertThat(faults)
                .containsExactly(
                        "Sample.java:1: BusUtils is named after nothing",
                        "Sample.java:2: getRipple is prefixed with get");
    }

    @Test
    void aFormattedNumberIsFound() throws IOException {
        List<String> faults = new NumberFormatRule().faults(source("""
                class A {
                    String loss(double value) { return String.format("%.3g W", value); }
                    String share(long value) { return value + " % for " + "%5d %s"; }
                }
                """));
        assertThat(faults).containsExactly("Sample.java:2: a number is formatted outside the package unit");
    }

    @Test
    void aTestThatIsSwitchedOffIsFound() throws IOException {
        List<String> faults = new NoDisabledTestRule().faults(source("class A { @Disabled void b() {} }"));
        assertThat(faults).containsExactly("Sample.java:1: @Disabled switches a test off");
    }

    private static boolean holdsPublicType(Path source) {
        try {
            return PUBLIC_TYPE.matcher(Files.readString(source)).find();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Path> source(String text) throws IOException {
        return List.of(Files.writeString(folder.resolve("Sample.java"), text));
    }
}
