package lampproof.lint.netlist;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an {@code .include path} or a {@code .lib path section} asks for.
 *
 * <p>The whole line is read, with what would be a comment elsewhere: the simulator looks for comments here too, but a name that
 * holds the mark of one is refused by it.
 *
 * @param path the file's name, without the quotes around it
 * @param section the section of a library; empty when the whole file is wanted
 * @param place where the file's name stands
 */
record FileRequest(String path, Optional<String> section, Place place) {

    private static final Pattern FORM = Pattern.compile(
            "(?i)[ \t]*+\\.(inc|lib)\\S*+\\s++" + "((?:\"[^\"]*+\"|'[^']*+')?+\\S*+)(?:\\s++['\"]*+([^\\s'\"]++))?+.*");

    static Optional<FileRequest> of(SourceLine line) {
        Matcher form = FORM.matcher(line.text());
        return form.matches() && !form.group(2).isEmpty() ? of(line, form) : Optional.empty();
    }

    /** {@code .lib name} begins a section, but some modes of the simulator take it for a file, so a path counts as one. */
    private static Optional<FileRequest> of(SourceLine line, Matcher form) {
        String path = FileNames.unquoted(form.group(2));
        Place place = Place.of(line, form.start(2), form.end(2));
        if (form.group(1).equalsIgnoreCase("inc")) {
            return Optional.of(new FileRequest(path, Optional.empty(), place));
        }
        boolean complete = form.group(3) != null || FileNames.mayLeadOutside(form.group(2));
        String section = form.group(3) == null ? "" : form.group(3).toLowerCase(Locale.ROOT);
        return complete ? Optional.of(new FileRequest(path, Optional.of(section), place)) : Optional.empty();
    }
}
