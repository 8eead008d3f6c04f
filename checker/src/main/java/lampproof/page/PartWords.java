package lampproof.page;

/** Rows of a spec in words. */
final class PartWords {

    private PartWords() {}

    /** A rating: {@code switch.voltage_rating} is the switch voltage. */
    static String rating(String name) {
        return name.replace("_rating", "").replace('.', ' ').replace('_', ' ');
    }
}
