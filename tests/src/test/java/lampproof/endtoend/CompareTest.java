package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;

class CompareTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void copySpec() throws Exception {
        try (InputStream spec =
                Objects.requireNonNull(getClass().getResourceAsStream("/lampproof/examples/stairwell-step-up.csv"))) {
            Files.copy(spec, folder.resolve("lamp.csv"));
        }
    }

    @Test
    void bothFinalistsOfTheStairwellLampAreProvedAndEveryFigureAgrees() throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof compared = Lampproof.run(folder, "compare", "lamp.csv", "--prove", "-o", "choice");
        assertThat(compared.exitCode()).as(compared.toString()).isZero();
        assertThat(compared.out())
                .startsWith("Take the step-up ")
                .contains("simulation: ")
                .satisfies(text -> assertThat(text.lines()).hasSizeLessThanOrEqualTo(70))
                .endsWith("Open next: choice/report.html\n");
        for (String finalist : List.of("step-down", "step-up")) {
            assertThat(VerdictRows.rows(folder.resolve("choice").resolve(finalist)))
                    .hasSizeGreaterThan(50)
                    .allSatisfy(row -> assertThat(row.get("verdict")).isIn("agrees", "predicted only"));
        }
        assertThat(Files.readString(folder.resolve("choice/report.html")))
                .containsPattern("Simulation, step-up:</strong> (\\d+) of \\1 simulated figures agree")
                .containsPattern("Simulation, step-down:</strong> (\\d+) of \\1 simulated figures agree");
    }

    @Test
    void thePageHoldsItsPicturesAndNothingElse() throws Exception {
        ChromeDriver browser = Chromium.startOrSkip(folder.resolve("profile"));
        try {
            Lampproof compared =
                    Lampproof.run(folder, "compare", "lamp.csv", "--strings", "30..36,390..430", "-o", "choice");
            assertThat(compared.exitCode()).as(compared.toString()).isZero();
            browser.get(folder.resolve("choice/report.html").toUri().toString());
            assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
            assertThat(browser.findElements(By.cssSelector("script, img, iframe, object, embed, form")))
                    .isEmpty();
            browser.executeScript("document.querySelectorAll('details').forEach(one => one.open = true)");
            List<WebElement> pictures = browser.findElements(By.cssSelector("svg[role=img]"));
            assertThat(pictures).hasSize(1 + 4 + 4 + 6).allSatisfy(picture -> {
                assertThat(picture.getSize().getWidth()).isGreaterThan(300);
                assertThat(picture.getAccessibleName()).isNotBlank();
            });
            assertThat(browser.findElements(By.cssSelector("[id]")).stream().map(one -> one.getDomAttribute("id")))
                    .doesNotHaveDuplicates();
        } finally {
            browser.quit();
        }
    }

    @Test
    void aFolderOfSomebodyElseIsLeftAlone() throws Exception {
        Path other = Files.createDirectories(folder.resolve("choice")).resolve("report.html");
        Files.writeString(other, "mine");
        Lampproof compared =
                Lampproof.run(folder, "compare", "lamp.csv", "--strings", "33..33,420..420", "-o", "choice");
        assertThat(compared.exitCode()).as(compared.toString()).isEqualTo(2);
        assertThat(compared.err()).contains("the folder holds files that lampproof would replace but did not write");
        assertThat(folder.resolve("choice")).isDirectoryContaining(file -> file.equals(other));
        assertThat(Files.readString(other)).isEqualTo("mine");
    }

    @Test
    void aLampWithoutADriverIsToldWhyAndWhatWouldWork() throws Exception {
        Lampproof compared = Lampproof.run(folder, "compare", "lamp.csv", "--strings", "320..360");
        assertThat(compared.exitCode()).as(compared.toString()).isEqualTo(2);
        assertThat(compared.err()).contains("no driver works for this lamp; one would with a string of ");
    }
}
