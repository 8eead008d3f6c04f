package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DimmingTest {

    @TempDir
    private Path folder;

    @Test
    void a_simulated_setting_lies_on_the_curve() throws Exception {
        Lampproof.simulatorOrSkip();
        Lampproof proved =
                Lampproof.run(folder, "dimming", lamp().toString(), "--prove", "--angles", "90", "-o", "dimming");
        assertThat(proved.exitCode()).isZero();
        assertThat(Files.readString(folder.resolve("dimming/angle-90/dimmed.cir")))
                .as("the diode of the user's own")
                .contains("user_diode");
        CSVRecord setting = setting("90");
        double predicted = Double.parseDouble(setting.get("string_current_down_A"));
        double simulated = Double.parseDouble(setting.get("string_current_simulated_A"));
        assertThat(simulated).isBetween(0.98 * predicted, 1.02 * predicted);
        assertThat(setting("95").get("string_current_simulated_A")).isEmpty();
        assertThat(folder.resolve("dimming/angle-90/report.html")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("dimming/dimming.html"))).contains("class=\"point\"");
    }

    private CSVRecord setting(String degrees) throws IOException {
        return CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(folder.resolve("dimming/dimming.csv")))
                .stream()
                .filter(row -> row.get("conduction_deg").equals(degrees + ".0000"))
                .findFirst()
                .orElseThrow();
    }

    private Path lamp() throws IOException {
        try (InputStream text = DimmingTest.class.getResourceAsStream("/lampproof/examples/stairwell-step-down.csv")) {
            String spec = new String(text.readAllBytes(), StandardCharsets.UTF_8);
            Files.writeString(folder.resolve("diode.lib"), """
                    a diode of our own
                    .subckt diode anode cathode
                    D1 anode cathode usual
                    .model usual d(is=2e-9 n=1.8 rs=0.1)
                    .ends
                    """);
            String rows = "dimmer.edge,,trailing,,,\ndiode.model,,diode.lib,,,\n";
            return Files.writeString(folder.resolve("lamp.csv"), spec + rows);
        }
    }
}
