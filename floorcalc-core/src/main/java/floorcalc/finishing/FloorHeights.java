package floorcalc.finishing;

import floorcalc.plan.FloorJob;
import floorcalc.transitions.HeightStack;
import floorcalc.underlay.RollGoods;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The layers of the floor of a job from the bare subfloor up.
 *
 * @param stack the layers that the job states, not null
 * @param notStated layers that floors have as a rule and this job says nothing about: the floor may stand higher by them; not
 *     null
 * @since 0.1
 */
public record FloorHeights(HeightStack stack, List<String> notStated) {
  /** Checks that no part is null and copies the list. */
  public FloorHeights {
    Objects.requireNonNull(notStated, "notStated");
    Objects.requireNonNull(stack, "stack");
    notStated = List.copyOf(notStated);
  }

  /**
   * Returns the layers of the floor of a job: its underlays and barriers, and the boards on them. Filler is not counted: it lies in
   * low spots. A layer whose thickness is not stated, or all of them where the job states none, are {@link #notStated()}.
   *
   * @param job the job, not null
   * @return the heights, not null
   */
  public static FloorHeights of(FloorJob job) {
    HeightStack stack = HeightStack.BARE;
    List<String> notStated = new ArrayList<>();
    List<RollGoods> layers = job.goods().layers();
    for (int i = 0; i < layers.size(); i++) {
      String given = layers.get(i).name();
      boolean unique = !given.equals("board") && layers.stream().filter(one -> one.name().equals(given)).count() == 1;
      String name = unique ? given : "layer " + (i + 1) + ", " + given;
      if (layers.get(i).thickness().isPresent()) {
        stack = stack.on(name, layers.get(i).thickness().get());
      } else {
        notStated.add(name);
      }
    }
    return new FloorHeights(stack.on("board", job.board().thickness()), layers.isEmpty() ? List.of("underlay") : notStated);
  }
}
