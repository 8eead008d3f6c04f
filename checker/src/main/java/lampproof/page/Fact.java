package lampproof.page;

/**
 * A line at the head of a page.
 *
 * @param name what it says something about
 * @param value what it says
 */
record Fact(String name, String value) {}
