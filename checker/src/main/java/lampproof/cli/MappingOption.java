package lampproof.cli;

/** The words of the option that says which column of an instrument is which quantity. */
final class MappingOption {

    static final String DESCRIPTION =
            "Which column is which quantity, separated by commas; gain, offset and delay where needed.";

    private MappingOption() {}
}
