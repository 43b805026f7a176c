package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Room;
import floorcalc.recheck.AskedJob.Segment;
import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Piece;
import floorcalc.recheck.ToldPlan.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.geom.TopologyException;

/**
 * Checks a plan against its job, from the two texts alone.
 * <pre>{@code
 * RecheckReport report = PlanRecheck.of(Files.readString(job), Files.readString(plan));
 * report.lines().forEach(System.out::println);
 * }</pre>
 * Lengths in the files are exact, and are compared exactly where no geometry lies between: rectangles in boards, kerfs, counts. Where
 * corners of polygons are compared, two lengths may differ by {@value #ROUNDING} mm. What is wrong with the files themselves, down to a
 * text that is no JSON, is a fault of the report and never an exception.
 */
public final class PlanRecheck {
  /**
   * Millimetres by which two lengths may differ that are the same but for rounding: the corners of a turned bay are rounded to
   * the nanometre once in the bay and once in the room, so a length between two of them is out by no more than three.
   */
  static final double ROUNDING = 4e-6;
  /** Square millimetres of hole, overlap and floor outside the laid area that are taken as none. */
  static final double NO_AREA = 1;

  private final AskedJob job;
  private final ToldPlan plan;
  private final Faults faults;
  private final MinimumCheck minimums;
  private final List<SeenPiece> pieces = new ArrayList<>();

  private PlanRecheck(AskedJob job, ToldPlan plan, Faults faults) {
    this.job = job;
    this.plan = plan;
    this.faults = faults;
    this.minimums = new MinimumCheck(job, faults);
  }

  /**
   * Checks a plan by the rules 1 to 6 and by its format; rule 7 needs the plan made again and is left out.
   *
   * @param jobJson the text of a job, format {@code floorcalc-job/1}, not null
   * @param planJson the text of a plan, format {@code floorcalc-plan/1}, not null
   * @return what was found, what was looked at and what was not, not null
   */
  public static RecheckReport of(String jobJson, String planJson) {
    Faults faults = new Faults();
    check(jobJson, planJson, faults);
    faults.leaveOut("rule 7, the same bytes", "give the plan made a second time as well");
    return faults.report();
  }

  /**
   * Checks a plan by all seven rules and by its format.
   *
   * @param jobJson the text of a job, format {@code floorcalc-job/1}, not null
   * @param planJson the text of a plan, format {@code floorcalc-plan/1}, not null
   * @param againJson the text of a plan of the same job, made again, by another process or on another machine; not null
   * @return what was found, what was looked at and what was not, not null
   */
  public static RecheckReport of(String jobJson, String planJson, String againJson) {
    Faults faults = new Faults();
    sameBytes(planJson, Objects.requireNonNull(againJson, "againJson"), faults);
    check(jobJson, planJson, faults);
    return faults.report();
  }

  private static void check(String jobJson, String planJson, Faults faults) {
    Objects.requireNonNull(jobJson, "jobJson");
    Objects.requireNonNull(planJson, "planJson");
    Cursor jobFile = JsonText.root("job", jobJson, faults);
    Cursor planFile = JsonText.root("plan", planJson, faults);
    if (!jobFile.isThere() || !planFile.isThere()) {
      faults.leaveOut("rules 1 to 6", "the files could not be read");
      return;
    }
    AskedJob job = AskedJobReader.read(jobFile);
    ToldPlan plan = ToldPlanReader.read(planFile, faults.tally);
    if (faults.none(Rule.FORMAT)) {
      new PlanRecheck(job, plan, faults).check();
    } else {
      faults.leaveOut("rules 1 to 6", "the files could not be read in full");
    }
  }

  private static void sameBytes(String planJson, String again, Faults faults) {
    faults.tally.plans++;
    if (!planJson.equals(again)) {
      List<String> first = planJson.lines().toList();
      List<String> second = again.lines().toList();
      int line = 0;
      while (line < first.size() && line < second.size() && first.get(line).equals(second.get(line))) {
        line++;
      }
      faults.add(Rule.SAME_BYTES, "plan line " + (line + 1), "another text than in the plan made again",
          "the same job gives the same plan, byte for byte");
    }
  }

  private void check() {
    NameCheck.check(job, plan, faults);
    OrderCheck.check(job, plan, faults);
    boolean simple = true;
    for (Bay bay : plan.bays()) {
      simple &= isSimple(bay);
    }
    if (!BoardCheck.areListed(plan, faults) || !simple) {
      faults.leaveOut("rules 1 to 5", "the pieces cannot be placed in their boards or in the room");
      return;
    }
    int rowOfPlan = 0;
    for (Bay bay : plan.bays()) {
      bay(bay, rowOfPlan);
      rowOfPlan += bay.rows().size();
    }
    minimums.compare(plan.compromises());
    rooms();
    BoardCheck.check(job, plan, pieces, faults);
    if (faults.onlyBytesDiffer() && plan.compromises().isEmpty()) {
      CutAgain.check(job, plan, pieces, faults);
    } else {
      faults.leaveOut("the bound against the same pieces cut again", "only a plan that keeps all rules can show that a bound is too high");
    }
  }

  /** Polygons that cross themselves have no area that could be compared. */
  private boolean isSimple(Bay bay) {
    boolean simple = true;
    if (!bay.laid().isValid()) {
      bay.at().get("laid").fault(Rule.COVER, "an outline that crosses or touches itself", "the laid area must be a polygon");
      simple = false;
    }
    for (Row row : bay.rows()) {
      for (Piece piece : row.pieces()) {
        if (!piece.outline().isValid()) {
          faults.add(Rule.COVER, piece.name(), "an outline that crosses or touches itself", "a piece must be a polygon");
          simple = false;
        }
      }
    }
    return simple;
  }

  private void bay(Bay bay, int firstRowOfPlan) {
    List<List<SeenPiece>> rows = new ArrayList<>();
    for (int k = 0; k < bay.rows().size(); k++) {
      List<SeenPiece> row = new ArrayList<>();
      for (Piece piece : bay.rows().get(k).pieces()) {
        row.add(new SeenPiece(piece, bay.degrees(), k, firstRowOfPlan + k, plan.boardLength(piece.from())));
      }
      rows.add(row);
    }
    List<SeenPiece> all = rows.stream().flatMap(List::stream).toList();
    faults.tally.bays++;
    faults.tally.rows += rows.size();
    faults.tally.pieces += all.size();
    guarded(bay.name(), () -> CoverCheck.check(bay.name(), bay.laid(), all, faults));
    Meetings meetings = Meetings.of(all, faults);
    EndCheck.check(job.pitch(), meetings, faults);
    for (int k = 0; k < rows.size(); k++) {
      int row = k;
      NameCheck.runs(rows.get(k), meetings.joints.stream().filter(joint -> joint.left().row == row).toList(), faults);
    }
    minimums.measure(bay, rows, meetings);
    pieces.addAll(all);
  }

  private void rooms() {
    Map<String, List<Segment>> breaks = ProfileCheck.breaks(job, plan, faults);
    for (Room room : job.rooms()) {
      List<Bay> bays = plan.bays().stream().filter(bay -> bay.room().equals(room.name())).toList();
      guarded(room.name(), () -> GapCheck.check(job, room, bays, breaks.get(room.name()), faults));
    }
  }

  /** Polygons that are far from any floor may be beyond the geometry library. */
  private void guarded(String place, Runnable check) {
    try {
      check.run();
    } catch (TopologyException bad) {
      faults.add(Rule.COVER, place, "outlines whose areas cannot be compared", "they must be polygons without slivers");
    }
  }
}
