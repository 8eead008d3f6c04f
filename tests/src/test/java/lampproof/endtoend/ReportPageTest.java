package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.prediction.Probe;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.print.PrintOptions;

/**
 * The page of a run in a real browser.
 *
 * <p>The waveforms are drawn by hand, so no simulator is needed; they give no power, so the verdict is none, and the
 * names and notes are those of an attacker.
 */
class ReportPageTest {

    private static final String ATTACK = "<img src=x onerror=\"document.title='taken'\">";
    private static final Pattern ADDRESS = Pattern.compile("\"url\":\"([^\"]*)\"");

    @TempDir
    private static Path folder;

    private static ChromeDriver browser;
    private static Path page;

    @BeforeAll
    static void open() throws Exception {
        browser = Chromium.startOrSkip(folder.resolve("profile"));
        Files.writeString(folder.resolve("lamp.csv"), """
                quantity,min,typ,max,unit,note
                driver.topology,,step-up,,,
                line.voltage,,230,,V,%s
                line.frequency,,50,,Hz,<script>document.title='taken'</script>
                string.voltage,,420,,V,
                string.current,,16.7,,mA,
                """.formatted("\"" + ATTACK.replace("\"", "\"\"") + "\""));
        Lampproof written = Lampproof.run(folder, "deck", "lamp.csv", "-o", "run");
        assertThat(written.exitCode()).as(written.toString()).isZero();
        String mains = "<script>document.title='taken'<script>.csv".replace("/", "");
        write(folder.resolve(mains), 20e-3, 4000, 0.5e-3);
        write(folder.resolve("crest.csv"), 1e-3, 4000, 14e-6);
        Lampproof checked =
                Lampproof.run(folder, "check", "run", "--wave", "mains=" + mains, "--wave", "crest=crest.csv");
        assertThat(checked.exitCode()).as(checked.toString()).isEqualTo(3);
        page = folder.resolve("run/report.html");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @BeforeEach
    void load() {
        browser.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        browser.get(page.toUri().toString());
    }

    @Test
    void nothingIsWrongInTheConsole() {
        assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    }

    @Test
    void noRequestLeavesThePage() {
        List<String> addresses = browser.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .flatMap(message -> ADDRESS.matcher(message).results().map(found -> found.group(1)))
                .filter(address -> !address.startsWith("data:") && !address.startsWith("chrome:")) // the browser's own
                .distinct()
                .toList();
        assertThat(addresses).containsExactly(page.toUri().toString());
    }

    @Test
    void nothingThatAStrangerWroteRuns() {
        assertThat(browser.getTitle()).startsWith("run: no verdict, ");
        assertThat(browser.findElements(By.cssSelector("script, img, iframe, object, embed, form")))
                .isEmpty();
        assertThat(browser.findElement(By.id("values"))
                        .findElement(By.xpath("ancestor::details"))
                        .getDomProperty("textContent"))
                .contains(ATTACK);
    }

    @Test
    void everyPictureIsThereWithWordsForThoseWhoCannotSeeIt() {
        List<WebElement> pictures = browser.findElements(By.cssSelector("svg[role=img]"));
        assertThat(pictures).hasSize(14).allSatisfy(picture -> {
            assertThat(picture.getSize().getWidth()).isGreaterThan(400);
            assertThat(picture.getSize().getHeight()).isGreaterThan(50);
            assertThat(picture.getAccessibleName()).isNotBlank();
        });
        assertThat(browser.findElements(By.cssSelector("svg.plot path.simulated, svg.plot path.predicted")))
                .hasSizeGreaterThan(10)
                .allSatisfy(path ->
                        assertThat(path.getDomAttribute("d")).startsWith("M").hasSizeGreaterThan(50));
    }

    @Test
    void theKeyboardReachesEverythingInOrder() {
        String focusable = "[...document.querySelectorAll('a[href], summary, [tabindex=\"0\"]')]"
                + ".filter(one => one.checkVisibility())";
        long count = (Long) browser.executeScript("return " + focusable + ".length");
        List<Long> order = Stream.generate(() -> {
                    browser.switchTo().activeElement().sendKeys(Keys.TAB);
                    return (Long) browser.executeScript("return " + focusable + ".indexOf(document.activeElement)");
                })
                .limit(count)
                .toList();
        assertThat(count).isGreaterThan(8);
        assertThat(order)
                .containsExactlyElementsOf(
                        IntStream.range(0, (int) count).mapToObj(Long::valueOf).toList());
    }

    @Test
    void theFirstLinkSkipsToTheCharts() {
        browser.switchTo().activeElement().sendKeys(Keys.TAB);
        WebElement skip = browser.switchTo().activeElement();
        assertThat(skip.getText()).isEqualTo("Skip to the charts");
        skip.sendKeys(Keys.ENTER);
        assertThat(browser.switchTo().activeElement().getDomAttribute("id")).isEqualTo("losses");
    }

    @Test
    void aFoldedSectionOpensByTheKeyboard() {
        WebElement section = browser.findElement(By.id("figures")).findElement(By.xpath("ancestor::details"));
        WebElement row = section.findElement(By.cssSelector("tbody tr"));
        assertThat(row.isDisplayed()).isFalse();
        section.findElement(By.tagName("summary")).sendKeys(Keys.ENTER);
        assertThat(row.isDisplayed()).isTrue();
    }

    @Test
    void headlineVerdictRulesAndCircuitAreOnTheFirstScreen() {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 1280, "height", 900, "deviceScaleFactor", 1, "mobile", false));
        List<WebElement> parts = browser.findElements(By.cssSelector("header dl, header .verdict, header svg.circuit"));
        assertThat(parts)
                .hasSize(4)
                .allSatisfy(part -> assertThat(
                                part.getLocation().getY() + part.getSize().getHeight())
                        .isLessThanOrEqualTo(900));
    }

    @Test
    void theReportFillsAtMostEightSheets() {
        byte[] pdf =
                Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent());
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertThat(Pattern.compile("/Type /Page\\b").matcher(text).results().count())
                .isBetween(2L, 8L);
    }

    @Test
    void aPhoneNeedNotScrollSideways() {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 390, "height", 844, "deviceScaleFactor", 2, "mobile", true));
        assertThat(browser.executeScript("return window.innerWidth")).isEqualTo(390L);
        assertThat((Long) browser.executeScript("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390L);
    }

    @Test
    void thePageIsSmall() throws IOException {
        assertThat(Files.size(page)).isLessThan(400_000);
    }

    /** A table with every probe of a deck: sines of the line, and a triangle and a gate of a switching period. */
    private static void write(Path file, double end, int rows, double period) throws IOException {
        String header = Stream.concat(
                        Stream.of("time"), Stream.of(Probe.values()).map(Probe::column))
                .reduce((a, b) -> a + "," + b)
                .orElseThrow();
        StringBuilder table = new StringBuilder(header + "\n");
        for (int i = 0; i <= rows; i++) {
            double time = end * i / rows;
            table.append(String.format(Locale.ROOT, "%.9e", time));
            for (Probe probe : Probe.values()) {
                table.append(
                        String.format(Locale.ROOT, ",%.6e", value(probe, period).apply(time)));
            }
            table.append('\n');
        }
        Files.writeString(file, table);
    }

    private static DoubleFunction<Double> value(Probe probe, double period) {
        return switch (probe) {
            case LINE_VOLTAGE -> time -> 325 * Math.sin(100 * Math.PI * time);
            case LINE_CURRENT -> time -> -0.05 * Math.sin(100 * Math.PI * time);
            case BUS_VOLTAGE -> time -> Math.abs(325 * Math.sin(100 * Math.PI * time));
            case GATE_VOLTAGE -> time -> time / period % 1 < 0.3 ? 1.0 : 0.0;
            case INDUCTOR_CURRENT -> time -> 0.09 * (1 - Math.abs(2 * (time / period % 1) - 1));
            default -> time -> 1.0;
        };
    }
}
