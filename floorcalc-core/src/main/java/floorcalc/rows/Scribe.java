package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A row along a wall that is not straight: where its row line must lie, and how deep the boards are scribed at each place.
 * <p>
 * The row line lies at {@code c} from the string line, towards the floor, and the wall's face at {@code d(x)} from it, away from the
 * floor. Beyond the gap {@code g} the row may be {@code c + d(x) - g} wide. A trim lets the gap grow by {@code q}, so a board whose
 * straight edge is left {@code p} from the row line serves where the wall is farthest, and elsewhere it is scribed by
 * {@code max(0, dmax - d(x) - q)}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Scribe {
  private final WallFace wall;
  private final Length rowLine;
  private final Length nearestLine;
  private final Length pitch;
  private final Length hidden;
  private final List<Depth> depths;

  /**
   * What is scribed off at one place.
   *
   * @param at the place along the string line, not null
   * @param depth what is taken off the edge of a full board, not null, not negative
   * @param width what is left of the board there, not null; zero or less where the wall comes past the row line
   * @since 0.1
   */
  public record Depth(Length at, Length depth, Length width) {
    /** Checks that no part is null. */
    public Depth {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(depth, "depth");
      Objects.requireNonNull(width, "width");
    }
  }

  private Scribe(WallFace wall, Length pitch, Length minimum, Length gap, Length hidden) {
    this.wall = wall;
    this.pitch = pitch;
    this.hidden = hidden;
    this.rowLine = pitch.plus(gap).plus(hidden).minus(wall.farthest().distance());
    this.nearestLine = minimum.plus(gap).minus(wall.nearest().distance());
    this.depths = wall.offsets().stream().map(offset -> at(offset.at())).toList();
  }

  /**
   * Returns the scribe of a row whose gap is to be the same all along.
   *
   * @param wall the face of the wall from the string line, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest that the row may get, not null, not negative
   * @param gap the gap to the wall, across the rows, not null, not negative
   * @return the scribe, as {@link #of(WallFace, Length, Length, TrimCover)} without the step {@code trim-span}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<Scribe> of(WallFace wall, Length pitch, Length minimum, Length gap) {
    Widths.requireNotNegative(gap, "gap", "give 0 mm for no gap");
    return of(wall, pitch, minimum, gap, Length.ZERO, List.of());
  }

  /**
   * Returns the scribe of a row along which a trim hides a gap that varies.
   *
   * @param wall the face of the wall from the string line, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest that the row may get, not null, not negative
   * @param trim what the trim hides, and the least gap, not null
   * @return the scribe with the steps {@code trim-span}, {@code row-line}, {@code nearest-row-line}, {@code deepest-scribe} and
   *     {@code narrowest-width}; with the finding {@code no-scribe-needed} or {@code scribe-too-deep} where it is so; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<Scribe> of(WallFace wall, Length pitch, Length minimum, TrimCover trim) {
    return of(wall, pitch, minimum, trim.leastGap(), trim.span(), List.of(trim.spanStep()));
  }

  private static Calculated<Scribe> of(WallFace wall, Length pitch, Length minimum, Length gap, Length hidden,
      List<Step> before) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    Scribe scribe = new Scribe(wall, pitch, minimum, gap, hidden);
    Term p = Term.of("p", "laid pitch", pitch);
    Term g = Term.of("g", "least gap", gap);
    Term q = Term.of("q", "what the trim hides", hidden);
    Term far = Term.of("dmax", "greatest distance of the wall, at " + wall.farthest().at(), wall.farthest().distance());
    Term near = Term.of("dmin", "least distance of the wall, at " + wall.nearest().at(), wall.nearest().distance());
    List<Step> steps = new ArrayList<>(before);
    steps.add(new Step("row-line", "How far from the string line may the row line lie, so that a board covers where the wall is"
        + " farthest?", "c = p + g + q - dmax", List.of(p, g, q, far), scribe.rowLine, Source.DEFINITION));
    steps.add(new Step("nearest-row-line", "How far must it lie, so that the row is nowhere narrower than asked?",
        "c0 = m + g - dmin", List.of(Term.of("m", "narrowest width asked for", minimum), g, near), scribe.nearestLine,
        Source.DEFINITION));
    steps.add(new Step("deepest-scribe", "How deep is the scribe where the wall is nearest, with the row line as far as it may be?",
        "D = max(0mm, dmax - dmin - q)", List.of(far, near, q), scribe.deepest(), Source.DEFINITION));
    Length narrowest = pitch.minus(scribe.deepest());
    steps.add(new Step("narrowest-width", "How wide is the row there?", "w = p - D",
        List.of(p, Term.of("D", "deepest scribe", scribe.deepest())), narrowest, Source.DEFINITION));
    List<Finding> findings = new ArrayList<>();
    if (narrowest.compareTo(minimum) < 0) {
      findings.add(new Finding("scribe-too-deep", Severity.WARNING, wall.nearest().at().toString(), "the wall varies by "
          + wall.variation() + ": a board of " + pitch + " that covers where it is farthest is left " + narrowest
          + " wide where it is nearest, at least " + minimum + " is asked for; begin with two rows along this wall, straighten"
          + " the wall, or take a wider trim", Source.GIVEN));
    }
    if (scribe.deepest().isZero()) {
      findings.add(new Finding("no-scribe-needed", Severity.NOTE, "", "the wall varies by " + wall.variation()
          + ", the trim hides " + hidden + ": a straight edge serves, with a gap from " + gap.plus(hidden).minus(wall.variation())
          + " to " + gap.plus(hidden), Source.DEFINITION));
    }
    return Calculated.of(scribe, steps, findings);
  }

  /**
   * Returns what is scribed off at a place, with the row line at {@link #rowLine()}.
   *
   * @param place the place along the string line, within those measured, not null
   * @return the depth and the width left, rounded to the nearest nanometre; not null
   * @throws IllegalArgumentException if the wall was not measured there
   */
  public Depth at(Length place) {
    Objects.requireNonNull(place, "place");
    Length depth = wall.farthest().distance().minus(wall.distanceAt(place)).minus(hidden).max(Length.ZERO);
    return new Depth(place, depth, pitch.minus(depth));
  }

  /**
   * Returns how far the row line may lie from the string line, so that a board covers all along: nearer to the wall, more is scribed
   * off each board.
   *
   * @return the distance towards the floor, negative if beyond the string line; not null
   */
  public Length rowLine() {
    return rowLine;
  }

  /**
   * Returns how far the row line must lie from the string line, so that the row is nowhere narrower than asked.
   *
   * @return the distance towards the floor; more than {@link #rowLine()} if one board cannot do both; not null
   */
  public Length nearestRowLine() {
    return nearestLine;
  }

  /**
   * Returns the depth at each place that was measured. Between two places it varies evenly, or is nothing for a part of the way.
   *
   * @return an unmodifiable list in the order of the places, not null
   */
  public List<Depth> depths() {
    return depths;
  }

  /**
   * Returns the deepest scribe.
   *
   * @return zero if a straight edge serves, not null
   */
  public Length deepest() {
    return wall.variation().minus(hidden).max(Length.ZERO);
  }
}
