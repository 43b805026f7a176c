package floorcalc.examples.lines;

/**
 * What is said to a line.
 *
 * @param outcome what became of it
 * @param line the line that goes out, with the line feed at its end
 */
record Answer(Outcome outcome, byte[] line) {
}
