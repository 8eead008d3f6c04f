package lampproof.quasistatic;

import java.util.Map;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Law;

/** Switching cycles with the line held at its crest under changed conditions; output and bus voltage keep their given values. */
public final class CrestWhatIf implements WhatIf {

    private static final int CYCLES = 32;

    private final Operation predicted;
    private final AnglePoint crest;

    /** The conditions of a steady state at the crest. */
    public CrestWhatIf(Operation predicted) {
        this.predicted = predicted;
        this.crest = predicted.crest();
    }

    @Override
    public double predicted(Condition condition) {
        Driver driver = predicted.driver();
        return switch (condition) {
            case LINE_VOLTAGE -> driver.line().voltage();
            case BUS_VOLTAGE -> crest.busVoltage();
            case OUTPUT_VOLTAGE -> crest.outputVoltage();
            case STRING_VOLTAGE -> driver.string().voltage(driver.string().current());
            case ON_TIME -> crest.cycle().onTime();
            case PEAK_CURRENT -> crest.cycle().peakCurrent();
            case FREQUENCY -> 1 / crest.cycle().period();
            case TURN_ON_CURRENT -> crest.cycle().startCurrent();
            case INDUCTANCE -> driver.inductor().inductance();
            case OUTPUT_CAPACITANCE -> driver.output().capacitanceAt(crest.outputVoltage());
            case BUS_CAPACITANCE -> driver.busCapacitance();
        };
    }

    @Override
    public Operation under(Map<Condition, Double> changed) {
        Driver driver = ChangedDriver.of(predicted.driver(), changed, control(changed));
        Converter converter = new Converter(driver, 0);
        double bus = changed.getOrDefault(Condition.BUS_VOLTAGE, crest.busVoltage());
        double output = changed.getOrDefault(Condition.OUTPUT_VOLTAGE, crest.outputVoltage());
        CellCycle cycle = settled(converter, bus, output, changed);
        AnglePoint changedCrest = point(driver, converter, bus, output, cycle);
        return new Operation(driver, predicted.setPoint(), predicted.points(), changedCrest, predicted.start());
    }

    /** A step of no time leaves the start of a cycle that creeps at its given value. */
    private CellCycle settled(Converter converter, double bus, double output, Map<Condition, Double> changed) {
        double setPoint = changed.getOrDefault(Condition.ON_TIME, setPoint(changed));
        double start =
                changed.getOrDefault(Condition.TURN_ON_CURRENT, crest.cycle().startCurrent());
        CellCycle cycle = null;
        for (int i = 0; i < CYCLES; i++) {
            cycle = converter.cycle(bus, output, setPoint, start, cycle);
            if (cycle == null) {
                throw new IllegalStateException("the bus cannot drive the inductor");
            }
            start = cycle.continuous() ? cycle.startCurrent() : cycle.nextStart();
        }
        return cycle;
    }

    private double setPoint(Map<Condition, Double> changed) {
        return changed.getOrDefault(Condition.PEAK_CURRENT, predicted.setPoint());
    }

    /** A control cell that keeps the given times and finds the others by its law. */
    private Control control(Map<Condition, Double> changed) {
        Control control = predicted.driver().control();
        boolean onTime = changed.containsKey(Condition.ON_TIME);
        boolean frequency = changed.containsKey(Condition.FREQUENCY);
        boolean timed = control.law().setsCurrent() ? onTime : frequency;
        if (timed) {
            return with(control, Law.FIXED_DUTY, 1 / period(changed), control.offTime());
        }
        return frequency ? with(control, control.law(), 1 / period(changed), period(changed) - onTime()) : control;
    }

    /** As given; otherwise a fixed off-time keeps the off-time and any other law the period [s]. */
    private double period(Map<Condition, Double> changed) {
        double period = crest.cycle().period();
        boolean keepsOffTime = predicted.driver().control().law() == Law.FIXED_OFF_TIME;
        double kept = keepsOffTime ? period - onTime() + changed.getOrDefault(Condition.ON_TIME, onTime()) : period;
        return changed.containsKey(Condition.FREQUENCY) ? 1 / changed.get(Condition.FREQUENCY) : kept;
    }

    private double onTime() {
        return crest.cycle().onTime();
    }

    private static Control with(Control control, Law law, double frequency, double offTime) {
        return new Control(
                law,
                frequency,
                offTime,
                control.minOffTime(),
                control.maxOnTime(),
                control.delay(),
                control.blanking(),
                control.shaping(),
                control.slope());
    }

    private AnglePoint point(Driver driver, Converter converter, double bus, double output, CellCycle cycle) {
        double string = crest.stringCurrent()
                + (output - crest.outputVoltage()) / driver.string().resistance();
        return new AnglePoint(
                crest.angle(),
                crest.lineVoltage(),
                crest.lineCurrent(),
                crest.bridgeCurrent(),
                bus,
                converter.busRipple(driver, cycle, crest.bridgeCurrent() > 0),
                converter.inputCharge(cycle) / cycle.period(),
                output,
                converter.outputCharge(cycle) / cycle.period(),
                string,
                cycle);
    }
}
