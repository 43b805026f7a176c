/**
 * Programs to copy from: each shows one use of the library and has a {@code main}. Rooms, goods and prices are invented.
 */
package floorcalc.examples.embedding;
