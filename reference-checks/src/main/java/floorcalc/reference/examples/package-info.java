/**
 * Examples that outside sources work or print, worked again by the library with every step, for students to follow by hand.
 * <p>
 * {@link floorcalc.reference.examples.WorkedExamples} lists them; {@link floorcalc.reference.examples.ExamplePage} turns each into a page. The figures that
 * a source prints are read from its file, never typed twice.
 */
package floorcalc.reference.examples;
