package lampproof.page;

import java.util.Map;
import lampproof.template.Templates;

/** The page templates that ship with lampproof. */
final class PageTemplates {

    private static final String UNPRINTABLE = "[\\p{Cc}\\p{Cs}\\p{Cf}\\p{Co}\\p{Cn}&&[^\\n]]";

    private PageTemplates() {}

    /** Fills a template with texts, numbers, lists and maps; what cannot be printed is left out. */
    static String fill(String name, Map<String, Object> values) {
        return Templates.ofPages().fill(name, values).replaceAll(UNPRINTABLE, "");
    }
}
