package lampproof.page;

/** Units as readers write them. */
final class UnitSigns {

    private UnitSigns() {}

    /** Micro, ohm, squares and degrees by their signs. */
    static String signed(String text) {
        return text.replace("mm2", "mm\u00b2")
                .replace("mm4", "mm\u2074")
                .replace("degC", "\u00b0C")
                .replaceAll("(?<=\\d) deg\\b", "\u00b0")
                .replace("Ohm", "\u03a9")
                .replace("dBuV", "dB\u00b5V")
                .replaceAll(" u(?=[A-Z\u03a9]|[sm]\\b)", " \u00b5");
    }
}
