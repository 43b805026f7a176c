package floorcalc.finishing;

import floorcalc.materials.BoardMoney;
import floorcalc.materials.CostSheet;
import floorcalc.materials.OrderLine;
import floorcalc.materials.PackStack;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One order list for a floor: boards, layers under them, skirting, profiles, what is used up; each line with what the floor takes, what is
 * ordered and how that was worked out. Of goods that the job does not state, a line says what the floor takes, in metres or square metres.
 * <pre>{@code
 * OrderList order = OrderList.of(job, FloorPlanner.plan(job));
 * order.lines().forEach(line -> System.out.println(line.item() + ": " + line.quantity() + " " + line.unit()));
 * }</pre>
 * Immutable and thread-safe. See {@code docs/cost.md}.
 *
 * @since 0.1
 */
public final class OrderList {
  private final List<OrderLine> lines;
  private final Calculated<CostSheet> cost;
  private final Optional<Calculated<BoardMoney>> money;
  private final Calculated<PackStack> stack;
  private final Gathered gathered;

  private OrderList(Gathered gathered, Optional<Calculated<BoardMoney>> money, Calculated<PackStack> stack) {
    this.gathered = gathered;
    this.lines = List.copyOf(gathered.lines);
    this.cost = CostSheet.of(lines);
    this.money = money;
    this.stack = stack;
  }

  /**
   * Makes the order list of a plan.
   *
   * @param job the job, not null
   * @param plan a plan of it, with its profiles; not null
   * @return the order list, not null
   */
  public static OrderList of(FloorJob job, FloorPlan plan) {
    Objects.requireNonNull(plan, "plan");
    Gathered gathered = new Gathered();
    BoardLines boards = new BoardLines(job, plan, gathered);
    boards.write();
    new LayerLines(job, plan, gathered).write();
    new TrimLines(job, plan, gathered).write();
    new SmallLines(job, plan, gathered).write();
    Calculated<PackStack> stack = PackStack.of(job.board(), plan.order().packs() + job.goods().keepBack(), job.goods().stackHeight());
    gathered.findings.addAll(stack.findings());
    return new OrderList(gathered, boards.money(), stack);
  }

  /**
   * Returns the lines, boards first.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<OrderLine> lines() {
    return lines;
  }

  /**
   * Returns what all that is priced costs.
   *
   * @return the totals with their working, not null
   */
  public Calculated<CostSheet> cost() {
    return cost;
  }

  /**
   * Returns what the boards cost, what of that is waste, and what unopened packs bring.
   *
   * @return the money with its working, empty if the price of a pack is not stated; not null
   */
  public Optional<Calculated<BoardMoney>> money() {
    return money;
  }

  /**
   * Returns the packs as they stand in the room.
   *
   * @return the stacks with their working, not null
   */
  public Calculated<PackStack> stack() {
    return stack;
  }

  /**
   * Returns what was judged about the goods, room by room; each says which room it is about.
   *
   * @return an unmodifiable list, not null
   */
  public List<Check> checks() {
    return List.copyOf(gathered.checks);
  }

  /**
   * Returns what was noticed.
   *
   * @return an unmodifiable list, not null
   */
  public List<Finding> findings() {
    List<Finding> all = new ArrayList<>(gathered.findings);
    all.addAll(cost.findings());
    return List.copyOf(all);
  }

  /**
   * Returns the plan with this list as its materials, and with the checks, findings, cautions and sums of it at the end of its own.
   *
   * @param plan the plan that the list was made of, not null
   * @return the plan, not null
   */
  public FloorPlan addedTo(FloorPlan plan) {
    List<Worked> working = new ArrayList<>(List.of(new Worked("packs in the room", stack.steps())));
    money.ifPresent(amounts -> working.add(new Worked("money in the boards", amounts.steps())));
    if (!cost.steps().isEmpty()) {
      working.add(new Worked("cost", cost.steps()));
    }
    return plan.withMaterials(lines).withCautions(gathered.cautions).with(checks(), findings(), working);
  }
}
