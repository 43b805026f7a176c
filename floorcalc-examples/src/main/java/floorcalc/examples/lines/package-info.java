/**
 * A conversation in lines, for programs that keep the runner open: each line that comes in holds one job, and each gets one line
 * back, in the same order, with its plan or with what is wrong. What a line may hold, and what comes back, is described in
 * {@code docs/json-files.md}.
 */
package floorcalc.examples.lines;
