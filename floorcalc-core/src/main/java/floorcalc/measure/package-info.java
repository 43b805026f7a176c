/**
 * Lengths and areas that add up: exact measures, and the notation of the tape.
 * <p>
 * A floor is a sum of many small things. Twenty rows of boards, nineteen saw cuts and two gaps must come to the width of
 * the room, and a board must come to its pieces, its kerfs and its offcut. Binary fractions of a millimetre or of an
 * inch lose a little at every step; here nothing is lost:
 * <ul>
 * <li>A {@link floorcalc.measure.Length} is a whole number of nanometres. That is the largest convenient unit in which
 * both 0.001&nbsp;mm and 1/64&nbsp;in (396&nbsp;875&nbsp;nm) are whole, since one inch is 25.4&nbsp;mm by definition.
 * <li>An {@link floorcalc.measure.Area} is a whole number of half square nanometres, so twice the shoelace sum over any
 * corners is held as it is.
 * <li>Sums, differences, products and whole quotients with their remainder are exact. Where something must be rounded,
 * such as a length shared by three, the caller says how. A result too large to hold is an {@link ArithmeticException},
 * never a wrong number.
 * <li>A {@link floorcalc.measure.TapeNotation} reads what people write, from {@code 3.2 m} to {@code 12' 7 5/8"}, and
 * writes it again to a chosen fraction. Display is rounded, the length is not. A
 * {@link floorcalc.measure.TapeReading} keeps what was typed.
 * <li>A {@link floorcalc.measure.Mass} and a {@link floorcalc.measure.Price} of a pack are decimal numbers, kept with
 * the decimals they were given with.
 * </ul>
 * What could be read in two ways is refused, with a {@link floorcalc.measure.TapeNotationException} that shows the
 * place: a number without a unit, a comma, feet with decimals beside inches ({@code 12.7' 3"}), 14 inches beside feet.
 * So is what is not a whole number of nanometres, such as 1/3&nbsp;in. Such a length was calculated, not read from a
 * tape: round it with {@link floorcalc.measure.Length#fromMillimetres(double, java.math.RoundingMode)} or divide with a
 * rounding.
 * <p>
 * The price of exactness is small: a length reaches 9.2 million kilometres, its arithmetic is that of a {@code long},
 * and only areas need larger numbers. Ratios and angles are not measures of this kind; leave the type with a {@code to}
 * method for those.
 * <p>
 * All types are immutable and thread-safe, and neither accept nor return null. This package knows no other package of
 * the library.
 * <pre>{@code
 * Length gap = Length.parse("7 5/16 in").plus(Length.parse("12 mm"));   // exact
 * String tape = gap + " or " + gap.toMillimetres();
 * }</pre>
 */
package floorcalc.measure;
