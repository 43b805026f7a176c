package floorcalc.compare;

import floorcalc.FloorPlanner;
import floorcalc.audit.PlanAudit;
import floorcalc.bays.BayParts;
import floorcalc.boards.BoardBound;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.RunLayout;
import floorcalc.laying.FloorLaying;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.report.Comparison;
import java.util.Arrays;
import java.util.List;

/** Comparisons that other tests hold, for the report: {@code SolverComparisonTest} and {@code RealRoomsTest}. */
public final class KeptComparisons {
  /** Products by directions, see {@code RealRoomsTest}. */
  private static final int PLANS_OF_A_ROOM = 12;

  private KeptComparisons() {}

  /** {@return the comparisons, in the order of the report} */
  public static List<Comparison> all() {
    return List.of(
        new Comparison("fewest boards of whole floors, and the bound on them", names(RunLayout.class, CuttingPlan.class, BoardBound.class),
            "OR-Tools 9.15 (CP-SAT, 8 s a case, results kept as a file)", BoardCases.LARGE,
            "never more boards than the solver's best but in one case that is named, and no bound above it: the search is no proof", "1 board"),
        new Comparison("plans of real rooms, from their files alone", names(FloorPlanner.class, FloorLaying.class, PlanAudit.class, BayParts.class),
            "the second check, with JTS 1.20.0", (long) DataFile.read("rooms_cc_by.csv").rows().size() * PLANS_OF_A_ROOM,
            "1 mm² of hole, overlap or floor outside for each bay, 4 nm of length: corners are rounded to the nanometre twice", "no fault"));
  }

  private static List<String> names(Class<?>... classes) {
    return Arrays.stream(classes).map(Class::getName).toList();
  }
}
