package lampproof.design;

import static lampproof.physics.PreferredSeries.E12;

import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.AirGap;
import lampproof.physics.AreaProduct;
import lampproof.physics.CopperResistivity;
import lampproof.physics.CoreMaterial;
import lampproof.physics.CoreTable;
import lampproof.physics.FluxDensity;
import lampproof.physics.MagneticCore;
import lampproof.physics.SkinDepth;
import lampproof.physics.WindowAllocation;
import lampproof.physics.WireGauge;

/** Chooses inductance, core, turns, gap and wire of the power inductor. */
final class InductorSizing {

    private static final double OVERLOAD = 1.2;
    private static final double FLUX = 0.3;
    private static final double CURRENT_DENSITY = 4e6;
    private static final double FILL = 0.3;
    private static final double ENAMEL = 1.15;
    private static final double THICKNESS = 2.0 / 3;
    private static final CoreMaterial FERRITE = CoreMaterial.named("N87").orElseThrow();

    private final DesignValues values;
    private final Demand demand;
    private final double inductance;

    InductorSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
        this.inductance = values.amount(
                "inductor.inductance",
                CrestPoint.typical(demand).inductanceRule(),
                () -> E12.nearest(CrestPoint.typical(demand).inductance()));
    }

    Inductor inductor(Winding winding) {
        double length = winding.turns() * winding.core().meanTurnLength();
        double area = winding.copperArea();
        return new Inductor(
                inductance,
                values.amount(
                        "inductor.resistance",
                        "copper of the winding at 100 degC",
                        () -> Rounding.twoDigits(CopperResistivity.at(Winding.TEMPERATURE) * length / area)),
                saturates() ? winding.saturationCurrent() : Double.POSITIVE_INFINITY,
                winding);
    }

    private boolean saturates() {
        return values.word("inductor.saturation", "none: the decks keep the inductance at any current", "none")
                .equals("hard");
    }

    Winding winding() {
        MagneticCore core = core();
        double turns = values.amount(
                "inductor.turns",
                "0.3 T at 1.2 times the peak at the crest of the lowest line",
                () -> Math.ceil(FluxDensity.turns(inductance, overload(), FLUX, core.area())));
        double flux = FluxDensity.peak(inductance, overload(), turns, core.area());
        double gap = values.amount(
                "inductor.gap",
                "gives the inductance with these turns; fringing needs a little more",
                () -> Rounding.twoDigits(AirGap.length(inductance, overload(), flux, core.area())));
        double copper = WindowAllocation.wireArea(1, FILL, core.windowArea(), turns);
        double strands = values.amount(
                "inductor.strands", "fewest with a strand below two thirds of the skin depth", () -> strands(copper));
        double wire = values.amount(
                "inductor.wire_diameter",
                "copper in 30 % of the window, AWG",
                () -> Rounding.twoDigits(WireGauge.thickestWithin(
                                Math.max(copper / strands, WireGauge.thinnest().area()))
                        .diameter()));
        double saturation = values.amount(
                "inductor.saturation_current",
                "core at the hot saturation of the ferrite " + FERRITE.name(),
                () -> Rounding.twoDigits(FERRITE.hotSaturation() * turns * core.area() / inductance));
        return new Winding(core, FERRITE, turns, gap, wire, strands, layers(core, turns * strands, wire), saturation);
    }

    private double overload() {
        return OVERLOAD * CrestPoint.lowest(demand).peakWith(inductance);
    }

    private MagneticCore core() {
        MagneticCore smallest = CoreTable.smallestByAreaProduct(areaProduct()).orElseThrow(this::tooSmall);
        String name = values.word(
                "inductor.core",
                "smallest core for 0.3 T at the overload peak and 4 A/mm2 in 30 % of the window",
                smallest.name());
        return CoreTable.named(name).orElseThrow(() -> unknown(name));
    }

    private double areaProduct() {
        double current = CrestPoint.lowest(demand).lineRms();
        return AreaProduct.required(inductance, overload(), current, FLUX, CURRENT_DENSITY, FILL);
    }

    private double strands(double copper) {
        double depth = SkinDepth.of(CopperResistivity.at(Winding.TEMPERATURE), demand.frequency());
        double thickest = THICKNESS * depth;
        return Math.max(1, Math.ceil(copper / (Math.PI / 4 * thickest * thickest)));
    }

    /** Layers of strands in a window twice as broad as high. */
    private static int layers(MagneticCore core, double wires, double diameter) {
        double breadth = Math.sqrt(2 * core.windowArea());
        return (int) Math.max(1, Math.min(1000, Math.ceil(wires * ENAMEL * diameter / breadth)));
    }

    private UserFault unknown(String name) {
        String known = CoreTable.all().stream().map(MagneticCore::name).collect(Collectors.joining(", "));
        return UserFault.badInput(new Finding(
                "the table of cores has no such core", "inductor.core", name, known, "choose one of these cores"));
    }

    private UserFault tooSmall() {
        return UserFault.badInput(Finding.of(
                "no core of the table can hold the energy of this inductor",
                "inductor.inductance",
                "raise switching.frequency or lower inductor.inductance"));
    }
}
