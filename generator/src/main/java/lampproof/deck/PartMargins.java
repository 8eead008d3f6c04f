package lampproof.deck;

import java.util.Map;
import java.util.TreeMap;
import lampproof.design.Housing.Part;
import lampproof.prediction.LineCorners;
import lampproof.prediction.heat.Temperatures;
import lampproof.rule.RatedUses;
import lampproof.unit.PlainNumber;

/** The margin of each rating over the greatest use: in per cent of that use, or in kelvins. */
final class PartMargins {

    private PartMargins() {}

    /** Margin by name of the rating. */
    static Map<String, String> of(LineCorners corners) {
        Map<String, String> margins = new TreeMap<>();
        RatedUses.of(corners).forEach(use -> margins.put(use.name(), PlainNumber.percent(use.margin(), 0)));
        Temperatures nominal = corners.nominal().temperatures();
        for (Part part : nominal.housing().parts()) {
            margins.put(
                    part.name() + ".temperature_rating",
                    PlainNumber.fixed(part.rating() - hottest(corners, part), 0) + " K");
        }
        return margins;
    }

    private static double hottest(LineCorners corners, Part part) {
        return corners.solutions().values().stream()
                .mapToDouble(solution -> solution.temperatures().of(part.name()))
                .max()
                .orElseThrow();
    }
}
