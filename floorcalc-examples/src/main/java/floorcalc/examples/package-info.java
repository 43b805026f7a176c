/**
 * The command-line runner. Start at {@link floorcalc.examples.Main}; the commands stand in {@code docs/command-line.md}.
 * Everything in this module is an example and may change at any time, the two file formats aside.
 */
package floorcalc.examples;
