package lampproof.choice;

import java.util.Comparator;
import java.util.List;
import lampproof.design.Design;
import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.Housing;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;
import lampproof.prediction.heat.PartLife;
import lampproof.prediction.loss.LossPart;
import lampproof.quasistatic.Operation;
import lampproof.rule.LimitVerdicts;
import lampproof.rule.RuleVerdict;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;

/**
 * A driver that works, and all that is weighed of it.
 *
 * @param arrangement converter, law and string
 * @param spec the spec that gives this design again
 * @param design every part
 * @param solution its periodic steady state
 * @param bill its parts with area and cost
 * @param verdicts the verdicts of the rules
 */
public record Candidate(
        Arrangement arrangement,
        Spec spec,
        Design design,
        Solution solution,
        BillOfMaterials bill,
        List<RuleVerdict> verdicts) {

    private static final double RULED_MAINS = 200;

    /** Copies the verdicts. */
    public Candidate {
        verdicts = List.copyOf(verdicts);
    }

    /**
     * Sizes and solves an arrangement.
     *
     * @throws lampproof.fault.UserFault when physics forbids it or a part becomes too hot
     */
    static Candidate of(Lamp lamp, Arrangement arrangement, PartTable table) {
        List<SpecRow> load = DimmerLoad.resistor(lamp, arrangement);
        Spec spec = lamp.spec(arrangement, load);
        Design design = Sizing.of(spec);
        Solution solution = Solution.of(design.driver());
        if (DimmerLoad.needsTopUp(lamp, solution)) {
            spec = lamp.spec(arrangement, DimmerLoad.toppedUp(lamp, load));
            design = Sizing.of(spec);
            solution = Solution.of(with(design.driver(), solution.operation()));
        }
        solution.temperatures().requireRated();
        BillOfMaterials bill = BillOfMaterials.of(design, solution, table);
        return new Candidate(arrangement, spec, design, solution, bill, LimitVerdicts.of(LineCorners.only(solution)));
    }

    /** A load before the bridge does not move the steady state of the converter. */
    private static Operation with(Driver driver, Operation before) {
        return new Operation(driver, before.setPoint(), before.points(), before.crest(), before.start());
    }

    /** Power factor [-]. */
    public double powerFactor() {
        return solution.line().powerFactor(solution.driver().line().voltage());
    }

    /** Total harmonic distortion of the line current [-]. */
    public double distortion() {
        return solution.line().spectrum().thd();
    }

    /** Greatest energy of the inductor [J]. */
    public double inductorEnergy() {
        double peak = solution.stage().inductor().peak();
        return 0.5 * solution.driver().inductor().inductance() * peak * peak;
    }

    /** Area product of the core [m4]. */
    public double areaProduct() {
        return solution.driver().inductor().winding().core().areaProduct();
    }

    /**
     * Line voltage below which the converter can draw nothing [V]: a step-down converter cannot empty the bus below its
     * string, a step-up converter draws from any voltage.
     */
    public double deadVoltage() {
        return arrangement.topology() == Topology.STEP_UP
                ? 0
                : solution.driver().string().knee();
    }

    /** Travel at the dark end of a dimmer that moves no light, since the line is below the dead voltage [deg]. */
    public double deadTravel() {
        return Math.toDegrees(
                Math.asin(Math.min(1, deadVoltage() / solution.driver().line().crest())));
    }

    /** Least current that the lamp itself draws from 30 to 150 degrees [A]. */
    public double heldCurrent() {
        return DimmerLoad.leastCurrent(solution);
    }

    /** What the load for the dimmer burns while the dimmer is fully on [W]. */
    public double dimmerLoad() {
        Dimming dimming = solution.driver().dimming();
        boolean none = dimming.bleederResistance() >= DimmerLoad.NONE && dimming.topUpCurrent() == 0;
        return none ? 0 : solution.losses().of(LossPart.BLEEDER);
    }

    /** Hours of life of what goes first, LEDs or output capacitor [h]. */
    public double life() {
        Driver driver = solution.driver();
        double leds = PartLife.arrhenius(
                driver.heat().light().life(), solution.temperatures().of("string"));
        double capacitor = PartLife.arrhenius(
                driver.heat().capacitorLife(), solution.temperatures().of("output"));
        return Math.min(leds, capacitor);
    }

    /** Name of the core of the inductor. */
    public String core() {
        return solution.driver().inductor().winding().core().name();
    }

    /** Temperature of a part [degC]. */
    public double temperature(Housing.Part part) {
        return solution.temperatures().of(part.name());
    }

    /** The part that comes closest to its rated temperature. */
    public Housing.Part hottest() {
        return solution.temperatures().housing().parts().stream()
                .min(Comparator.comparingDouble(part -> part.rating() - temperature(part)))
                .orElseThrow();
    }

    /** What every rule says of the harmonics at once. */
    public RuleVerdict harmonics() {
        return verdicts.stream()
                .filter(verdict -> verdict.subject().equals("harmonics"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Whether the control is stable and, on mains of 220 V to 240 V where these rules hold, harmonics and displacement
     * keep their limits.
     */
    public boolean keepsRules() {
        boolean ruled = solution.driver().line().voltage() >= RULED_MAINS;
        return verdicts.stream()
                .filter(verdict -> verdict.subject().equals("subharmonic stability")
                        || (ruled && List.of("harmonics", "displacement factor").contains(verdict.subject())))
                .allMatch(RuleVerdict::pass);
    }
}
