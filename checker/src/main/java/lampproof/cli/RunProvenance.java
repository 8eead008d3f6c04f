package lampproof.cli;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.deck.RunFolder;
import lampproof.page.RunRecord.Provenance;
import lampproof.simulator.SimulationOutcome;

/** The program, the simulator and the date of a check. */
final class RunProvenance {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);
    private static final Pattern FAREWELL = Pattern.compile("(?m)^(ngspice-[\\w.+-]{1,20}) done$");
    private static final int TAIL = 4096;

    private RunProvenance() {}

    /**
     * Program, simulator and date.
     *
     * @param outcomes the simulations, if they have just run; otherwise the logs give the name of the simulator
     */
    static Provenance of(RunFolder run, List<SimulationOutcome> outcomes) {
        String simulator =
                outcomes.stream().map(SimulationOutcome::simulator).findFirst().orElseGet(() -> fromLogs(run));
        return now(simulator);
    }

    /** Program, simulator and date. */
    static Provenance now(String simulator) {
        return new Provenance(BuildVersion.text(), simulator, DATE.format(ZonedDateTime.now(ZoneId.systemDefault())));
    }

    private static String fromLogs(RunFolder run) {
        return run.decks().stream()
                .map(kind -> fromLog(run.log(kind)))
                .filter(name -> !name.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The simulator prints its name at the end; a log without the name gives no version. */
    private static String fromLog(Path log) {
        try (RandomAccessFile file = new RandomAccessFile(log.toFile(), "r")) {
            file.seek(Math.max(0, file.length() - TAIL));
            byte[] tail = new byte[(int) Math.min(TAIL, file.length())];
            file.readFully(tail);
            Matcher farewell = FAREWELL.matcher(new String(tail, StandardCharsets.UTF_8));
            return farewell.find() ? farewell.group(1) : "";
        } catch (IOException e) {
            return "";
        }
    }
}
