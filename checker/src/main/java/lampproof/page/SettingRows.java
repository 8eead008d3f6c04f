package lampproof.page;

import java.util.List;
import java.util.stream.IntStream;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingPoint;
import lampproof.unit.PlainNumber;

/**
 * Every setting of the dimmer, from full to off.
 *
 * @param settings a row for each setting
 */
record SettingRows(List<Row> settings) {

    /**
     * A setting.
     *
     * @param angle conduction angle [deg]
     * @param down string current when turned down
     * @param level the same over that at full
     * @param up string current when turned up
     * @param load what flows into the lamp when turned down
     * @param out whether the triac goes out
     * @param flickers whether half cycles are not alike
     */
    record Row(String angle, String down, String level, String up, Load load, boolean out, boolean flickers) {}

    /**
     * What flows into the lamp, each with its unit.
     *
     * @param power line power
     * @param bleeder heat of the bleeder
     * @param spike greatest current into the lamp
     * @param least least current of the triac after firing; empty where it is not looked at
     */
    record Load(String power, String bleeder, String spike, String least) {}

    static SettingRows of(DimmingCurve curve) {
        int last = curve.up().size() - 1;
        return new SettingRows(IntStream.rangeClosed(0, last)
                .mapToObj(k -> row(curve, curve.down().get(k), curve.up().get(last - k)))
                .toList());
    }

    private static Row row(DimmingCurve curve, DimmingPoint down, DimmingPoint up) {
        return new Row(
                PlainNumber.fixed(down.degrees(), 0),
                ColumnText.text(down.current(), "A"),
                ColumnText.text(100 * curve.level(down.current()), "%"),
                ColumnText.text(up.current(), "A"),
                load(curve, down),
                curve.goesOut(down),
                curve.flickers(down));
    }

    private static Load load(DimmingCurve curve, DimmingPoint down) {
        return new Load(
                ColumnText.text(down.stress().linePower(), "W"),
                ColumnText.text(down.stress().bleederLoss(), "W"),
                ColumnText.text(down.stress().peakLineCurrent(), "A"),
                curve.isWatched(down) ? ColumnText.text(down.stress().leastTriacCurrent(), "A") : "");
    }
}
