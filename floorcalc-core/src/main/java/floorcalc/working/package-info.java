/**
 * The working: results that show how they came about, and whose word each figure is.
 * <p>
 * Whoever lays or prices a floor has to be able to check it with pencil and paper, and to say why a figure may be
 * trusted. So a calculation answers with a {@link floorcalc.working.Calculated}: its value, the
 * {@link floorcalc.working.Step steps} that led to it, and the {@link floorcalc.working.Finding findings} made on the way.
 * <pre>{@code
 * full-rows: How many whole rows fit?
 *   n = floor(run / width)
 *     run = 3480 mm  (clear width across the rows)
 *     width = 140 mm  (cover width of a board)
 *   = 24  [definition]
 * }</pre>
 * Three things make this worth having:
 * <ul>
 * <li>One pass. The steps are made of the very objects that gave the result, in the code that computes it, so the two
 * cannot drift apart; {@link floorcalc.working.Calculated#explain()} only prints them. Numbers are rounded for display
 * alone, never between steps, unless the formula says so.
 * <li>Formulas that can be worked again. A formula reads {@code symbol = expression}, in the symbols of its
 * {@link floorcalc.working.Term terms}, and gives the result of the step from what is shown, to the last digit. Tests do
 * so for every calculation.
 * <li>A {@link floorcalc.working.Source} for each rule and figure, with a {@link floorcalc.working.Standing} that says
 * plainly how sure it is: read in the source, quoted by another, common practice without a source, recalled from memory,
 * a definition, or given by the caller.
 * </ul>
 * A finding is about sound input and a poor floor: a strip too narrow, a floor split in two. It has a stable code for
 * programs, a place and a sentence for people, and is neither an exception nor a line in a log. Input that is wrong is
 * refused before anything is calculated.
 * <p>
 * {@link floorcalc.working.Worked} groups the steps of one part of a larger result:
 * <pre>{@code
 * for (Worked part : plan.working()) {
 *   part.steps().forEach(step -> System.out.println(step.explain()));
 * }
 * }</pre>
 * All types are immutable, as far as the values put into them are, and accept no null.
 */
package floorcalc.working;
