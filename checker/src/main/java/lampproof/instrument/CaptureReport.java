package lampproof.instrument;

import java.util.List;

/**
 * Every figure that a table of an instrument allows on its own.
 *
 * @param file name of the file
 * @param form what was recognised
 * @param mappings which column was read as which quantity
 * @param remarks what must be said beside the figures
 * @param sections the figures
 */
public record CaptureReport(
        String file, String form, List<Mapping> mappings, List<String> remarks, List<CaptureSection> sections) {

    /** Copies the lists. */
    public CaptureReport {
        mappings = List.copyOf(mappings);
        remarks = List.copyOf(remarks);
        sections = List.copyOf(sections);
    }

    /** Whether there is any figure at all. */
    public boolean measured() {
        return sections.stream()
                .flatMap(section -> section.figures().stream())
                .anyMatch(figure -> figure.value().present());
    }
}
