package floorcalc.outline.survey;

import floorcalc.outline.network.AdjustedObservation;
import java.util.Objects;

/**
 * One measurement of a survey after the adjustment: what was read, what it became, and how well the others control it.
 *
 * @param kind what was measured, not null
 * @param from of a wall or a tie the corner at one end, of a turn the corner, from 1
 * @param to of a wall or a tie the corner at the other end, of a turn the same corner, from 1
 * @param result what came of it: millimetres, of a turn degrees; not null
 * @since 0.1
 */
public record Measured(Kind kind, int from, int to, AdjustedObservation result) {

  /**
   * What can be measured.
   *
   * @since 0.1
   */
  public enum Kind {
    /** The length of a wall. */
    WALL,
    /** The length between two corners. */
    TIE,
    /** The turn at a corner, to the left positive. */
    TURN
  }

  /** Checks that no part is null. */
  public Measured {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(result, "result");
  }

  /**
   * Returns what people call it.
   *
   * @return for example {@code "wall 3"}, {@code "tie 2-5"} or {@code "turn at corner 4"}, not null
   */
  public String name() {
    return switch (kind) {
      case WALL -> "wall " + from;
      case TIE -> "tie " + from + "-" + to;
      case TURN -> "turn at corner " + from;
    };
  }

  /**
   * Returns what was read.
   *
   * @return millimetres, of a turn degrees to the left
   */
  public double read() {
    return kind == Kind.TURN ? 180 - result.observation().value() : result.observation().value();
  }

  /**
   * Returns what the adjusted corners make it.
   *
   * @return millimetres, of a turn degrees to the left
   */
  public double adjusted() {
    return kind == Kind.TURN ? 180 - result.adjusted() : result.adjusted();
  }

  /**
   * Returns the residual.
   *
   * @return adjusted less read: millimetres, of a turn degrees to the left
   */
  public double residual() {
    return adjusted() - read();
  }
}
