/**
 * What the suite found, to be read: every source with its counts and its worst deviation, every public calculation of the core with what checks
 * it, as Markdown (short, kept in {@code docs/reference-report.md}) and as HTML (line by line).
 * <p>
 * {@link floorcalc.reference.report.ReferenceReport} gathers, {@link floorcalc.reference.report.ShortReport} and
 * {@link floorcalc.reference.report.FullReport} write.
 */
package floorcalc.reference.report;
