package example.floor;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;

/** Plans a room and looks at the result: the least that a program of yours does with the library. */
public final class PlanARoom {
  private PlanARoom() {
  }

  public static void main(String[] args) {
    BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    Room study = Room.of("Study", Outline.rectangle(Length.parse("4.21 m"), Length.parse("3.62 m")));
    FloorJob job = FloorJob.of("Study floor", boards).room(study).build();
    FloorPlan plan = FloorPlanner.plan(job);
    if (!FloorPlanner.audit(job, plan).isClean() || plan.order().boardsUsed() < plan.order().boardsAtLeast()) {
      throw new IllegalStateException("not a floor to lay: " + FloorPlanner.audit(job, plan).summary());
    }
    System.out.println(plan.order().boardsUsed() + " boards in " + plan.order().packs() + " packs, from "
        + FloorPlanner.class.getModule());
  }
}
