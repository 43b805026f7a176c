/**
 * Another implementation, held to the same figures: a program in any language that reads one question per line and writes one answer per line.
 * <p>
 * A question is {@code {"calculation": "…", "inputs": {…}}}, its inputs texts, lists of texts or tables of texts. An answer is
 * {@code {"figures": {"name": "text", …}}}; {@code {"unknown": true}} says that the calculation is not there, {@code {"refused": "why"}} that the
 * inputs are not taken. Numbers are plain decimals in the unit that the list of calculations names.
 * {@link floorcalc.reference.port.OtherProgram} asks, {@link floorcalc.reference.port.AnswerLines} answers with an implementation at hand.
 */
package floorcalc.reference.port;
