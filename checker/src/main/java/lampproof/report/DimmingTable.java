package lampproof.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.compare.SettingVerdict;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingFigure;
import lampproof.dimming.DimmingFigures;
import lampproof.dimming.DimmingPoint;
import lampproof.file.CsvText;
import lampproof.unit.PlainNumber;

/**
 * A dimming curve for a spreadsheet, in SI units and degrees: a row for each setting from full to off, and a row for each figure.
 * What was simulated between two settings has no row.
 */
public final class DimmingTable {

    private static final List<String> HEADER = List.of(
            "conduction_deg",
            "string_current_down_A",
            "string_current_up_A",
            "level_down_percent",
            "line_power_W",
            "line_current_rms_A",
            "line_current_peak_A",
            "lamp_voltage_rms_V",
            "bus_voltage_peak_V",
            "bleeder_loss_W",
            "dimmer_current_peak_A",
            "dimmer_current_least_A",
            "goes_out",
            "string_current_swing_A",
            "string_current_simulated_A");

    private static final List<String> FIGURE_HEADER = List.of("figure", "value", "unit", "note", "definition");

    private DimmingTable() {}

    /** Whether a file of this name may be written: there is none, or it is one of these tables. */
    public static boolean mayReplace(Path file) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            String first = reader.readLine();
            return Stream.of(HEADER, FIGURE_HEADER)
                    .anyMatch(header -> String.join(",", header).equals(first));
        } catch (IOException e) {
            return false;
        }
    }

    /** What the curve shows; a value that is not known is an empty cell. */
    public static String figures(DimmingCurve curve) {
        Stream<DimmingFigure> figures =
                Stream.of(DimmingFigures.of(curve), DimmingFigures.off(curve)).flatMap(List::stream);
        return CsvText.of(FIGURE_HEADER, figures.map(DimmingTable::cells).toList());
    }

    private static List<String> cells(DimmingFigure figure) {
        String value = figure.value().isPresent() ? number(figure.value().getAsDouble()) : "";
        return List.of(figure.name(), value, figure.unit(), figure.note(), figure.definition());
    }

    /** The settings; a value that is not known is an empty cell. */
    public static String text(DimmingCurve curve, List<SettingVerdict> simulated) {
        List<List<String>> rows = new ArrayList<>();
        int last = curve.up().size() - 1;
        for (int k = 0; k <= last; k++) {
            rows.add(cells(curve, curve.down().get(k), curve.up().get(last - k), simulated));
        }
        return CsvText.of(HEADER, rows);
    }

    private static List<String> cells(
            DimmingCurve curve, DimmingPoint down, DimmingPoint up, List<SettingVerdict> simulated) {
        return List.of(
                number(down.degrees()),
                number(down.current()),
                number(up.current()),
                number(100 * curve.level(down.current())),
                number(down.stress().linePower()),
                number(down.stress().lineCurrent()),
                number(down.stress().peakLineCurrent()),
                number(down.stress().lampVoltage()),
                number(down.stress().busPeak()),
                number(down.stress().bleederLoss()),
                number(down.stress().peakTriacCurrent()),
                number(down.stress().leastTriacCurrent()),
                curve.goesOut(down) ? "yes" : "no",
                number(down.swing()),
                simulated(down, simulated));
    }

    private static String simulated(DimmingPoint point, List<SettingVerdict> simulated) {
        return simulated.stream()
                .filter(setting -> Math.abs(setting.degrees() - point.degrees()) < 1e-6)
                .map(setting -> setting.simulated("string.current.mean"))
                .filter(OptionalDouble::isPresent)
                .map(value -> number(value.getAsDouble()))
                .findFirst()
                .orElse("");
    }

    private static String number(double value) {
        return PlainNumber.significant(value, 6);
    }
}
