/**
 * What a check is: a question to a calculation, the figures that a source prints for it, and what an implementation answers.
 * <p>
 * A {@link floorcalc.reference.check.ReferenceCase} holds a {@link floorcalc.reference.check.Question} (the calculation's name and its inputs as
 * text, as a source prints them) and the {@link floorcalc.reference.check.Expected} figures. An
 * {@link floorcalc.reference.check.Implementation} answers; this library is one, a port of it to another language may be another. Each expected figure
 * is one {@link floorcalc.reference.check.Check} with a {@link floorcalc.reference.check.Verdict}. The
 * {@link floorcalc.reference.check.Kind} says what stands behind a figure; kinds are counted apart and never mixed. All types are immutable
 * and accept no null.
 */
package floorcalc.reference.check;
