package lampproof.instrument;

import java.util.List;

/**
 * Every figure that a table of an instrument allows without a spec.
 *
 * @param file name of the file
 * @param form what was recognised
 * @param mappings the column of each quantity
 * @param remarks remarks on the figures
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

    /** Whether there is a figure. */
    public boolean measured() {
        return sections.stream()
                .flatMap(section -> section.figures().stream())
                .anyMatch(figure -> figure.value().present());
    }
}
