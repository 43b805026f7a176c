package floorcalc.differential;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.differential.RandomOutlines.Place;
import floorcalc.laying.FloorLaying;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Room;
import java.util.List;
import java.util.SplittableRandom;

/** Whole plans of rooms made by chance: the pieces united by the library against the floor that the plan says it lays. */
final class PlanCoverDifferential extends Comparison {
  private static final double LARGEST_ROOM = 3e9;

  private final Plane plane;

  PlanCoverDifferential(Plane plane, int cases) {
    super("pieces of a plan cover its floor", plane.library(), cases, FloorPlanner.class, FloorLaying.class);
    this.plane = plane;
  }

  @Override
  public String unit() {
    return "nm wide strip along all sawn and laid edges";
  }

  @Override
  public double tolerance() {
    return 3;
  }

  @Override
  public String argument() {
    return "each corner of a piece is rounded to a whole nanometre, in the direction of the boards and again in the room";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(231, LARGEST_ROOM);
    SplittableRandom random = new SplittableRandom(232);
    long pieces = 0;
    int bays = 0;
    for (int k = 0; k < upTo; k++) {
      Outline room = outlines.next(Place.NEAR);
      BoardGoods goods = BoardGoods.of(mm(random.nextLong(900, 2400)), mm(random.nextLong(70, 260)), mm(random.nextLong(8, 20)), 6);
      FloorPlan plan = FloorPlanner.plan(FloorJob.of("by chance", goods)
          .offcuts(random.nextBoolean() ? OffcutUse.IN_LAYING_ORDER : OffcutUse.CUT_AHEAD)
          .direction(DirectionChoice.of(random.nextBoolean() ? Direction.ALONG_X : Direction.fromDegrees(random.nextDouble(180))))
          .room(Room.of("room", room)).build());
      worst.nextCase();
      for (Bay bay : plan.bays()) {
        List<Outline> laid = bay.rows().stream().flatMap(row -> row.pieces().stream()).map(PlanCoverDifferential::floor).toList();
        List<Outline> seen = answers == Answers.AS_GIVEN || laid.size() == 1 ? laid : laid.subList(1, laid.size());
        double edges = laid.stream().mapToDouble(piece -> piece.perimeter().toNanometres()).sum();
        bays++;
        pieces += laid.size();
        worst.see(plane.areaInOneAlone(seen, List.of(bay.laid())) / edges, () -> bay.bay() + " of " + Wkt.write(room));
        Area sum = laid.stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
        worst.see(sum.minus(bay.laid().area()).toSquareMillimetres() * 1e12 / edges, () -> "sum of pieces in " + Wkt.write(room));
      }
    }
    worst.note(pieces + " pieces in " + bays + " bays");
  }

  private static Outline floor(LaidPiece piece) {
    return Outline.of(piece.outline(), piece.holes());
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
