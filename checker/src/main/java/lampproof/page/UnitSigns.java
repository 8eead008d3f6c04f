package lampproof.page;

/** Units as readers write them. */
final class UnitSigns {

    private UnitSigns() {}

    /** Micro, square and degree by their signs. */
    static String signed(String text) {
        return text.replace("mm2", "mm\u00b2")
                .replace("mm4", "mm\u2074")
                .replace("degC", "\u00b0C")
                .replaceAll(" u(?=[A-Z])", " \u00b5");
    }
}
