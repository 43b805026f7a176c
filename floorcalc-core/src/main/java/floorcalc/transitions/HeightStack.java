package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The layers of a floor from the bare subfloor up, and how high the finished floor stands: filler, barrier, underlay, board.
 * <p>
 * Undercuts, the space under a door, the profile at an edge and the risers of a stair all follow from it, so it is written down
 * once; when a layer changes, {@link #with} gives the new stack and they are asked again.
 * <pre>{@code
 * HeightStack floor = HeightStack.BARE.on("underlay", Length.parse("2 mm")).on("board", Length.parse("14 mm"));
 * floor.total();   // 16 mm
 * }</pre>
 * The bare subfloor of one side may stand higher than that of another: {@link #fromSubfloorAt} says so. Lengths are exact.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class HeightStack {
  /** The bare subfloor, with nothing on it. */
  public static final HeightStack BARE = new HeightStack(Length.ZERO, List.of());

  private static final Length FARTHEST = Length.ofMillimetres(10_000);

  private final Length subfloor;
  private final List<Layer> layers;

  private HeightStack(Length subfloor, List<Layer> layers) {
    this.subfloor = subfloor;
    this.layers = List.copyOf(layers);
  }

  /**
   * Returns a stack of layers on a bare subfloor.
   *
   * @param layers the layers from below, each with a name of its own; not null
   * @return the stack, not null
   * @throws IllegalArgumentException if two layers share a name
   */
  public static HeightStack of(List<Layer> layers) {
    HeightStack stack = BARE;
    for (Layer layer : layers) {
      stack = stack.on(layer.name(), layer.thickness());
    }
    return stack;
  }

  /**
   * Returns this stack with one more layer on top.
   *
   * @param name what the layer is, not null, not blank, a name of its own in the stack
   * @param thickness its thickness, not null, 0 mm to 1 m
   * @return the higher stack, not null
   * @throws IllegalArgumentException if a part is out of range or the name is there already
   */
  public HeightStack on(String name, Length thickness) {
    Layer layer = new Layer(name, thickness);
    if (layers.stream().anyMatch(one -> one.name().equals(name))) {
      throw new IllegalArgumentException("layer '" + name + "' is in the stack already; give each layer a name of its own");
    }
    List<Layer> more = new ArrayList<>(layers);
    more.add(layer);
    return new HeightStack(subfloor, more);
  }

  /**
   * Returns this stack with one layer of another thickness.
   *
   * @param name the layer, not null
   * @param thickness its new thickness, not null, 0 mm to 1 m
   * @return the changed stack, not null
   * @throws IllegalArgumentException if there is no such layer; the message lists the names
   */
  public HeightStack with(String name, Length thickness) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(thickness, "thickness");
    if (layers.stream().noneMatch(one -> one.name().equals(name))) {
      throw new IllegalArgumentException("there is no layer '" + name + "'; the layers are: "
          + layers.stream().map(one -> "'" + one.name() + "'").collect(Collectors.joining(", ")));
    }
    return new HeightStack(subfloor,
        layers.stream().map(one -> one.name().equals(name) ? new Layer(name, thickness) : one).toList());
  }

  /**
   * Returns the same layers on a subfloor at another height, as where a slab steps at a door.
   *
   * @param height how much the bare subfloor stands above the height that both sides count from, negative below it; not null,
   *     at most 10 m either way
   * @return the stack, not null
   * @throws IllegalArgumentException if the height is out of range
   */
  public HeightStack fromSubfloorAt(Length height) {
    if (Objects.requireNonNull(height, "height").abs().compareTo(FARTHEST) > 0) {
      throw new IllegalArgumentException("height of the subfloor must be from -" + FARTHEST + " to " + FARTHEST + ", but was "
          + height + "; count from a floor near by");
    }
    return new HeightStack(height, layers);
  }

  /**
   * Returns the layers from below.
   *
   * @return an unmodifiable list, not null, empty for a bare subfloor
   */
  public List<Layer> layers() {
    return layers;
  }

  /**
   * Returns how much the bare subfloor stands above the height that both sides count from.
   *
   * @return the height, 0 mm if not said otherwise; not null
   */
  public Length subfloor() {
    return subfloor;
  }

  /**
   * Returns how high the finished floor stands above its own bare subfloor.
   *
   * @return the sum of the layers, not null
   */
  public Length total() {
    return layers.stream().map(Layer::thickness).reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns how high the finished floor stands above the height that both sides count from.
   *
   * @return the subfloor and its layers, not null
   */
  public Length top() {
    return subfloor.plus(total());
  }

  /**
   * Returns the total with its working.
   *
   * @return the sum of the layers, with the step {@code stack-height}; not null
   */
  public Calculated<Length> calculated() {
    return Calculated.of(total(), List.of(step("stack-height", "How high does the floor stand above the bare subfloor?", "t")));
  }

  /** The sum of the layers, whose symbols begin with a letter. */
  Step step(String id, String question, String letter) {
    if (layers.isEmpty()) {
      return new Step(id, question + " Nothing is laid on it.", "value as stated", List.of(), Length.ZERO, Source.DEFINITION);
    }
    List<Term> terms = new ArrayList<>();
    for (Layer layer : layers) {
      terms.add(Term.of(letter + (terms.size() + 1), layer.name(), layer.thickness()));
    }
    return new Step(id, question, "H = " + terms.stream().map(Term::symbol).collect(Collectors.joining(" + ")), terms, total(),
        Source.DEFINITION);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof HeightStack other && subfloor.equals(other.subfloor) && layers.equals(other.layers);
  }

  @Override
  public int hashCode() {
    return Objects.hash(subfloor, layers);
  }

  /**
   * Returns the layers from below in one line.
   *
   * @return such as {@code "underlay 2 mm, board 14 mm"}, not null
   */
  @Override
  public String toString() {
    String text = layers.isEmpty() ? "bare subfloor"
        : layers.stream().map(one -> one.name() + " " + one.thickness()).collect(Collectors.joining(", "));
    return subfloor.isZero() ? text : text + ", from a subfloor at " + subfloor;
  }
}
