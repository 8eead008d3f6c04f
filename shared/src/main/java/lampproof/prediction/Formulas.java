package lampproof.prediction;

import static java.util.Map.entry;

import java.util.Map;

/**
 * The formula of each figure in a line, for a reader.
 *
 * <p>Angle brackets are the mean over the window; E and S are source and diode voltage of the switching cell, T its
 * period, and a and b the ends of a straight piece of current of length t.
 */
final class Formulas {

    private static final String HARMONIC = "line.current.harmonic.";
    private static final String NOISE = "noise.level.harmonic.";

    private static final Map<String, String> BY_FIGURE = Map.ofEntries(
            entry("line.power.mean", "<v i>"),
            entry("line.current.rms", "sqrt(<i^2>)"),
            entry("line.current.peak", "max |i|"),
            entry("line.power_factor", "P_in / (V_rms I_in)"),
            entry(
                    "line.displacement_factor",
                    "cos phi1 = a1 / sqrt(a1^2 + b1^2), of the Fourier coefficients in and out of phase"),
            entry("line.current.thd", "100 sqrt(sum I_n^2, n = 2 to 39) / I_1"),
            entry(
                    "line.conduction_angle",
                    "180 deg times the share of the half cycle with bridge current in the mean of a degree"),
            entry("bridge.voltage.peak", "V_bus,pk + v_D(i)"),
            entry("bridge.current.mean", "<i_br>, i_br = i_conv + C_bus dv/dt while the bridge conducts"),
            entry("bridge.current.rms", "sqrt(<i_br^2>)"),
            entry("bridge.loss", "<2 i_br (n Vt ln(1 + i_br / Is) + R i_br)>"),
            entry(
                    "filter.loss",
                    "<R i^2> with R = R_fuse + R_line + R_w R_d / (R_w + R_d), and what the switching ripple adds"),
            entry("bus.voltage.peak", "max (V sin theta - drops, held voltage) + half the switching ripple"),
            entry(
                    "bus.ripple_current.rms",
                    "sqrt(<i_br^2> - <i_conv>^2 + sum I_n^2 / 2), the part of six switching harmonics that the filter does not take"),
            entry(
                    "bus.voltage.valley",
                    "min (held voltage less half the switching ripple, not below the output of a step-down converter)"),
            entry("bias.loss", "<v_bus> (I_bias + Q_g f) - P_Q,g"),
            entry("bleeder.loss", "<v i_bl>"),
            entry("bleeder.current.hold", "max i_bl from 30 to 150 deg"),
            entry("dimmer.current.peak", "max |i_T| of the averaged model with the ring of firing"),
            entry("dimmer.current.least", "min |i_T| after the gate pulse"),
            entry("dimmer.voltage.off", "V w C / sqrt((w C)^2 + 1 / R^2)"),
            entry("inductor.current.peak", "max (I_0 + E t_on / L), and up to the node passing E"),
            entry("inductor.current.rms", "sqrt(sum of (a^2 + a b + b^2) t / 3 over the ramps / T)"),
            entry("inductor.current.ripple", "I_top - I_trough"),
            entry("inductor.loss.copper", "R_w I_L^2"),
            entry(
                    "inductor.loss.ac",
                    "R_w (F_R - 1) I_ac^2, F_R of layers and depth at the frequency of equal rms slope"),
            entry("inductor.loss.core", "V_e k_i (dB)^(beta - alpha) <|dB/dt|^alpha>"),
            entry("inductor.flux.peak", "L I_L,pk / (N A_e)"),
            entry("inductor.saturation_margin", "100 (I_sat / I_L,pk - 1)"),
            entry("switch.current.peak", "I_L,pk"),
            entry("switch.current.rms", "sqrt(sum over on-ramp, node rise and ring of their squares / T)"),
            entry("switch.current.mean", "charge through the switch in a cycle / T"),
            entry("switch.voltage.peak", "V_D,pk + v_D(I_L,pk)"),
            entry("switch.loss", "(R_on + R_s) <i_on^2> + <1/2 C V^2 f>"),
            entry("switch.loss.conduction", "R_on <i_on^2>"),
            entry("switch.loss.overlap", "<1/2 V I t_x f> at each edge"),
            entry("switch.loss.capacitance", "<1/2 C V^2 f>, V at each turn-on"),
            entry("switch.loss.gate", "V_g Q_g <f>"),
            entry("sense.loss", "R_s <i_on^2>"),
            entry("diode.current.peak", "I_L,pk"),
            entry("diode.current.mean", "charge of the falling ramp / T"),
            entry("diode.current.rms", "sqrt((a^2 + a b + b^2) t / (3 T))"),
            entry("diode.voltage.peak", "step-up: V_o,pk; step-down: V_bus,pk"),
            entry("diode.loss.conduction", "<i_D (n Vt ln(1 + i_D / Is) + R i_D)>"),
            entry("diode.loss.recovery", "<V Q_rr f> where the switch closes under current"),
            entry("diode.loss.reverse", "<q (V - R i) f>, q = M Q_rr / I_rr; M follows i_D with the lifetime"),
            entry("switching.on_time", "the set-point, or L (I_ref - I_0) / (E - R i + L m_a) and the delay"),
            entry("switching.frequency.crest", "1 / (t_on + t_rise + t_diode + t_ring) at the crest"),
            entry("switching.frequency.min", "min 1 / T over the half cycle"),
            entry("switching.frequency.max", "max 1 / T over the half cycle"),
            entry("switching.mode_share.dcm", "100 (cycles with the diode at rest) / (all cycles)"),
            entry("string.current.mean", "<i_s>, i_s = i_o - C_o dv_o/dt"),
            entry("string.current.peak", "max (i_s + dV / (2 R_d))"),
            entry("string.power.mean", "<v_o i_s>"),
            entry("string.start_time", "t of the first i_s = <i_s> / 2, of the averaged model from an empty bus"),
            entry("string.flicker.percent", "100 (max - min) / (max + min)"),
            entry("string.flicker.index", "area above the mean / whole area"),
            entry("output.voltage.peak", "max (v_o + dV / 2)"),
            entry("string.current.ripple.line", "max i_s - min i_s"),
            entry(
                    "string.current.ripple.switching",
                    "dV / R_d, dV = charge of i_D (step-up) or i_L (step-down) above its mean / C_o"),
            entry("output.ripple_current.rms", "sqrt(<i_conv^2> - 2 <i_conv i_s> + <i_s^2>)"),
            entry("bus.voltage.stress", "100 V_pk / V_rating"),
            entry("switch.voltage.stress", "100 V_pk / V_rating"),
            entry("switch.current.stress", "100 I_pk / I_rating"),
            entry("diode.voltage.stress", "100 V_pk / V_rating"),
            entry("output.voltage.stress", "100 V_pk / V_rating"),
            entry("loss.filter", "P_f"),
            entry("loss.bridge", "P_br"),
            entry("loss.capacitors", "(w C V^2) tan delta + R_C I_C,bus^2"),
            entry("loss.bleeder", "P_bl"),
            entry("loss.bias", "P_bias"),
            entry("loss.inductor", "P_L,cu + P_L,ac + P_L,fe"),
            entry("loss.switch", "P_Q,on + P_Q,ov + P_Q,C + P_Q,g"),
            entry("loss.snubber", "<C_s (V_off^2 + V_on^2) f / 2>"),
            entry("loss.sense", "P_R"),
            entry("loss.diode", "P_D + P_D,rr"),
            entry("loss.output", "R_C I_C,o^2"),
            entry("loss.total", "sum of the losses of the parts = P_in - P_s - dE/dt"),
            entry("efficiency", "100 P_s / (P_s + P_loss)"),
            entry("temperature.housing", "T_ambient + R_housing (P_loss + heat of the string)"),
            entry("temperature.bridge", "T_housing + R P_bridge"),
            entry("temperature.inductor", "T_housing + R P_inductor"),
            entry("temperature.switch", "T_housing + R P_switch"),
            entry("temperature.diode", "T_housing + R P_diode"),
            entry("temperature.output", "T_housing + R P_output"),
            entry("temperature.led", "T_housing + R P_s (1 - light share)"),
            entry("string.voltage.hot", "V_s + slope (T_led - 25 degC)"),
            entry("string.voltage.cold", "V_s + slope (T_coldest - 25 degC)"),
            entry("life.led", "t_1 exp(Ea / k (1 / T - 1 / T_1)), Ea from both points"),
            entry("life.capacitor", "t_1 exp(Ea / k (1 / T - 1 / T_1)), Ea from both points"),
            entry("life.capacitor.ten_degrees", "t_hot 2^((T_hot - T) / 10 K)"),
            entry("noise.level.fundamental", "20 lg(|Z(f)| I_1 / 1 uV), Z from converter current to receiver"),
            entry("noise.level.harmonics", "10 lg(sum (|Z(n f)| I_n / 1 uV)^2, n = 2 to 10)"),
            entry("noise.margin.quasi_peak", "min (limit - L_n), n = 1 to 10"),
            entry("noise.margin.average", "min (limit - 20 lg(<|Z(n f)| I_n> / 1 uV)), n = 1 to 10"),
            entry("noise.filter.corner", "1 / (2 pi sqrt(L_f (C_f + C_bus)))"),
            entry("noise.filter.corner_needed", "the same with the least choke that keeps M_QP and M_AV above 0"),
            entry("limit.flicker.low_risk", "0.025 f below 90 Hz, 0.08 f to 1250 Hz [%]"),
            entry("limit.flicker.no_effect", "0.01 f below 90 Hz, (1 / 30) f to 3000 Hz [%]"),
            entry("limit.displacement_factor", "0 to 5 W, 0.5 to 10 W, 0.7 to 25 W, 0.9 above"));

    private Formulas() {}

    /** The formula of a figure. */
    static String of(String figure) {
        if (figure.startsWith(HARMONIC)) {
            return "100 I_n / I_1, n = " + figure.substring(HARMONIC.length());
        }
        return figure.startsWith(NOISE)
                ? "20 lg(|Z(n f)| I_n / 1 uV), n = " + figure.substring(NOISE.length())
                : BY_FIGURE.getOrDefault(figure, "");
    }
}
