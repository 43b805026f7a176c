package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.RandomJobs.Case;
import floorcalc.audit.AuditReport;
import floorcalc.audit.PlanAudit;
import floorcalc.measure.Area;
import floorcalc.plan.FloorPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** What holds for every floor: the audit finds nothing, the books balance, the same job gives the same plan. */
@AddLifecycleHook(MoreTries.class)
class FloorPlannerPropertyTest {
  @Provide
  Arbitrary<Case> jobs() {
    return RandomJobs.any();
  }

  @Provide
  Arbitrary<Case> dividing() {
    return RandomJobs.dividing();
  }

  @Provide
  Arbitrary<Case> corridors() {
    return RandomJobs.corridors();
  }

  @Provide
  Arbitrary<List<Case>> eight() {
    return RandomJobs.any().list().ofSize(8);
  }

  @Property(tries = 120)
  void aPlanOfAnyRoomIsSound(@ForAll("jobs") Case any) {
    assertSound(any);
  }

  @Property(tries = 15)
  void aPlanOfARoomThatBoardsDivideExactlyIsSound(@ForAll("dividing") Case any) {
    assertSound(any);
  }

  @Property(tries = 2)
  void aPlanOfALongCorridorIsSound(@ForAll("corridors") Case any) {
    assertSound(any);
  }

  private static void assertSound(Case any) {
    FloorPlan plan = FloorPlanner.plan(any.job());

    AuditReport audit = PlanAudit.of(any.job(), plan);
    assertThat(audit.breaches()).isEmpty();
    assertThat(audit.notes()).filteredOn(note -> !note.code().equals("tip-left-out")).isEmpty();
    assertThat(plan.order().boardsUsed()).isEqualTo(plan.boards().size()).isPositive();
    assertThat(plan.order().boardsAtLeast()).isBetween(1, plan.order().boardsUsed());
    assertThat(plan.ledger().difference()).isEqualTo(Area.ZERO);
    assertThat(plan.order().packsAtLeast()).isBetween(0, plan.order().packs());
    if (any.job().board().pack().size() == 1 && plan.order().provenFewest()) {
      assertThat(plan.order().provenFewestPacks()).isTrue();
    }
    SawnBoards sawn = SawnBoards.of(any.job(), plan);
    sawn.assertSameAs(plan.ledger());
    sawn.assertSameAs(plan.figures().orElseThrow());
  }

  @Property(tries = 10)
  void theSameJobGivesTheSamePlanAgain(@ForAll("jobs") Case any) {
    FloorPlan plan = FloorPlanner.plan(any.job());
    FloorPlan again = FloorPlanner.plan(any.job());

    assertThat(again).isEqualTo(plan).hasSameHashCodeAs(plan);
    assertThat(again.toString()).as("every value of the plan, in order").isEqualTo(plan.toString())
        .doesNotContainPattern("\\.[A-Z][A-Za-z]+@[0-9a-f]+");
  }

  @Property(tries = 3)
  void eightJobsAtOnceGiveTheirOwnPlans(@ForAll("eight") List<Case> cases) throws Exception {
    List<FloorPlan> oneByOne = cases.stream().map(any -> FloorPlanner.plan(any.job())).toList();

    List<Case> twice = new ArrayList<>(cases);
    twice.addAll(cases);
    List<FloorPlan> expected = new ArrayList<>(oneByOne);
    expected.addAll(oneByOne);
    assertThat(planned(twice, 8)).isEqualTo(expected);
    assertThat(planned(cases, 1)).isEqualTo(oneByOne);
  }

  private static List<FloorPlan> planned(List<Case> cases, int threads) throws InterruptedException, ExecutionException {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<FloorPlan>> started = new ArrayList<>();
      for (Case any : cases) {
        started.add(pool.submit(() -> FloorPlanner.plan(any.job())));
      }
      List<FloorPlan> plans = new ArrayList<>();
      for (Future<FloorPlan> plan : started) {
        plans.add(plan.get());
      }
      return plans;
    } finally {
      pool.shutdownNow();
    }
  }
}
