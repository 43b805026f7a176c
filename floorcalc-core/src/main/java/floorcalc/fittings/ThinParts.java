package floorcalc.fittings;

import floorcalc.fittings.CrossSections.Edge;
import floorcalc.fittings.CrossSections.Thin;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the parts of a piece that would break beside its notches: narrower than a limit, and longer than they are wide.
 * <p>
 * The piece is looked at along the board and across it. A part counts only if a notch or a hole lies beside it and a wider part of
 * the same piece at one end or at both: a strip that is narrow from end to end is the row rule's matter, a slant or a taper that
 * comes to a point is that of {@link floorcalc.rows.EndCut}. Which cuts are notches, {@link Notch#turnsInwards()} says.
 *
 * @since 0.1
 */
public final class ThinParts {
  private static final double CRUMB = 1000;

  private ThinParts() {}

  /**
   * Finds the thin parts of a piece that other boards lie all round.
   *
   * @param shape the piece with its notches, not null
   * @param limits how narrow is thin, not null
   * @return the parts, as {@link #of(PieceNotches, CutOutLimits, Set)} gives them; not null
   */
  public static Calculated<List<ThinPart>> of(PieceNotches shape, CutOutLimits limits) {
    return of(shape, limits, Set.of());
  }

  /**
   * Finds the thin parts of a piece.
   *
   * @param shape the piece with its notches, not null
   * @param limits how narrow is thin, not null
   * @param atGap the sides of the piece that face the gap, not null
   * @return the parts, those along the board first; with a step {@code missing-width} and a finding {@code thin-tongue} or
   *     {@code thin-bridge} for each; not null
   */
  public static Calculated<List<ThinPart>> of(PieceNotches shape, CutOutLimits limits, Set<BoardSide> atGap) {
    Objects.requireNonNull(atGap, "atGap");
    List<ThinPart> parts = new ArrayList<>();
    if (limits.leastTongue().isPositive() && shape.notches().stream().anyMatch(Notch::turnsInwards)) {
      for (ThinPart.Run run : ThinPart.Run.values()) {
        for (Thin thin : CrossSections.thin(edges(shape, run), limits.leastTongue().toNanometres())) {
          part(shape, run, thin, atGap).ifPresent(parts::add);
        }
      }
    }
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (ThinPart part : parts) {
      steps.add(new Step("missing-width", "By how much is " + part.inWords() + " too narrow?", "m = t - w",
          List.of(new Term("t", "least width of a tongue or bridge", limits.leastTongue(), limits.leastTongueSource()),
              Term.of("w", "its width", part.width())), limits.leastTongue().minus(part.width()), Source.DEFINITION));
      findings.add(new Finding(part.kind() == ThinPart.Kind.TONGUE ? "thin-tongue" : "thin-bridge", Severity.WARNING, part.piece(),
          part.inWords() + " may break, at least " + limits.leastTongue() + " is asked for; " + part.advice(limits.leastTongue()),
          limits.leastTongueSource()));
    }
    return Calculated.of(List.copyOf(parts), steps, findings);
  }

  private static Optional<ThinPart> part(PieceNotches shape, ThinPart.Run run, Thin thin, Set<BoardSide> atGap) {
    double length = thin.to() - thin.from();
    boolean isTongue = thin.wideBefore() != thin.wideAfter();
    boolean counts = thin.notch() && (thin.wideBefore() || thin.wideAfter()) && thin.width() > CRUMB && length > thin.width();
    if (!counts) {
      return Optional.empty();
    }
    boolean along = run == ThinPart.Run.ALONG;
    double most = (along ? shape.width() : shape.length()).toNanometres();
    Optional<BoardSide> side = thin.low() <= CRUMB ? Optional.of(along ? BoardSide.START_EDGE : BoardSide.START_END)
        : thin.high() >= most - CRUMB ? Optional.of(along ? BoardSide.FAR_EDGE : BoardSide.FAR_END) : Optional.empty();
    return Optional.of(new ThinPart(shape.piece().name(), isTongue ? ThinPart.Kind.TONGUE : ThinPart.Kind.BRIDGE, run,
        nearest(thin.width()), nearest(length), nearest(along ? thin.from() : thin.low()), nearest(along ? thin.low() : thin.from()),
        side, side.filter(atGap::contains).isPresent() ? ThinPart.Beyond.GAP : ThinPart.Beyond.BOARD));
  }

  private static Length nearest(double nanometres) {
    return Length.fromMillimetres(StrictMath.rint(nanometres) / 1e6, RoundingMode.HALF_EVEN);
  }

  private static List<Edge> edges(PieceNotches shape, ThinPart.Run run) {
    Set<SawLine> ofNotches = new HashSet<>();
    shape.notches().stream().filter(Notch::turnsInwards).forEach(notch -> ofNotches.addAll(notch.sawn()));
    List<Ring> rings = new ArrayList<>(List.of(shape.outline()));
    rings.addAll(shape.piece().placedHoles());
    List<Edge> edges = new ArrayList<>();
    for (Ring ring : rings) {
      List<Point> corners = ring.corners();
      for (int i = 0; i < corners.size(); i++) {
        Point a = corners.get(i);
        Point b = corners.get((i + 1) % corners.size());
        boolean notch = ofNotches.contains(new SawLine(a, b));
        boolean along = run == ThinPart.Run.ALONG;
        long ax = along ? a.xNanometres() : a.yNanometres();
        long ay = along ? a.yNanometres() : a.xNanometres();
        long bx = along ? b.xNanometres() : b.yNanometres();
        long by = along ? b.yNanometres() : b.xNanometres();
        if (ax != bx) {
          edges.add(ax < bx ? new Edge(ax, ay, bx, by, notch) : new Edge(bx, by, ax, ay, notch));
        }
      }
    }
    return edges;
  }
}
