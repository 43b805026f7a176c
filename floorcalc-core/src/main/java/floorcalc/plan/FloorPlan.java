package floorcalc.plan;

import floorcalc.materials.OrderLine;
import floorcalc.materials.WasteLedger;
import floorcalc.working.Finding;
import floorcalc.working.Worked;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was worked out for a job: the laid floor piece by piece, what to order, and what to know about it.
 * Immutable and thread-safe.
 *
 * @param title the job's title, not null
 * @param bays the bays in laying order, not null
 * @param boards the boards in the order of opening, not null
 * @param order what to order, not null
 * @param ledger where the boards that are bought go, not null
 * @param materials the order list, not null
 * @param profiles transition profiles, not null
 * @param checks limits held against what was found, not null
 * @param compromises rules that could not be kept, not null
 * @param findings what was noticed, not null
 * @param cautions warnings for those who do the work, not null
 * @param working the working of the key figures, not null
 * @param figures what tells this plan apart from others that take as many packs; empty for a plan that was not made by this
 *     library; not null
 * @param breaks the expansion breaks between the bays of a room, room by room; not null
 * @since 0.1
 */
public record FloorPlan(
    String title,
    List<Bay> bays,
    List<OpenedBoard> boards,
    Order order,
    WasteLedger ledger,
    List<OrderLine> materials,
    List<Profile> profiles,
    List<Check> checks,
    List<Compromise> compromises,
    List<Finding> findings,
    List<String> cautions,
    List<Worked> working,
    Optional<PlanFigures> figures,
    List<RoomBreak> breaks) implements Serializable {
  /** Checks that no part is null and copies the lists given. */
  public FloorPlan {
    Objects.requireNonNull(bays, "bays");
    Objects.requireNonNull(boards, "boards");
    Objects.requireNonNull(materials, "materials");
    Objects.requireNonNull(profiles, "profiles");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(compromises, "compromises");
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(cautions, "cautions");
    Objects.requireNonNull(working, "working");
    Objects.requireNonNull(title, "title");
    bays = List.copyOf(bays);
    boards = List.copyOf(boards);
    Objects.requireNonNull(order, "order");
    Objects.requireNonNull(ledger, "ledger");
    materials = List.copyOf(materials);
    profiles = List.copyOf(profiles);
    checks = List.copyOf(checks);
    compromises = List.copyOf(compromises);
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
    working = List.copyOf(working);
    Objects.requireNonNull(figures, "figures");
    breaks = List.copyOf(Objects.requireNonNull(breaks, "breaks"));
  }

  /**
   * Makes a plan without figures and without breaks, as one made by hand.
   *
   * @param title the job's title, not null
   * @param bays the bays in laying order, not null
   * @param boards the boards in the order of opening, not null
   * @param order what to order, not null
   * @param ledger where the boards that are bought go, not null
   * @param materials the order list, not null
   * @param profiles transition profiles, not null
   * @param checks limits held against what was found, not null
   * @param compromises rules that could not be kept, not null
   * @param findings what was noticed, not null
   * @param cautions warnings for those who do the work, not null
   * @param working the working of the key figures, not null
   */
  public FloorPlan(String title, List<Bay> bays, List<OpenedBoard> boards, Order order, WasteLedger ledger,
      List<OrderLine> materials, List<Profile> profiles, List<Check> checks, List<Compromise> compromises,
      List<Finding> findings, List<String> cautions, List<Worked> working) {
    this(title, bays, boards, order, ledger, materials, profiles, checks, compromises, findings, cautions, working,
        Optional.empty(), List.of());
  }

  /**
   * Returns the same plan with expansion breaks in place of those that it has.
   *
   * @param others the breaks, not null
   * @return the plan, not null
   */
  public FloorPlan withBreaks(List<RoomBreak> others) {
    Objects.requireNonNull(others, "others");
    return new FloorPlan(title, bays, boards, order, ledger, materials, profiles, checks, compromises, findings, cautions,
        working, figures, others);
  }

  /**
   * Returns the same plan with another order list.
   *
   * @param others the order list, not null
   * @return the plan, not null
   */
  public FloorPlan withMaterials(List<OrderLine> others) {
    Objects.requireNonNull(others, "others");
    return new FloorPlan(title, bays, boards, order, ledger, others, profiles, checks, compromises, findings, cautions, working,
        figures, breaks);
  }

  /**
   * Returns the same plan with more cautions at the end, each once.
   *
   * @param more the cautions, not null
   * @return the plan, not null
   */
  public FloorPlan withCautions(List<String> more) {
    List<String> all = new ArrayList<>(cautions);
    more.stream().filter(caution -> !all.contains(caution)).forEach(all::add);
    return new FloorPlan(title, bays, boards, order, ledger, materials, profiles, checks, compromises, findings, all, working,
        figures, breaks);
  }

  /**
   * Returns the same plan with transition profiles in place of those that it has.
   *
   * @param others the profiles, not null
   * @return the plan, not null
   */
  public FloorPlan withProfiles(List<Profile> others) {
    Objects.requireNonNull(others, "others");
    return new FloorPlan(title, bays, boards, order, ledger, materials, others, checks, compromises, findings, cautions,
        working, figures, breaks);
  }

  /**
   * Returns the same plan with more checks, findings and working at the end.
   *
   * @param checked the checks, not null
   * @param noticed the findings, not null
   * @param worked the working, not null
   * @return the plan, not null
   */
  public FloorPlan with(List<Check> checked, List<Finding> noticed, List<Worked> worked) {
    Objects.requireNonNull(checked, "checked");
    Objects.requireNonNull(noticed, "noticed");
    Objects.requireNonNull(worked, "worked");
    List<Check> allChecks = new ArrayList<>(checks);
    allChecks.addAll(checked);
    List<Finding> allFindings = new ArrayList<>(findings);
    allFindings.addAll(noticed);
    List<Worked> allWorking = new ArrayList<>(working);
    allWorking.addAll(worked);
    return new FloorPlan(title, bays, boards, order, ledger, materials, profiles, allChecks, compromises, allFindings,
        cautions, allWorking, figures, breaks);
  }

  private Object writeReplace() {
    return new Form(title, bays, boards, order, ledger, materials, profiles, checks, compromises, findings, cautions,
        working, figures.orElse(null), breaks);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String title, List<Bay> bays, List<OpenedBoard> boards, Order order, WasteLedger ledger,
      List<OrderLine> materials, List<Profile> profiles, List<Check> checks, List<Compromise> compromises,
      List<Finding> findings, List<String> cautions, List<Worked> working, PlanFigures figures,
      List<RoomBreak> breaks) implements Serializable {

    private Object readResolve() {
      return new FloorPlan(title, bays, boards, order, ledger, materials, profiles, checks, compromises, findings, cautions,
          working, Optional.ofNullable(figures), breaks);
    }
  }
}
