package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Sources.HEAT;

import java.util.List;
import lampproof.prediction.heat.PartLife;

/** Temperatures in the housing and hours of life. */
final class HeatFigures {

    private HeatFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure(
                                "temperature.housing",
                                "T_housing",
                                "degC",
                                CALCULATED,
                                "temperature of the inside of the housing",
                                HEAT)
                        .calculated(s -> s.temperatures().of("housing")),
                figure("temperature.bridge", "T_bridge", "degC", CALCULATED, "temperature of the bridge", HEAT)
                        .calculated(s -> s.temperatures().of("bridge")),
                figure("temperature.inductor", "T_inductor", "degC", CALCULATED, "temperature of the inductor", HEAT)
                        .calculated(s -> s.temperatures().of("inductor")),
                figure("temperature.switch", "T_switch", "degC", CALCULATED, "temperature of the switch", HEAT)
                        .calculated(s -> s.temperatures().of("switch")),
                figure("temperature.diode", "T_diode", "degC", CALCULATED, "temperature of the diode", HEAT)
                        .calculated(s -> s.temperatures().of("diode")),
                figure(
                                "temperature.output",
                                "T_output",
                                "degC",
                                CALCULATED,
                                "temperature of the output capacitor",
                                HEAT)
                        .calculated(s -> s.temperatures().of("output")),
                figure("temperature.led", "T_led", "degC", CALCULATED, "junction temperature of the LEDs", HEAT)
                        .calculated(s -> s.temperatures().of("string")),
                figure(
                                "string.voltage.hot",
                                "V_s,hot",
                                "V",
                                CALCULATED,
                                "string voltage at its mean current with the junctions at temperature.led",
                                "straight line over temperature, common practice, no source")
                        .calculated(Solution::hotStringVoltage),
                figure(
                                "string.voltage.cold",
                                "V_s,cold",
                                "V",
                                CALCULATED,
                                "string voltage at its mean current with the junctions at ambient.coldest",
                                "straight line over temperature, common practice, no source")
                        .calculated(Solution::coldStringVoltage),
                figure(
                                "life.led",
                                "t_led",
                                "h",
                                CALCULATED,
                                "life of the LEDs at temperature.led",
                                "Arrhenius law through two given points, common practice, no source")
                        .calculated(s -> PartLife.arrhenius(
                                s.driver().fittings().light().life(),
                                s.temperatures().of("string"))),
                figure(
                                "life.capacitor",
                                "t_C",
                                "h",
                                CALCULATED,
                                "life of the output capacitor at temperature.output",
                                "Arrhenius law through two given points, common practice, no source")
                        .calculated(s -> PartLife.arrhenius(
                                s.driver().fittings().capacitorLife(),
                                s.temperatures().of("output"))),
                figure(
                                "life.capacitor.ten_degrees",
                                "t_C,10",
                                "h",
                                CALCULATED,
                                "the same by the ten-degree rule from the hotter point; 0 above it",
                                "life doubles for every ten kelvin less; makers' application notes, from memory")
                        .calculated(s -> PartLife.tenDegrees(
                                s.driver().fittings().capacitorLife(),
                                s.temperatures().of("output"))));
    }
}
