package lampproof.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.spec.Spec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FigureCatalogueTest {

    @Test
    void no_name_stands_twice() {
        assertThat(FigureCatalogue.figures()).extracting(Figure::name).doesNotHaveDuplicates();
    }

    @Test
    void every_figure_is_told_in_full() {
        assertThat(FigureCatalogue.figures()).hasSizeGreaterThan(100).allSatisfy(figure -> {
            assertThat(figure.name()).matches("[a-z]+(\\.[a-z_0-9]+)*");
            assertThat(figure.symbol()).isNotBlank();
            assertThat(figure.unit()).isIn("W", "A", "V", "1", "%", "deg", "s", "Hz", "T", "degC", "h", "dBuV", "dB");
            assertThat(figure.definition()).isNotBlank();
            assertThat(figure.formula()).as(figure.name()).isNotBlank();
            assertThat(FigureCatalogue.window(figure)).isNotBlank();
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.grade().reason()).isNotBlank();
        });
    }

    @Test
    void every_figure_has_a_value_and_no_two_values_for_one_deck() {
        assertThat(FigureCatalogue.entries())
                .allSatisfy(entry -> assertThat(entry.readings())
                        .isNotEmpty()
                        .extracting(FigureEntry.Reading::deck)
                        .doesNotHaveDuplicates());
    }

    /** The figures that a driver designer asks for, as the project set them down. */
    @Test
    void the_catalogue_is_complete() {
        assertThat(FigureCatalogue.figures())
                .extracting(Figure::name)
                .containsAll(List.of(
                                "line.power.mean line.current.rms line.current.peak line.power_factor"
                                        + " line.displacement_factor line.current.thd line.current.harmonic.3"
                                        + " line.current.harmonic.39 line.conduction_angle bridge.current.mean"
                                        + " bridge.current.rms bridge.voltage.peak bridge.loss bus.voltage.peak bus.voltage.valley"
                                        + " bus.ripple_current.rms filter.loss inductor.current.peak inductor.current.rms"
                                        + " inductor.current.ripple inductor.flux.peak inductor.loss.copper inductor.loss.core"
                                        + " inductor.saturation_margin switch.current.peak switch.current.rms"
                                        + " switch.current.mean switch.voltage.peak switch.loss.conduction switch.loss.overlap"
                                        + " switch.loss.capacitance switch.loss.gate diode.current.peak diode.current.mean"
                                        + " diode.current.rms diode.voltage.peak diode.loss.conduction diode.loss.recovery"
                                        + " switching.on_time switching.frequency.crest switching.frequency.min"
                                        + " switching.frequency.max switching.mode_share.dcm string.current.mean"
                                        + " string.current.peak string.current.ripple.line string.current.ripple.switching"
                                        + " string.power.mean string.flicker.percent string.flicker.index"
                                        + " output.ripple_current.rms output.voltage.peak sense.loss bias.loss bleeder.loss"
                                        + " bleeder.current.hold dimmer.voltage.off efficiency loss.total circuit.loss circuit.efficiency")
                        .stream()
                        .flatMap(names -> Arrays.stream(names.split(" ")))
                        .toList());
    }

    static Stream<Arguments> drivers() {
        return Arrays.stream(Topology.values())
                .flatMap(topology -> Arrays.stream(Law.values()).map(law -> Arguments.of(topology, law)));
    }

    @ParameterizedTest
    @MethodSource("drivers")
    void every_value_is_finite_at_every_line_voltage(Topology topology, Law law) {
        List<Prediction> predictions = atCorners(Lamps.of(topology, law));
        assertThat(predictions)
                .allSatisfy(prediction -> assertThat(prediction.value())
                        .as(prediction.figure().name() + " " + prediction.corner())
                        .isFinite());
        assertThat(predictions).extracting(Prediction::corner).contains(Corner.values());
    }

    @Test
    void only_the_typical_line_voltage_has_decks() {
        List<Prediction> predictions = atCorners(Lamps.stepUp(Law.BOUNDARY));
        assertThat(predictions)
                .filteredOn(prediction -> prediction.corner() != Corner.NOMINAL)
                .hasSize(2 * ordinary().size())
                .extracting(Prediction::deck)
                .containsOnly(Optional.empty());
        assertThat(predictions)
                .filteredOn(prediction -> prediction.corner() == Corner.NOMINAL)
                .extracting(Prediction::deck)
                .contains(Optional.of(DeckKind.MAINS), Optional.of(DeckKind.CREST), Optional.empty());
    }

    /** The entries that have a value without an event, whatever the parts do. */
    private static List<FigureEntry> ordinary() {
        return FigureCatalogue.entries().stream()
                .filter(entry -> entry.widest().isPresent() && entry.has(0))
                .toList();
    }

    @Test
    void the_string_current_is_kept_at_every_line_voltage() {
        List<Prediction> predictions = atCorners(Lamps.stepUp(Law.BOUNDARY));
        assertThat(predictions)
                .filteredOn(prediction -> prediction.figure().name().equals("string.current.mean"))
                .hasSize(3)
                .allSatisfy(prediction -> assertThat(prediction.value()).isCloseTo(16.7e-3, within(1e-6)));
    }

    private static List<Prediction> atCorners(Spec spec) {
        return Predictions.atCorners(LineCorners.of(Sizing.of(spec)), DeckKind.STANDARD);
    }
}
