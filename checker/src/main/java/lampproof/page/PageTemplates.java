package lampproof.page;

import lampproof.template.Templates;

/** The page templates that ship with lampproof. */
final class PageTemplates {

    private static final String UNPRINTABLE = "[\\p{Cc}\\p{Cs}\\p{Cf}\\p{Co}\\p{Cn}&&[^\\n]]";

    private PageTemplates() {}

    /** Fills the template of a page with its view; what cannot be printed is left out. */
    static String fill(String name, Record view) {
        return Templates.ofPages().fill(name, view).replaceAll(UNPRINTABLE, "");
    }
}
