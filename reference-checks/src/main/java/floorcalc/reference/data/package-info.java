/**
 * The published figures as they lie in files: a few lines that name the source, then a table.
 * <p>
 * Start at {@link floorcalc.reference.data.DataFile}. The files are plain CSV, so that a program in any language can read them; their
 * first lines are {@code # key: text}. All types are immutable and accept no null.
 */
package floorcalc.reference.data;
