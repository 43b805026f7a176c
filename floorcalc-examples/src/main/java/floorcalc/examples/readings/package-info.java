/**
 * Heights of a floor from a table (CSV): along a line, or at places of a room. Everything that is wrong with a file is said at once, with
 * the line, what was found and what is allowed.
 */
package floorcalc.examples.readings;
