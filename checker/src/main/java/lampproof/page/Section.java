package lampproof.page;

/**
 * A section of a page: the values of {@code view} in the template {@code PAGE/ID.ftlh}, which sees them as {@code view}.
 *
 * @param id its name within the page, and that of its template
 * @param title its entry in the list of contents
 * @param view what its template shows
 */
record Section(String id, String title, Record view) {}
