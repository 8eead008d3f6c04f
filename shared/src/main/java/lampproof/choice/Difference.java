package lampproof.choice;

/**
 * One thing in which two finalists differ, and why.
 *
 * @param subject what differs
 * @param text the difference in words
 */
public record Difference(String subject, String text) {}
