package lampproof.page;

import lampproof.design.Design;

/** A lamp in one line: converter, control law, line and string. */
final class LampLine {

    private LampLine() {}

    static String of(Design design) {
        return value(design, "driver.topology") + ", " + value(design, "driver.control") + "; line "
                + value(design, "line.voltage") + ", " + value(design, "line.frequency") + "; string "
                + value(design, "string.voltage") + ", " + value(design, "string.current");
    }

    private static String value(Design design, String name) {
        return PartRows.value(design, name);
    }
}
