package lampproof.page;

import java.util.List;
import lampproof.compare.Outcome;
import lampproof.compare.SettingVerdict;
import lampproof.dimming.DimmingCurve;

/**
 * The settings of the dimmer that were simulated.
 *
 * @param settings a row for each setting
 */
record SimulatedRows(List<Row> settings) {

    /**
     * A simulated setting.
     *
     * @param angle conduction angle [deg]
     * @param predicted predicted string current with its unit
     * @param simulated the simulated one; empty where there is none
     * @param counts how many of its figures have which outcome
     * @param run folder of its run
     */
    record Row(String angle, String predicted, String simulated, Counts counts, String run) {}

    /**
     * How many figures agree, differ, or have no verdict.
     *
     * @param agree those that agree
     * @param differ those that differ
     * @param without those without a verdict
     */
    record Counts(long agree, long differ, long without) {}

    static SimulatedRows of(DimmingCurve curve, List<SettingVerdict> settings) {
        return new SimulatedRows(
                settings.stream().map(setting -> row(curve, setting)).toList());
    }

    private static Row row(DimmingCurve curve, SettingVerdict setting) {
        return new Row(
                SettingVerdict.text(setting.degrees()),
                ColumnText.text(curve.currentAt(setting.degrees()), "A"),
                ColumnText.text(setting.simulated("string.current.mean"), "A"),
                new Counts(
                        setting.run().count(Outcome.AGREES),
                        setting.run().count(Outcome.DIFFERS),
                        setting.run().count(Outcome.NO_VERDICT)),
                setting.run().name());
    }
}
