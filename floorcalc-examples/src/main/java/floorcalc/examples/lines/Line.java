package floorcalc.examples.lines;

/**
 * A line that is not blank.
 *
 * @param number its place in the input, from 1, blank lines counted
 * @param bytes what stands in it; of a line that is too long one byte more than a job may have
 */
record Line(long number, byte[] bytes) {
}
