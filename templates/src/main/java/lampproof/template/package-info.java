/**
 * Templates that ship with lampproof, and what they see of the values that fill them.
 *
 * <p>In: numbers, words, truths, lists, maps and records. Out: filled templates. A template reads the components of a record
 * and meets no other object, so it can run no code. Not here: what a deck or a page holds.
 */
package lampproof.template;
