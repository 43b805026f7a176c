package floorcalc.fittings;

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
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Where the holes for pipes lie in the boards, and how the boards are got round the pipes.
 * <p>
 * A pipe stands before the floor comes, so its board cannot be threaded on: either the floor's edge or a joint runs through the hole,
 * and the boards close round the pipe; or the board is sawn through the hole, and the part behind the pipe is glued back. The part goes
 * to the nearest side of the board that faces the gap, if that is no farther than the board is wide, else to the nearest side.
 * <p>
 * Two holes with less wood between them than {@link CutOutLimits#leastWood()} are one slot with round ends. A hole that leaves less to a side
 * is opened to that side. Part of a hole smaller than a square millimetre is left out. Stateless.
 *
 * @since 0.1
 */
public final class PipeHoles {
  /** Square nanometres to the square millimetre. */
  private static final double SQUARE = 1e12;

  private PipeHoles() {}

  /**
   * Finds the holes for pipes.
   *
   * @param pipes the pipes, in the frame of the boards; not null
   * @param pieces the pieces as they lie, in the same frame: at least all that lie within a hole and a board's width of a
   *     pipe; not null
   * @param allowance how much wider than the pipe a hole is, not null
   * @param limits how little wood may be left, not null
   * @return the holes in the order of the pipes, with the steps {@code hole-diameter}, {@code wood-between}, {@code wood-to-side} and
   *     {@code glued-part}, and the findings {@code pipe-hole}, {@code pipe-slot} and {@code pipe-joint-helps}; not null
   */
  public static Calculated<List<HoleCut>> of(List<PipeAt> pipes, List<BoardPiece> pieces, PipeAllowance allowance, CutOutLimits limits) {
    Objects.requireNonNull(limits, "limits");
    List<HoleCut> cuts = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (PipeGroup group : PipeGroup.of(pipes, allowance, limits)) {
      HoleCut cut = cut(group, pieces, limits);
      cuts.add(cut);
      steps.addAll(group.steps);
      steps(cut, limits, steps);
      findings(cut, allowance, limits, findings);
    }
    return Calculated.of(List.copyOf(cuts), steps, findings);
  }

  private static HoleCut cut(PipeGroup group, List<BoardPiece> pieces, CutOutLimits limits) {
    HoleShape shape = new HoleShape(group.from, group.to, group.width);
    List<BoardPiece> touched = pieces.stream().filter(piece -> isNear(piece, group) && shape.of(piece).getArea() > SQUARE).toList();
    double covered = touched.stream().mapToDouble(piece -> shape.of(piece).getArea()).sum() / SQUARE;
    if (touched.isEmpty()) {
      return made(group, HoleCut.Way.IN_THE_GAP, List.of(), Optional.empty(), Optional.empty());
    }
    Point middle = group.middle();
    Optional<BoardPiece> holder = touched.stream().filter(piece -> BoardReach.isOn(middle, piece)).findFirst();
    List<BoardReach> sides = holder.map(piece -> BoardReach.of(middle, piece, pieces)).orElse(List.of());
    boolean whole = covered > shape.area() - 1;
    if (whole && touched.size() == 1) {
      return inOneBoard(group, shape, touched.get(0), sides, limits);
    }
    // A joint through the very middle leaves each board half a hole; no straight sides are needed.
    Optional<BoardReach> to = whole ? BoardReach.nearestTo(sides, touched).filter(side -> side.distance() > 1000)
        : BoardReach.nearestGap(sides);
    List<HoleInPiece> parts = touched.stream()
        .map(piece -> part(group, shape, piece, holder.filter(piece::equals).isPresent() ? to : Optional.empty(), holder)).toList();
    return made(group, whole ? HoleCut.Way.SHARED : HoleCut.Way.OPEN_NOTCH, parts, Optional.empty(), Optional.empty());
  }

  private static boolean isNear(BoardPiece piece, PipeGroup group) {
    long reach = group.width.toNanometres();
    var extent = piece.outline().extent();
    return extent.low().xNanometres() - reach < Math.max(group.from.xNanometres(), group.to.xNanometres())
        && extent.high().xNanometres() + reach > Math.min(group.from.xNanometres(), group.to.xNanometres())
        && extent.low().yNanometres() - reach < Math.max(group.from.yNanometres(), group.to.yNanometres())
        && extent.high().yNanometres() + reach > Math.min(group.from.yNanometres(), group.to.yNanometres());
  }

  private static HoleCut inOneBoard(PipeGroup group, HoleShape shape, BoardPiece piece, List<BoardReach> sides, CutOutLimits limits) {
    Length wood = Length.ofNanometres((long) StrictMath.floor(shape.wood(piece)));
    BoardReach nearest = sides.stream().min(Comparator.comparingDouble(BoardReach::distance)).orElseThrow();
    if (wood.compareTo(limits.leastWood()) < 0) {
      HoleCut.Way way = nearest.isJoint() ? HoleCut.Way.OPEN_TO_JOINT : HoleCut.Way.OPEN_NOTCH;
      return made(group, way, List.of(part(group, shape, piece, Optional.of(nearest), Optional.of(piece))), Optional.empty(),
          Optional.of(wood));
    }
    BoardReach behind = BoardReach.nearestGap(sides).filter(side -> side.distance() <= piece.width().toNanometres()).orElse(nearest);
    HoleInPiece hole = part(group, shape, piece, Optional.empty(), Optional.of(piece));
    Point middle = group.middle();
    long x = middle.xNanometres() - piece.origin().xNanometres();
    long block = behind.side().isEnd() ? 0 : Math.abs(group.to.xNanometres() - group.from.xNanometres()) + group.width.toNanometres();
    Length first = Length.ofNanometres(x - block / 2);
    GluedPart glued = new GluedPart(piece.name(), behind.side(), first, first.plus(Length.ofNanometres(block)),
        Length.ofNanometres((long) StrictMath.rint(behind.distance())));
    return made(group, HoleCut.Way.HOLE, List.of(hole), Optional.of(glued), Optional.of(wood));
  }

  private static HoleInPiece part(PipeGroup group, HoleShape shape, BoardPiece piece, Optional<BoardReach> open,
      Optional<BoardPiece> holder) {
    Point origin = piece.origin();
    Geometry sawn = open.map(side -> shape.opened(piece, side.side(), side.distance())).orElseGet(() -> shape.of(piece));
    List<Ring> rings = shape.rings(sawn, origin);
    return new HoleInPiece(piece.name(), group.from.x().minus(origin.x()), group.from.y().minus(origin.y()), group.width,
        group.to.x().minus(group.from.x()), group.to.y().minus(group.from.y()), open.map(BoardReach::side),
        holder.filter(piece::equals).isPresent(), rings);
  }

  private static HoleCut made(PipeGroup group, HoleCut.Way way, List<HoleInPiece> parts, Optional<GluedPart> glued,
      Optional<Length> wood) {
    return new HoleCut(group.pipes, group.from, group.to, group.width, way, parts, glued, wood);
  }

  private static void steps(HoleCut cut, CutOutLimits limits, List<Step> steps) {
    cut.wood().ifPresent(wood -> {
      Length radius = cut.width().dividedBy(2, RoundingMode.FLOOR);
      steps.add(new Step("wood-to-side", "How much wood is left between the hole of " + cut.name() + " and the nearest side of the board?"
          + " At least " + limits.leastWood() + " is asked for (" + limits.leastWoodSource() + ").", "w = e - R",
          List.of(Term.of("e", "from its middle to the nearest side", wood.plus(radius)), Term.of("R", "half of the hole", radius)),
          wood, Source.DEFINITION));
    });
    cut.glued().ifPresent(glued -> {
      HoleInPiece hole = cut.parts().get(0);
      if (glued.side() == BoardSide.FAR_END) {
        steps.add(new Step("glued-part", "How long is the part behind the pipe?", "p = l - c",
            List.of(Term.of("l", "from the start end to where the board ends", glued.from().plus(glued.depth())),
                Term.of("c", "from the start end to the cut", glued.from())), glued.depth(), Source.DEFINITION));
      } else if (!glued.side().isEnd()) {
        steps.add(new Step("glued-part", "How long is the block behind the pipe?", "p = D + a",
            List.of(Term.of("D", "width of the hole", cut.width()), Term.of("a", "from end to end of a slot, middle to middle",
                hole.along().abs())), glued.to().minus(glued.from()), Source.DEFINITION));
      }
    });
  }

  private static void findings(HoleCut cut, PipeAllowance allowance, CutOutLimits limits, List<Finding> findings) {
    findings.add(new Finding("pipe-hole", Severity.NOTE, cut.name(), cut.inWords(), allowance.source()));
    if (cut.pipes().size() > 1) {
      findings.add(new Finding("pipe-slot", Severity.NOTE, cut.name(), "less than " + limits.leastWood()
          + " of wood would be left between the holes, so one slot " + cut.width() + " wide takes them all", limits.leastWoodSource()));
    }
    cut.glued().ifPresent(glued -> findings.add(new Finding("pipe-joint-helps", Severity.NOTE, cut.name(), "an end joint "
        + cut.parts().get(0).fromStartEnd().plus(cut.parts().get(0).along().dividedBy(2, RoundingMode.HALF_EVEN))
        + " from the start end of " + glued.piece() + " would run through the hole, and nothing would have to be glued back",
        Source.DEFINITION)));
  }
}
