/**
 * The spec of a lamp, as engineers write it: a table of quantities with min, typ, max, unit and note.
 *
 * <p>In: a CSV table (comma, semicolon or tab), or rows from the packages that fill in defaults. Out: an immutable
 * {@link lampproof.spec.Spec} in SI units, or one fault with every finding; and the same table written back. The list of
 * all names, with unit and range, is {@link lampproof.spec.Vocabulary}.
 *
 * <p>Not here: defaults and sizing rules, whether a design can work, and the names of figures.
 */
package lampproof.spec;
