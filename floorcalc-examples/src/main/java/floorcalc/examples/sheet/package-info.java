/**
 * What goes to the site: the printable job sheet, the cut card and the order list.
 * <p>
 * Start at {@link floorcalc.examples.sheet.JobSheet} and {@link floorcalc.examples.sheet.CutCard}; both are described in
 * {@code docs/job-sheet.md}.
 */
package floorcalc.examples.sheet;
