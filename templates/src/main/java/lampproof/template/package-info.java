/**
 * Templates that ship with lampproof.
 *
 * <p>In: texts, numbers, truths, lists and maps. Out: filled templates. A template never meets an object, so it can run no
 * code. Not here: what a deck or a page holds.
 */
package lampproof.template;
