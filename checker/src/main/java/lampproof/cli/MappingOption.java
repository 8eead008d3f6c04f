package lampproof.cli;

/** The text of the option that maps the quantities to the columns of an instrument. */
final class MappingOption {

    static final String DESCRIPTION =
            "The column of each quantity, separated by commas, with gain, offset and delay if needed.";

    private MappingOption() {}
}
