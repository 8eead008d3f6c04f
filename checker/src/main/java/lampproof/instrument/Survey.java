package lampproof.instrument;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import lampproof.measure.FundamentalFrequency;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Sampling;
import lampproof.measure.Window;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Span;

/**
 * The result of a first pass over all mapped columns: whether the table is sound, how it was sampled, the direction of
 * the power, and the frequency of each quantity that follows the line.
 *
 * @param reading what the pass found
 * @param sampling how the table was sampled
 * @param power mean power from voltage and current as mapped [W]; absent without both
 * @param frequencies frequency of each quantity, within the limits of the line [Hz]; that of a current is
 *     the one of its voltage if there is one
 */
record Survey(ReadResult reading, Sampling sampling, Measured power, Map<String, Measured> frequencies) {

    /** Lowest frequency that a line may have [Hz]. */
    static final double LOWEST_LINE = 40;

    private static final double HIGHEST_LINE = 70;

    /**
     * Makes the first pass over a table.
     *
     * @param span the measured interval
     * @throws lampproof.fault.UserFault no verdict, when the table is damaged
     */
    static Survey of(MappedTable table, Span span) {
        MeasurementPass pass = new MeasurementPass();
        // In the order of the columns of the next pass, so that the rows may be kept for it.
        table.mappings().forEach(mapping -> pass.channel(mapping.quantity()));
        Map<String, FundamentalFrequency> fits = new HashMap<>();
        String voltage = CaptureQuantity.LINE_VOLTAGE.word();
        String current = CaptureQuantity.LINE_CURRENT.word();
        boolean both = table.has(voltage) && table.has(current);
        table.mappings().stream()
                .map(Mapping::quantity)
                .filter(quantity -> !both || !quantity.equals(current))
                .forEach(quantity -> fits.put(quantity, pass.add(fit(pass, quantity, span))));
        MeanProduct power =
                both ? pass.add(new MeanProduct(Window.of(span), pass.channel(voltage), pass.channel(current))) : null;
        Sampling.Steps steps = new Sampling.Steps(span);
        ReadResult reading = table.rows(pass.columns(), block -> {
                    steps.add(block);
                    pass.block(block);
                })
                .requireSound();
        // A fit takes some milliseconds: in parallel.
        Map<String, Measured> frequencies = fits.entrySet().parallelStream()
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey, fit -> fit.getValue().result()));
        return new Survey(
                reading,
                steps.over(reading.span()),
                both ? power.result() : Measured.absent("voltage or current is missing"),
                frequencies);
    }

    /** The frequency of a quantity [Hz]. */
    Measured frequency(String quantity) {
        return frequencies.get(quantity);
    }

    /** Light follows the power of the line, and so has twice its frequency. */
    private static FundamentalFrequency fit(MeasurementPass pass, String quantity, Span span) {
        boolean line = quantity.equals(CaptureQuantity.LINE_VOLTAGE.word())
                || quantity.equals(CaptureQuantity.LINE_CURRENT.word());
        double times = line ? 1 : 2;
        return new FundamentalFrequency(
                Window.of(span), pass.channel(quantity), times * LOWEST_LINE, times * HIGHEST_LINE);
    }
}
