package lampproof.prediction.loss;

import java.util.List;
import java.util.Optional;

/** A way in which a part of the lamp loses power, in the order of the power. */
public enum Loss {
    /** Fuse, filter winding, damping and line. */
    FILTER(LossPart.FILTER, "Filter and line", "filter.loss"),
    /** The bridge. */
    BRIDGE(LossPart.BRIDGE, "Bridge", "bridge.loss"),
    /** Dielectric of the filter capacitor and series resistance of the bus capacitor. */
    CAPACITORS(LossPart.CAPACITORS),
    /** The load for the dimmer. */
    BLEEDER(LossPart.BLEEDER),
    /** The supply of the controller. */
    BIAS(LossPart.BIAS),
    /** Winding at direct-current resistance. */
    COPPER(LossPart.INDUCTOR, "Inductor winding", "inductor.loss.copper"),
    /** What skin and proximity add to it. */
    PROXIMITY(LossPart.INDUCTOR),
    /** Core of the inductor. */
    CORE(LossPart.INDUCTOR),
    /** On-resistance of the switch. */
    CONDUCTION(LossPart.SWITCH, "Switch, conduction", "switch.loss.conduction"),
    /** Switching edges of the switch. */
    OVERLAP(LossPart.SWITCH),
    /** Energy of the node capacitance at turn-on. */
    CAPACITANCE(LossPart.SWITCH, "Switch, turn-on", "switch.loss", "switch.loss.conduction", "sense.loss"),
    /** Charging the gate. */
    GATE(LossPart.SWITCH),
    /** The snubber across the switch. */
    SNUBBER(LossPart.SNUBBER),
    /** The sense resistor. */
    SENSE(LossPart.SENSE, "Sense resistor", "sense.loss"),
    /** Conduction of the diode. */
    FORWARD(LossPart.DIODE, "Diode, conduction", "diode.loss.conduction"),
    /** Recovery of the diode. */
    RECOVERY(LossPart.DIODE),
    /** Series resistance of the output capacitor. */
    OUTPUT(LossPart.OUTPUT);

    private final LossPart part;
    private final Optional<DeckLoss> inDecks;

    Loss(LossPart part) {
        this.part = part;
        this.inDecks = Optional.empty();
    }

    Loss(LossPart part, String label, String figure, String... less) {
        this.part = part;
        this.inDecks = Optional.of(new DeckLoss(label, figure, List.of(less)));
    }

    /** The part that loses it. */
    public LossPart part() {
        return part;
    }

    /** What decks show of it; empty when they do not contain it. */
    public Optional<DeckLoss> inDecks() {
        return inDecks;
    }

    /**
     * A loss of the circuit that decks contain. The deck of a half cycle settles it.
     *
     * @param label what a reader calls it
     * @param figure name of the figure that holds it
     * @param less names of the figures of what that figure holds besides
     */
    public record DeckLoss(String label, String figure, List<String> less) {

        /** Copies the names. */
        public DeckLoss {
            less = List.copyOf(less);
        }
    }
}
