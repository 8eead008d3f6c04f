package lampproof.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;

class PackagePictureTest {

    private static final PackagePicture PICTURE = PackagePicture.of("""
            ## Packages

            <!-- PackagesTest reads this picture. -->
            ```
            shared       quantities and lamps
              fault
              spec       -> fault, design
              design     -> spec,
                            fault
            templates    resources
            checker
              cli.start  -> spec
            ```
            """);

    @Test
    void packagesStandBelowTheirModule() {
        assertThat(PICTURE.places())
                .containsExactly(
                        "shared/lampproof.fault",
                        "shared/lampproof.spec",
                        "shared/lampproof.design",
                        "checker/lampproof.cli.start");
    }

    @Test
    void aLineThatEndsWithACommaGoesOnInTheNext() {
        assertThat(PICTURE.arrows())
                .containsExactly(
                        "spec -> fault", "spec -> design", "design -> spec", "design -> fault", "cli.start -> spec");
    }

    @Test
    void anArrowPointsUpOnlyToAPackageDrawnBefore() {
        assertThat(PICTURE.arrows())
                .filteredOn(PICTURE::pointsUp)
                .doesNotContain("spec -> design")
                .hasSize(4);
        assertThat(PICTURE.pointsUp("spec -> measure")).isFalse();
    }

    @Test
    void aGuideWithoutAPictureIsFound() {
        assertThatIllegalStateException().isThrownBy(() -> PackagePicture.of("## Packages"));
    }
}
