package lampproof.page;

import java.util.LinkedHashMap;
import java.util.Map;
import lampproof.design.Design;

/** The part values in the drawing of a circuit. */
final class CircuitValues {

    private CircuitValues() {}

    /** Converter, law, and the text of every value by its name, with underscores for points. */
    static Map<String, Object> of(Design design) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Map<String, Object> part : PartRows.of(design)) {
            values.put(((String) part.get("name")).replace('.', '_'), part.get("value"));
        }
        values.put("topology", design.driver().topology().word());
        values.put("law", design.driver().control().law().word());
        return values;
    }
}
