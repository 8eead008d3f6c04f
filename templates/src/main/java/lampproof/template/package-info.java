/**
 * Templates that ship with lampproof, and what they see of the values that fill them.
 *
 * <p>In: numbers, words, truths, lists, maps and records. Out: filled templates. A template reads values and the components
 * of records, and nothing else of an object, so it can run no code. Not here: what a deck or a page contains.
 */
package lampproof.template;
