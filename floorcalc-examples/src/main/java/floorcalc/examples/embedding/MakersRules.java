package floorcalc.examples.embedding;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.io.PrintStream;
import java.util.List;

/**
 * Rules of one's own: what two papers of a maker ask for, which disagree and so are two sets. The maker, the papers and all
 * their figures are invented. See {@code docs/adding-a-rule.md}.
 */
public final class MakersRules {
  /** What the laying sheet says. */
  public static final String SHEET = "sheet of an invented maker";
  /** What the leaflet in the pack says. */
  public static final String LEAFLET = "leaflet of an invented maker";

  private static final Source SHEET_GAP = new Source("Laying sheet (invented)", "an invented maker", 2025, "page 2, table 1", Standing.READ);
  private static final Source SHEET_JOINTS = new Source("Laying sheet (invented)", "an invented maker", 2025, "page 3", Standing.READ);
  private static final Source IN_THE_PACK = new Source("Leaflet in the pack (invented)", "an invented maker", 2026, "", Standing.QUOTED);

  private MakersRules() {
  }

  /**
   * The rules of one of the two papers; where it says nothing, common practice stands in and says so.
   *
   * @param name {@link #SHEET} or {@link #LEAFLET}, not null
   * @param boards the boards, not null
   * @param largest the largest length or width of the floor, not null
   * @return the rules, not null
   * @throws IllegalArgumentException if there is no set of that name
   */
  public static LayingRules named(String name, BoardGoods boards, Length largest) {
    LayingRules practice = RuleSet.COMMON_PRACTICE.forBoard(boards.thickness(), boards.coverWidth());
    return switch (name) {
      case SHEET -> sheet(practice, largest);
      case LEAFLET -> practice.with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(15), IN_THE_PACK);
      default -> throw new IllegalArgumentException("no rules '" + name + "'; there are: " + SHEET + ", " + LEAFLET);
    };
  }

  /** Table 1: a gap of 8 mm up to 6 m, 12 mm up to 10 m, both inclusive; nothing beyond. Page 3: joints 400 mm apart. */
  private static LayingRules sheet(LayingRules practice, Length largest) {
    LayingRules rules = practice.with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(400), SHEET_JOINTS);
    if (largest.compareTo(Length.ofMillimetres(6_000)) <= 0) {
      return rules.with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(8), SHEET_GAP);
    }
    return largest.compareTo(Length.ofMillimetres(10_000)) <= 0
        ? rules.with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(12), SHEET_GAP) : rules;
  }

  /**
   * Prints what both papers ask for and what that makes of a room.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /**
   * Prints what both papers ask for and what that makes of a room.
   *
   * @param out where to, not null
   */
  public static void run(PrintStream out) {
    BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    Room room = Room.of("Room", Wkt.parse("POLYGON ((0 0, 7000 0, 7000 3000, 0 3000, 0 0))"));
    for (String name : List.of(SHEET, LEAFLET)) {
      LayingRules rules = named(name, boards, Length.parse("7 m"));
      FloorPlan plan = FloorPlanner.plan(FloorJob.of("One room", boards).rules(rules).room(room).build());
      out.print(name + "\n  " + rules.get(LayingRules.EXPANSION_GAP) + "\n  " + rules.get(LayingRules.MINIMUM_JOINT_OFFSET)
          + "\n  " + plan.order().boardsUsed() + " boards\n");
    }
  }
}
