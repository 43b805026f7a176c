/**
 * Steadiness: input that was never meant, made by chance from a seed, so that each case can be made again from its number.
 * {@link floorcalc.fuzz.Fuzz} asks of each case that it ends in a result or in a refusal that is documented, within a bound of time;
 * {@link floorcalc.fuzz.Soak} plans for hours and watches the memory; {@link floorcalc.fuzz.WorstCases} measures what the limits allow.
 */
package floorcalc.fuzz;
