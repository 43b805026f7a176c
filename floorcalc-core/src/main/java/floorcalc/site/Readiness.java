package floorcalc.site;

import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import java.util.List;
import java.util.Objects;

/**
 * Whether the site of one room is fit for laying, limit by limit: the air, the moisture of the subfloor, the boards in the room, the
 * flatness, and the gap against the movement of the seasons. Immutable and thread-safe.
 * <p>
 * Every reading that was given is judged, and every reading that a check needs and that was not given stands there as not
 * measured with what to measure. A subject of which nothing was measured is one line. A site is ready only if every limit is kept and
 * nothing about the readings is doubted: what was not measured is never a pass, and days in the room stand in for no
 * reading. The makers' instructions come before all of it.
 *
 * @since 0.1
 */
public final class Readiness {
  private final String room;
  private final List<Judgement> judgements;
  private final List<Finding> findings;

  private Readiness(String room, List<Judgement> judgements, List<Finding> findings) {
    this.room = room;
    this.judgements = List.copyOf(judgements);
    this.findings = List.copyOf(findings);
  }

  /**
   * Judges the site of a room.
   *
   * @param floor the floor to be laid, not null
   * @param readings what was read, not null
   * @return the report with the working of its judgements, of flatness that of the lines, grid or gaps that decide; its
   *     findings are those of {@link #findings()}; not null
   */
  public static Calculated<Readiness> of(SiteFloor floor, SiteReadings readings) {
    Objects.requireNonNull(floor, "floor");
    SiteParts site = readings.parts();
    Report report = new Report();
    AirCheck.add(site, report);
    MoistureCheck moisture = new MoistureCheck(floor, site, report);
    moisture.subfloor();
    moisture.boards();
    new FlatnessCheck(site, floor.area(), report).add();
    new MovementCheck(floor, site, report).add();
    List<Finding> findings = report.findings.stream().distinct().toList();
    return Calculated.of(new Readiness(floor.room(), report.judgements, findings),
        report.steps.stream().distinct().toList(), findings);
  }

  /**
   * Returns the name of the room.
   *
   * @return the name, not null
   */
  public String room() {
    return room;
  }

  /**
   * Returns all judgements: air, subfloor, boards, flatness, movement.
   *
   * @return an unmodifiable list, never empty, not null
   */
  public List<Judgement> judgements() {
    return judgements;
  }

  /**
   * Returns the judgements that came to one outcome.
   *
   * @param outcome met, not met or not measured; not null
   * @return an unmodifiable list in the order of {@link #judgements()}, not null
   */
  public List<Judgement> judgements(Outcome outcome) {
    Objects.requireNonNull(outcome, "outcome");
    return judgements.stream().filter(judgement -> judgement.outcome() == outcome).toList();
  }

  /**
   * Returns what was noticed about the readings, such as one that looks misread: a warning keeps the site from being ready.
   *
   * @return an unmodifiable list, not null
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Returns what all of it comes to: not met if one limit is not kept; else not measured if anything was not measured or is
   * doubted; else met.
   *
   * @return the outcome, not null
   */
  public Outcome outcome() {
    if (judgements.stream().anyMatch(judgement -> judgement.outcome() == Outcome.NOT_MET)) {
      return Outcome.NOT_MET;
    }
    boolean open = judgements.stream().anyMatch(judgement -> judgement.outcome() == Outcome.NOT_MEASURED)
        || findings.stream().anyMatch(finding -> finding.severity() != Severity.NOTE);
    return open ? Outcome.NOT_MEASURED : Outcome.MET;
  }

  /**
   * Tells whether the site is fit for laying.
   *
   * @return true if every limit is kept and nothing is open or doubted
   */
  public boolean isReady() {
    return outcome() == Outcome.MET;
  }

  /**
   * Returns one line.
   *
   * @return for example {@code "Study: not ready; 7 met, 1 not met, 2 not measured"}, not null
   */
  @Override
  public String toString() {
    return room + ": " + (isReady() ? "ready" : "not ready") + "; " + judgements(Outcome.MET).size() + " met, "
        + judgements(Outcome.NOT_MET).size() + " not met, " + judgements(Outcome.NOT_MEASURED).size() + " not measured";
  }
}
