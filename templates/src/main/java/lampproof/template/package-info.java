/**
 * What a template sees of the values that fill it.
 *
 * <p>In: numbers, words, truths, lists, maps and records. Out: what the template engine reads of them, and nothing else: a
 * template can run no code. Not here: the templates and their values.
 */
package lampproof.template;
