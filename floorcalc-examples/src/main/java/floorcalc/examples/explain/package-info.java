/**
 * Shows the working of one calculation from values on the command line, for students. See {@code docs/command-line.md}.
 */
package floorcalc.examples.explain;
