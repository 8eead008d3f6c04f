package lampproof.page;

import java.util.Arrays;
import java.util.List;
import lampproof.prediction.loss.LossPart;

/** A part of a bill of materials with the rows of the spec that hold its value and its ratings. */
enum BillPart {
    FUSE("fuse", LossPart.FILTER, List.of("filter.fuse_resistance")),
    CHOKE("choke", LossPart.FILTER, List.of("filter.inductance")),
    DAMPING("damping", LossPart.FILTER, List.of("filter.damping")),
    FILTER_CAPACITOR("filter capacitor", LossPart.CAPACITORS, List.of("filter.capacitance")),
    BRIDGE("bridge", LossPart.BRIDGE, List.of(), "bridge.voltage_rating", "bridge.current_rating"),
    BUS_CAPACITOR("bus capacitor", LossPart.CAPACITORS, List.of("bus.capacitance"), "bus.voltage_rating"),
    CONTROLLER("controller", LossPart.BIAS, List.of("driver.control")),
    BIAS_SUPPLY("bias supply", LossPart.BIAS, List.of()),
    INDUCTOR(
            "inductor",
            LossPart.INDUCTOR,
            List.of("inductor.inductance", "inductor.core"),
            "inductor.saturation_current"),
    SWITCH("switch", LossPart.SWITCH, List.of("switch.resistance"), "switch.voltage_rating", "switch.current_rating"),
    DIODE("diode", LossPart.DIODE, List.of("diode.drop"), "diode.voltage_rating", "diode.current_rating"),
    SENSE("sense", LossPart.SENSE, List.of("sense.resistance")),
    OUTPUT("output", LossPart.OUTPUT, List.of("output.capacitance"), "output.voltage_rating"),
    DIMMER_LOAD_SWITCH("dimmer load switch", LossPart.BLEEDER, List.of()),
    DIMMER_LOAD("dimmer load", LossPart.BLEEDER, List.of("bleeder.resistance")),
    HOLDING_CURRENT("holding current source", LossPart.BLEEDER, List.of("bleeder.hold_current"));

    private final String item;
    private final LossPart loss;
    private final List<String> values;
    private final List<String> ratings;

    BillPart(String item, LossPart loss, List<String> values, String... ratings) {
        this.item = item;
        this.loss = loss;
        this.values = values;
        this.ratings = List.of(ratings);
    }

    /** The part of an item; the kind of an output capacitor follows its name. */
    static BillPart of(String item) {
        return Arrays.stream(values())
                .filter(part -> item.startsWith(part.item))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no part of the bill of materials: " + item));
    }

    /** The part in charts of losses. */
    LossPart loss() {
        return loss;
    }

    /** Rows of the spec that hold its value. */
    List<String> valueRows() {
        return values;
    }

    /** Rows of the spec that hold its ratings. */
    List<String> ratingRows() {
        return ratings;
    }
}
