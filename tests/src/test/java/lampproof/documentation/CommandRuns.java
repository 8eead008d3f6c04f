package lampproof.documentation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import lampproof.endtoend.Lampproof;

/**
 * Runs the commands of the documents, each once, in a folder that holds what they name: {@code lamp.csv}, the step-up
 * example; {@code dimmed.csv}, the same behind a dimmer; {@code scope.csv}, its mains as an oscilloscope shows it.
 */
final class CommandRuns {

    private static final String PROGRAM = "./lampproof ";
    private static final Pattern ARGUMENT = Pattern.compile("(?:'[^']*'|[^\\s'])+");
    private static final double INTERVAL = 5e-6;
    private static final int HALF_CYCLES = 4;

    private final Path folder;
    private final Map<String, Lampproof> runs = new LinkedHashMap<>();

    CommandRuns(Path folder) throws IOException {
        this.folder = folder;
        String lamp;
        try (InputStream example = Lampproof.class.getResourceAsStream("/lampproof/examples/stairwell-step-up.csv")) {
            lamp = new String(example.readAllBytes(), StandardCharsets.UTF_8);
        }
        Files.writeString(folder.resolve("lamp.csv"), lamp);
        Files.writeString(folder.resolve("dimmed.csv"), lamp + "dimmer.edge,,trailing,,,\n");
    }

    static boolean isCommand(String line) {
        return line.startsWith(PROGRAM);
    }

    /** The end of a command of a document, such as {@code ./lampproof predict lamp.csv}. */
    Lampproof of(String line) throws IOException, InterruptedException {
        String command = line.replaceFirst("\\s+#.*", "").strip();
        if (!runs.containsKey(command)) {
            if (command.contains("scope.csv")) {
                writeScope();
            }
            runs.put(command, Lampproof.run(folder, arguments(command)));
        }
        return runs.get(command);
    }

    /** Whether numbers of its output come from the simulator. */
    static boolean simulates(String command) {
        return Pattern.compile("^./lampproof (prove|check|simulate)\\b|--prove\\b")
                .matcher(command)
                .find();
    }

    private static String[] arguments(String command) {
        return ARGUMENT.matcher(command.substring(PROGRAM.length()))
                .results()
                .map(MatchResult::group)
                .map(argument -> argument.replace("'", ""))
                .toArray(String[]::new);
    }

    /** Line voltage over 200 and line current over 10 of the simulated half cycle, with each other half turned round. */
    private void writeScope() throws IOException {
        List<double[]> half = halfCycle();
        StringBuilder table = new StringBuilder("time,CH1,CH2\ns,V,V\n");
        for (int count = 0; count < HALF_CYCLES; count++) {
            for (double[] row : half) {
                double sign = count % 2 == 0 ? 1 : -1;
                table.append((float) (row[0] + count * 0.01)).append(',');
                table.append((float) (sign * row[1] / 200)).append(',');
                table.append((float) (sign * row[2] / 10)).append('\n');
            }
        }
        Files.writeString(folder.resolve("scope.csv"), table);
    }

    /** Time [s], line voltage [V] and line current [A] of the deck {@code mains} at even intervals. */
    private List<double[]> halfCycle() throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader table =
                Files.newBufferedReader(folder.resolve("run").resolve("mains.csv"))) {
            List<String> names = List.of(table.readLine().strip().split("\\s+", -1));
            int voltage = names.indexOf("line_voltage");
            int current = names.indexOf("line_current");
            for (String line = table.readLine(); line != null; line = table.readLine()) {
                String[] cells = line.strip().split("\\s+", -1);
                double time = Double.parseDouble(cells[0]);
                if (time >= rows.size() * INTERVAL && time < 0.01 - 0.5 * INTERVAL) {
                    rows.add(new double[] {
                        rows.size() * INTERVAL, Double.parseDouble(cells[voltage]), Double.parseDouble(cells[current])
                    });
                }
            }
        }
        return rows;
    }
}
