package floorcalc.fuzz;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.SearchEffort;
import floorcalc.joints.JointPattern;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.UnsoundJobException;
import floorcalc.rows.RowWay;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Outlines that are given as objects, with rules and boards that may not suit them at all. */
final class OutlineCases {
  private OutlineCases() {}

  /** The outline as well-known text in metres, so that a case can be shown. */
  static byte[] make(Chance chance) {
    HostileRings hostile = new HostileRings(chance);
    Rings rings = new Rings(chance);
    long[] shell = chance.oneIn(40) ? many(chance) : chance.oneIn(3) ? rings.sound() : hostile.any();
    List<Ring> voids = new ArrayList<>();
    for (int i = chance.oneIn(2) ? chance.below(4) : 0; i > 0; i--) {
      long[] hole = chance.oneIn(3) ? hostile.any() : Rings.rectangle(rings.size(1, 900), rings.size(1, 900));
      int corner = 2 * chance.below(shell.length / 2);
      double share = chance.any(0.0, 0.5, 1.0, chance.share());
      hole = Rings.moved(hole, Math.round(shell[corner] * share), Math.round(shell[corner + 1] * share));
      voids.add(ring(hole));
    }
    return Wkt.write(Outline.of(ring(shell), voids)).getBytes(StandardCharsets.UTF_8);
  }

  private static long[] many(Chance chance) {
    return switch (chance.below(3)) {
      case 0 -> Rings.round((int) chance.between(100, 1500), 2000 * Rings.MM);
      case 1 -> Rings.comb((int) chance.between(10, 120), chance.between(20, 200) * Rings.MM, chance.between(1, 200) * Rings.MM,
          chance.between(100, 2000) * Rings.MM);
      default -> Rings.spiral((int) chance.between(10, 24), chance.between(100, 400) * Rings.MM);
    };
  }

  private static Ring ring(long[] at) {
    long[] xs = new long[at.length / 2];
    long[] ys = new long[at.length / 2];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = at[2 * i];
      ys[i] = at[2 * i + 1];
    }
    return Ring.ofNanometres(xs, ys);
  }

  static Ending planned(byte[] input, Chance chance) {
    FloorJob job;
    try {
      job = job(Wkt.parse(new String(input, StandardCharsets.UTF_8)), chance);
    } catch (IllegalArgumentException refused) {
      JobCases.checkLine(refused.getMessage().replace('\n', ' '));
      return Ending.REFUSED;
    }
    FloorPlan plan;
    try {
      plan = FloorPlanner.plan(job);
    } catch (UnsoundJobException unsound) {
      JobCases.checkFaults(unsound);
      return Ending.REFUSED;
    }
    JobCases.checkLaid(plan);
    return Ending.DONE;
  }

  private static FloorJob job(Outline outline, Chance chance) {
    Length length = Length.ofNanometres(new Rings(chance).size(50, chance.any(400, 2500, 2500, 9000)));
    Length pitch = Length.ofNanometres(new Rings(chance).size(chance.any(15, 60, 60, 60), chance.any(80, 250, 3000)));
    Length thickness = Length.ofMillimetres(chance.between(6, 22));
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(thickness, pitch);
    if (chance.oneIn(2)) {
      rules = rules.with(LayingRules.EXPANSION_GAP, Length.ofNanometres(chance.any(0L, 1L, 500_000L, 10_000_000L, 100_000_000L)), Source.GIVEN);
    }
    if (chance.oneIn(3)) {
      rules = rules.with(LayingRules.SAW_KERF, Length.ofNanometres(chance.any(0L, 1L, 3_000_000L, 20_000_000L)), Source.GIVEN);
    }
    if (chance.oneIn(3)) {
      rules = rules.with(LayingRules.MINIMUM_END_PIECE, Length.ofNanometres(new Rings(chance).size(0, 3000)), Source.GIVEN);
    }
    if (chance.oneIn(3)) {
      rules = rules.with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofNanometres(new Rings(chance).size(0, 3000)), Source.GIVEN);
    }
    if (chance.oneIn(4)) {
      rules = rules.with(LayingRules.MAXIMUM_RUN_ALONG, Length.ofNanometres(new Rings(chance).size(500, 4000)), Source.GIVEN);
    }
    return FloorJob.of("Invented", BoardGoods.of(length, pitch, thickness, (int) chance.between(1, 12))).rules(rules)
        .direction(chance.any(DirectionChoice.LONGEST_WALL, DirectionChoice.FEWEST_BOARDS,
            DirectionChoice.of(Direction.fromDegrees(chance.any(0.0, 90.0, 45.0, 1e-9, chance.share() * 360)))))
        .offcuts(chance.any(OffcutUse.values())).effort(chance.any(SearchEffort.values())).rowWay(chance.any(RowWay.values()))
        .pattern(chance.any(JointPattern.FREE, JointPattern.FREE, JointPattern.ofFraction(1, 3), JointPattern.ofStep(Length.ofMillimetres(400)))).room(Room.of("Room", outline)).build();
  }
}
