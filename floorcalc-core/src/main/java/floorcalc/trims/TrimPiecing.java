package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Makes a long piece up of several, where a wall is longer than the longest bar: as few as possible, whole bars and one that
 * takes the rest. If the rest would be shorter than the least piece asked for, it is made that long and the piece before it
 * shorter. Common practice, no source.
 *
 * @since 0.1
 */
public final class TrimPiecing {
  private TrimPiecing() {}

  /**
   * Makes pieces up of several where they are longer than the longest bar; others stay as they are.
   * <p>
   * The allowance of a wall is cut on each of its pieces, for the joints as for the corners. The pieces are named after the
   * wall with "part 1 of 3" behind it.
   *
   * @param pieces the pieces wanted, not null
   * @param longestBar the longest bar that can be had in the number it takes, not null, more than zero
   * @param leastPiece no part is shorter than this, not null, not negative, at most half of what a bar gives
   * @return the pieces, each no longer than the bar with its allowance; with a step {@code parts-of-wall} for each that is made
   *     up; not null
   * @throws IllegalArgumentException if the least piece is out of range
   */
  public static Calculated<List<TrimPiece>> of(List<TrimPiece> pieces, Length longestBar, Length leastPiece) {
    if (!Objects.requireNonNull(longestBar, "longestBar").isPositive()) {
      throw new IllegalArgumentException("longest bar must be more than 0 mm, but was " + longestBar);
    }
    if (Objects.requireNonNull(leastPiece, "leastPiece").isNegative()) {
      throw new IllegalArgumentException("least piece must be 0 mm or more, but was " + leastPiece);
    }
    List<TrimPiece> all = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (TrimPiece piece : pieces) {
      if (piece.cutLength().compareTo(longestBar) <= 0) {
        all.add(piece);
      } else {
        makeUp(piece, longestBar, leastPiece, all, steps);
      }
    }
    return Calculated.of(List.copyOf(all), steps);
  }

  private static void makeUp(TrimPiece piece, Length bar, Length least, List<TrimPiece> all, List<Step> steps) {
    Length most = bar.minus(piece.allowance());
    if (!most.isPositive() || least.multipliedBy(2).compareTo(most) > 0) {
      throw new IllegalArgumentException("least piece must be at most half of what a bar of " + bar
          + " gives with the allowance of piece '" + piece.name() + "', " + piece.allowance() + ", but was " + least);
    }
    long parts = piece.length().minus(Length.ofNanometres(1)).dividedBy(most) + 1;
    if (parts > 1000) {
      throw new IllegalArgumentException("piece '" + piece.name() + "' of " + piece.length() + " would be made up of " + parts
          + " parts, at most 1000 are; check its length");
    }
    Length rest = piece.length().minus(most.multipliedBy(parts - 1));
    Length last = rest.max(least);
    for (int part = 1; part <= parts; part++) {
      Length length = part == parts ? last : part == parts - 1 ? most.minus(last.minus(rest)) : most;
      all.add(new TrimPiece(piece.name() + ", part " + part + " of " + parts, length, piece.allowance(), piece.count()));
    }
    steps.add(new Step("parts-of-wall", "Of how many parts is '" + piece.name() + "' made up?", "k = ceil(W / (P - a))",
        List.of(Term.of("W", "length wanted", piece.length()), Term.of("P", "longest bar", bar),
            Term.of("a", "allowance of each part", piece.allowance())), parts, Source.DEFINITION));
    steps.add(new Step("last-part", "How long is its last part?", "x = max(m, W - (k - 1) * (P - a))",
        List.of(Term.of("m", "least piece", least), Term.of("W", "length wanted", piece.length()),
            Term.of("k", "number of parts", parts), Term.of("P", "longest bar", bar),
            Term.of("a", "allowance of each part", piece.allowance())), last, Source.COMMON_PRACTICE));
  }
}
