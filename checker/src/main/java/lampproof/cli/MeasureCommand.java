package lampproof.cli;

import java.nio.file.Path;
import java.util.List;
import lampproof.instrument.Capture;
import lampproof.instrument.CaptureQuantity;
import lampproof.instrument.CaptureReport;
import lampproof.instrument.Mapping;
import lampproof.instrument.MappingText;
import lampproof.instrument.Recognition;
import lampproof.report.CaptureText;
import lampproof.waveform.file.WaveformFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures a table of an instrument without a spec. */
@Command(
        description = {
            "Measures a single table of line voltage and current, or of light, without a spec.",
            "Power, rms, power factor, distortion, harmonics with their limits, inrush, flicker with its limits."
        },
        footer = {
            "",
            "Columns are recognised by name or unit; otherwise map each quantity to its column:",
            "  --map line.voltage=CH1*200            probe of 200:1",
            "  --map line.current=CH2*-10+0.02       reversed clamp, 10 A/V, offset in ampere",
            "  --map line.current='CH 2'@2us         clamp with a delay of 2 us",
            "",
            "Example: lampproof measure scope.csv --map line.voltage=CH1*200,line.current=CH2*10",
            "Example: lampproof measure photodiode.csv --map light=CH3"
        })
final class MeasureCommand extends LampproofCommand {

    @Parameters(paramLabel = "FILE", description = "The table, of an instrument or a simulator.")
    private Path file;

    @Option(names = "--map", paramLabel = MappingText.FORM, description = MappingOption.DESCRIPTION)
    private String map;

    @Option(
            names = "--from",
            paramLabel = "SECONDS",
            defaultValue = "-Infinity",
            showDefaultValue = picocli.CommandLine.Help.Visibility.NEVER,
            description = "Start of the measured interval; default: the start of the record.")
    private double from;

    @Option(
            names = "--to",
            paramLabel = "SECONDS",
            defaultValue = "Infinity",
            showDefaultValue = picocli.CommandLine.Help.Visibility.NEVER,
            description = "End of the measured interval; default: the end of the record.")
    private double to;

    @Mixin
    private TableOptions options;

    @Override
    public Integer call() {
        CaptureReport report = report();
        print(new CaptureText(style()).text(report));
        return (report.measured() ? ExitCode.AGREES : ExitCode.NO_VERDICT).code();
    }

    private CaptureReport report() {
        try (ReadProgress progress = progress()) {
            WaveformFile table = WaveformFile.open(file, options.readOptions(), progress);
            List<Mapping> mappings =
                    map == null ? Recognition.of(table) : MappingText.read(map, CaptureQuantity.words());
            return Capture.report(table, mappings, from, to);
        }
    }

    private static ReadProgress progress() {
        return ReadProgress.on(System.err, Terminal.isPresent());
    }
}
