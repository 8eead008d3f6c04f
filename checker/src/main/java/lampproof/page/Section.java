package lampproof.page;

/**
 * A section of a page: the values of {@code view} in the template {@code PAGE/ID.ftlh}, which sees them as {@code view}.
 *
 * @param id its name within the page, and that of its template
 * @param title its heading, and its entry in the list of contents
 * @param folded whether it is closed on the screen and left out on paper
 * @param view what its template shows
 */
record Section(String id, String title, boolean folded, Record view) {

    /** A section that is open on the screen and printed. */
    static Section open(String id, String title, Record view) {
        return new Section(id, title, false, view);
    }

    /** A section of details. */
    static Section folded(String id, String title, Record view) {
        return new Section(id, title, true, view);
    }
}
