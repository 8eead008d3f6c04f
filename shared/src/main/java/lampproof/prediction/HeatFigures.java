package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Sources.ARRHENIUS;
import static lampproof.prediction.Sources.HEAT;
import static lampproof.prediction.Sources.WARM_STRING;

import java.util.List;
import lampproof.prediction.heat.PartLife;

/** Temperatures in the housing and hours of life. */
final class HeatFigures {

    private HeatFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("temperature.housing", "T_housing", "degC", CALCULATED)
                        .definition("air temperature inside the housing")
                        .formula("T_ambient + R_housing (P_loss + heat of the string)")
                        .source(HEAT)
                        .calculated(s -> s.temperatures().of("housing")),
                part("bridge", "the bridge"),
                part("inductor", "the inductor"),
                part("switch", "the switch"),
                part("diode", "the diode"),
                part("output", "the output capacitor"),
                figure("temperature.led", "T_led", "degC", CALCULATED)
                        .definition("junction temperature of the LEDs")
                        .formula("T_housing + R P_s (1 - light share)")
                        .source(HEAT)
                        .calculated(s -> s.temperatures().of("string")),
                figure("string.voltage.hot", "V_s,hot", "V", CALCULATED)
                        .definition("string voltage at its mean current with the junctions at temperature.led")
                        .formula("V_s + slope (T_led - 25 degC)")
                        .source(WARM_STRING)
                        .calculated(Solution::hotStringVoltage),
                figure("string.voltage.cold", "V_s,cold", "V", CALCULATED)
                        .definition("string voltage at its mean current with the junctions at ambient.coldest")
                        .formula("V_s + slope (T_coldest - 25 degC)")
                        .source(WARM_STRING)
                        .calculated(Solution::coldStringVoltage),
                figure("life.led", "t_led", "h", CALCULATED)
                        .definition("life of the LEDs at temperature.led")
                        .formula("t_1 exp(Ea / k (1 / T - 1 / T_1)), Ea from both points")
                        .source(ARRHENIUS)
                        .calculated(s -> PartLife.arrhenius(
                                s.driver().heat().light().life(),
                                s.temperatures().of("string"))),
                figure("life.capacitor", "t_C", "h", CALCULATED)
                        .definition("life of the output capacitor at temperature.output")
                        .formula("t_1 exp(Ea / k (1 / T - 1 / T_1)), Ea from both points")
                        .source(ARRHENIUS)
                        .calculated(s -> PartLife.arrhenius(
                                s.driver().heat().capacitorLife(),
                                s.temperatures().of("output"))),
                figure("life.capacitor.ten_degrees", "t_C,10", "h", CALCULATED)
                        .definition(
                                "life of the output capacitor by the ten-degree rule from the hotter point; 0 above that temperature")
                        .formula("t_hot 2^((T_hot - T) / 10 K)")
                        .source("life doubles for every 10 K less; makers' application notes, from memory")
                        .calculated(s -> PartLife.tenDegrees(
                                s.driver().heat().capacitorLife(),
                                s.temperatures().of("output"))));
    }

    private static FigureEntry part(String name, String words) {
        return figure("temperature." + name, "T_" + name, "degC", CALCULATED)
                .definition("temperature of " + words)
                .formula("T_housing + R P_" + name)
                .source(HEAT)
                .calculated(s -> s.temperatures().of(name));
    }
}
