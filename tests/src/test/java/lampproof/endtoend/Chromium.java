package lampproof.endtoend;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browser of this machine, without a window, with nothing to remember and nobody to call. */
final class Chromium {

    private static final List<String> FLAGS = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--no-first-run");

    private Chromium() {}

    /** Starts the browser; without one the test is skipped with the reason. Both paths are given, so nothing is fetched. */
    static ChromeDriver startOrSkip(Path profile) {
        Optional<File> browser = program("chromium");
        Optional<File> driver = program("chromedriver");
        assumeTrue(browser.isPresent(), "skipped: there is no chromium in PATH");
        assumeTrue(driver.isPresent(), "skipped: there is no chromedriver in PATH");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow());
        options.addArguments(FLAGS);
        options.addArguments("--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(driver.orElseThrow())
                        .usingAnyFreePort()
                        .build(),
                options);
    }

    private static Optional<File> program(String name) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator, -1))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(Path::toFile)
                .findFirst();
    }
}
