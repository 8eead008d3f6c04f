package lampproof.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampproof.design.Dimming;
import lampproof.prediction.Solution;
import lampproof.prediction.loss.Loss;
import lampproof.prediction.loss.LossPart;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** Tells in words what makes the finalists of a comparison differ. */
public final class Differences {

    private static final double WORTH_TELLING = 0.08;
    private static final int MOST_PARTS = 5;

    private final Comparison comparison;
    private final Candidate winner;
    private final Candidate rival;

    private Differences(Comparison comparison, Candidate rival) {
        this.comparison = comparison;
        this.winner = comparison.winner();
        this.rival = rival;
    }

    /** The differences of both finalists; none when there is but one. */
    public static List<Difference> of(Comparison comparison) {
        return comparison
                .rival()
                .map(rival -> new Differences(comparison, rival).all())
                .orElse(List.of());
    }

    private List<Difference> all() {
        List<Difference> all = new ArrayList<>();
        all.add(new Difference("efficiency", efficiency()));
        lostParts().forEach(part -> all.add(new Difference("loss: " + part.word(), loss(part))));
        all.add(new Difference("inductor", inductor()));
        all.add(new Difference("line", line()));
        all.add(new Difference("light", light()));
        if (comparison.space().lamp().isDimmed()) {
            all.add(new Difference("dimmer", dimmer()));
        }
        all.add(new Difference("parts", parts()));
        all.add(new Difference("life", life()));
        return all;
    }

    private String efficiency() {
        double mine = losses(winner);
        double other = losses(rival);
        return text(
                "the %s hands %s of its power to the string, the %s %s: it loses %s where the other loses %s, %s"
                        + " times as much",
                name(winner),
                percent(winner.solution().efficiency()),
                name(rival),
                percent(rival.solution().efficiency()),
                watts(mine),
                watts(other),
                PlainNumber.fixed(mine / other, 2));
    }

    /** The parts whose losses differ by a good part of the whole difference, the largest difference first. */
    private List<LossPart> lostParts() {
        Map<LossPart, Double> mine = winner.solution().losses().parts();
        Map<LossPart, Double> other = rival.solution().losses().parts();
        double whole = mine.keySet().stream()
                .mapToDouble(part -> Math.abs(other.get(part) - mine.get(part)))
                .sum();
        return mine.keySet().stream()
                .filter(part -> Math.abs(other.get(part) - mine.get(part)) > WORTH_TELLING * whole)
                .sorted((one, two) -> Double.compare(
                        Math.abs(other.get(two) - mine.get(two)), Math.abs(other.get(one) - mine.get(one))))
                .limit(MOST_PARTS)
                .toList();
    }

    private String loss(LossPart part) {
        double mine = winner.solution().losses().of(part);
        double other = rival.solution().losses().of(part);
        Candidate payer = other > mine ? rival : winner;
        Candidate saver = other > mine ? winner : rival;
        String why = why(part, payer, saver);
        return text(
                "the %s pays %s %s (%s against %s)%s",
                name(payer),
                watts(Math.abs(other - mine)),
                part == LossPart.BLEEDER ? "for the dimmer load" : "more in the " + part.word(),
                watts(Math.max(mine, other)),
                watts(Math.min(mine, other)),
                why.isEmpty() ? "" : ": " + why);
    }

    private static String why(LossPart part, Candidate payer, Candidate saver) {
        Solution high = payer.solution();
        Solution low = saver.solution();
        return switch (part) {
            case DIODE ->
                text(
                        "its diode carries %s on average and loses %s by recovery, the other one %s and %s",
                        amperes(high.stage().diode().mean()),
                        watts(high.losses().of(Loss.RECOVERY)),
                        amperes(low.stage().diode().mean()),
                        watts(low.losses().of(Loss.RECOVERY)));
            case SWITCH ->
                text(
                        "it opens at up to %s and stands %s V, the other one %s and %s V",
                        amperes(high.stage().inductor().peak()),
                        whole(high.nodeVoltage()),
                        amperes(low.stage().inductor().peak()),
                        whole(low.nodeVoltage()));
            case INDUCTOR ->
                text(
                        "it carries %s rms and swings to %s mT, the other one %s and %s mT",
                        amperes(high.stage().inductor().rms()),
                        whole(1e3 * high.peakFlux()),
                        amperes(low.stage().inductor().rms()),
                        whole(1e3 * low.peakFlux()));
            case SENSE ->
                text(
                        "its switch carries %s rms, the other one %s",
                        amperes(high.stage().powerSwitch().rms()),
                        amperes(low.stage().powerSwitch().rms()));
            case FILTER, BRIDGE ->
                text(
                        "it draws %s rms from the line, the other one %s",
                        amperes(high.line().current()), amperes(low.line().current()));
            case BIAS ->
                text(
                        "the gate of its switch takes %s a cycle, that of the other one %s, at %s V and %s V of bus",
                        gateCharge(high),
                        gateCharge(low),
                        whole(high.line().busPeak()),
                        whole(low.line().busPeak()));
            case BLEEDER ->
                saver.solution().losses().of(LossPart.BLEEDER) < 1e-3
                        ? text("the %s does not need it", name(saver))
                        : text(
                                "the lamp itself draws as little as %s, the other one %s",
                                amperes(payer.heldCurrent()), amperes(saver.heldCurrent()));
            case CAPACITORS, SNUBBER, OUTPUT -> "";
        };
    }

    private String inductor() {
        return text(
                "stores at most %s on a core of %s mm4 (%s) in the %s, %s on %s mm4 (%s) in the %s",
                ValueStyle.SENTENCE.text(winner.inductorEnergy(), "J"),
                whole(1e12 * winner.areaProduct()),
                winner.core(),
                name(winner),
                ValueStyle.SENTENCE.text(rival.inductorEnergy(), "J"),
                whole(1e12 * rival.areaProduct()),
                rival.core(),
                name(rival));
    }

    private String line() {
        return text(
                "power factor %s and distortion %s %% for the %s, %s and %s %% for the %s",
                ValueStyle.SENTENCE.text(winner.powerFactor(), "1"),
                whole(100 * winner.distortion()),
                name(winner),
                ValueStyle.SENTENCE.text(rival.powerFactor(), "1"),
                whole(100 * rival.distortion()),
                name(rival));
    }

    private String light() {
        StringBuilder text = new StringBuilder(text(
                "percent flicker %s %% for the %s, %s %% for the %s; both smooth the %s ripple",
                flicker(winner),
                name(winner),
                flicker(rival),
                name(rival),
                winner.arrangement().smoothing().word()));
        if (winner.arrangement().smoothing() != rival.arrangement().smoothing()) {
            text.setLength(text.lastIndexOf(";"));
        }
        for (Candidate finalist : comparison.finalists()) {
            text.append("; ").append(otherSmoothing(finalist));
        }
        return text.toString();
    }

    private String otherSmoothing(Candidate finalist) {
        return comparison
                .otherwiseSmoothed(finalist.arrangement().topology())
                .map(other -> text(
                        "with the %s ripple smoothed instead, the %s flickers by %s %% and takes %s mm2 and %s cost points"
                                + " instead of %s and %s",
                        other.arrangement().smoothing().word(),
                        name(finalist),
                        flicker(other),
                        whole(1e6 * other.bill().area()),
                        whole(other.bill().cost()),
                        whole(1e6 * finalist.bill().area()),
                        whole(finalist.bill().cost())))
                .orElse("no film or ceramic capacitor smooths the other ripple for the " + name(finalist));
    }

    private String dimmer() {
        return dead(winner) + "; " + dead(rival) + "; " + load(winner) + "; " + load(rival);
    }

    private static String load(Candidate candidate) {
        Dimming dimming = candidate.solution().driver().dimming();
        boolean resistor = dimming.bleederResistance() < DimmerLoad.NONE;
        boolean topUp = dimming.topUpCurrent() > 0;
        if (!resistor && !topUp) {
            return "the " + name(candidate) + " needs no dimmer load";
        }
        return text(
                "the %s carries a dimmer load%s%s, which burns %s",
                name(candidate),
                resistor
                        ? text(
                                " of %s below %s",
                                ValueStyle.SENTENCE.text(dimming.bleederResistance(), "Ohm"),
                                ValueStyle.SENTENCE.text(dimming.threshold(), "V"))
                        : "",
                topUp ? text(" that tops up its current to %s", amperes(dimming.topUpCurrent())) : "",
                watts(candidate.dimmerLoad()));
    }

    private static String dead(Candidate candidate) {
        return candidate.deadVoltage() > 0
                ? text(
                        "below %s of the line the %s can draw nothing, so the last %s degrees of a dimmer move no light",
                        ValueStyle.SENTENCE.text(candidate.deadVoltage(), "V"),
                        name(candidate),
                        PlainNumber.fixed(candidate.deadTravel(), 1))
                : text("the %s draws from any line voltage, so every degree of a dimmer moves light", name(candidate));
    }

    private String parts() {
        return built(winner) + "; " + built(rival);
    }

    private static String built(Candidate candidate) {
        BillItem largest = candidate.bill().largest();
        return text(
                "%d parts on %s mm2 for %s cost points in the %s, of which the %s takes %s mm2",
                candidate.bill().count(),
                whole(1e6 * candidate.bill().area()),
                whole(candidate.bill().cost()),
                name(candidate),
                largest.part(),
                whole(1e6 * largest.area()));
    }

    private String life() {
        return text(
                "%s for the %s, whose %s comes closest to its rating (%s of %s degC); %s for the %s, whose %s does (%s of %s"
                        + " degC)",
                hours(winner),
                name(winner),
                winner.hottest().name(),
                whole(winner.temperature(winner.hottest())),
                whole(winner.hottest().rating()),
                hours(rival),
                name(rival),
                rival.hottest().name(),
                whole(rival.temperature(rival.hottest())),
                whole(rival.hottest().rating()));
    }

    private static String hours(Candidate candidate) {
        return ValueStyle.SENTENCE.text(100 * Math.rint(candidate.life() / 100), "h");
    }

    private static String gateCharge(Solution solution) {
        return Engineering.digits(3).inAscii().text(solution.driver().edges().gateCharge(), "C");
    }

    private static String whole(double number) {
        return PlainNumber.fixed(number, 0);
    }

    private static String percent(double value) {
        return ValueStyle.SENTENCE.text(value, "%");
    }

    private static String watts(double power) {
        return ValueStyle.SENTENCE.text(power, "W");
    }

    private static String amperes(double current) {
        return ValueStyle.SENTENCE.text(current, "A");
    }

    private static double losses(Candidate candidate) {
        return candidate.solution().losses().total();
    }

    private static String flicker(Candidate candidate) {
        return whole(100 * candidate.solution().string().percentFlicker());
    }

    private static String name(Candidate candidate) {
        return candidate.arrangement().topology().word();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
