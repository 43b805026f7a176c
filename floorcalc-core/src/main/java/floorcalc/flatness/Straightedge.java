package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;

/**
 * A straight edge of a known length, laid on a profile.
 * <p>
 * Laid with both ends on the line, the edge rests on two points with the floor between them beneath it: an edge of the upper
 * convex hull of the part that it covers. The deviation is the greatest gap between these two points; what hangs out
 * beyond them is not counted. Gravity chooses the rest that the middle of the edge lies between; a hand can rock it onto
 * any other.
 * <pre>{@code
 *            left contact                 right contact
 *   ------------*----------------------------*------------   the edge
 *              / \___                       / \
 *   __________/      \___   gap            /   \__________   the floor
 *                        \________________/
 * }</pre>
 * Spans are level lengths; at a slope of 1 in 100 an edge is longer than its level length by 0.05 mm a metre. Between
 * readings the floor runs straight, so an end of the edge may rest between two readings; the height there is that of the nearest
 * nanometre, which moves a gap by less than a nanometre.
 * <p>
 * For {@code n} readings, of which {@code m} lie under the edge, one placement takes a time that grows with {@code m}. The greatest
 * gap over all placements takes one that grows with {@code n log n}, whatever the span, at equal spacing and while the widest
 * spacing is no more than some fixed multiple of the narrowest; beyond that, with a gap at many readings for one placement, up to
 * {@code n * m}. All placements at readings take {@code n log n} and the number of their rests. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Straightedge {
  private final Length span;

  private Straightedge(Length span) {
    this.span = span;
  }

  /**
   * Returns an edge.
   *
   * @param span its length, not null, more than zero, at most 100 m
   * @return the edge, not null
   * @throws IllegalArgumentException if the length is out of range
   */
  public static Straightedge of(Length span) {
    if (!Objects.requireNonNull(span, "span").isPositive() || span.compareTo(Length.ofMillimetres(100_000)) > 0) {
      throw new IllegalArgumentException("span of a straightedge must be more than 0 mm and at most 100000 mm, but was "
          + span);
    }
    return new Straightedge(span);
  }

  /**
   * Returns the length of the edge.
   *
   * @return the span, not null
   */
  public Length span() {
    return span;
  }

  /**
   * Tells whether the edge finds room on a profile.
   *
   * @param profile the floor, not null
   * @return true if the profile is at least as long as the edge
   */
  public boolean fits(HeightProfile profile) {
    return span.compareTo(profile.length()) <= 0;
  }

  /**
   * Lays the edge at one place.
   *
   * @param profile the floor, not null
   * @param start where its left end lies, not null
   * @return what it rests on, not null
   * @throws IllegalArgumentException if an end of the edge is not on the line
   */
  public EdgePlacement at(HeightProfile profile, Length start) {
    Objects.requireNonNull(profile, "profile");
    if (Objects.requireNonNull(start, "start").compareTo(profile.first()) < 0
        || start.plus(span).compareTo(profile.last()) > 0) {
      throw new IllegalArgumentException("an edge of " + span + " laid at " + start + " must lie between "
          + profile.first() + " and " + profile.last() + "; move or shorten it");
    }
    LaidEdge edge = new LaidEdge(profile, span.toNanometres());
    edge.layAt(start.toNanometres());
    return edge.placement();
  }

  /**
   * Lays the edge with its left end at each reading from which it fits: one value for each window.
   *
   * @param profile the floor, not null
   * @return the placements from left to right; not null, empty if the edge does not fit
   */
  public List<EdgePlacement> atReadings(HeightProfile profile) {
    return new EdgeWindows(profile, span.toNanometres(), new StepCount()).placements();
  }

  /**
   * Finds the greatest gap over every place where the edge can be laid, not only at readings.
   *
   * @param profile the floor, not null
   * @param rule which two points the edge rests on, not null
   * @return the greatest gap, of equal ones the leftmost placement; not null
   * @throws IllegalArgumentException if the edge does not fit
   */
  public GreatestGap greatest(HeightProfile profile, RestRule rule) {
    Objects.requireNonNull(rule, "rule");
    requireRoom(profile);
    LaidEdge.Found found = new EdgeSearch(profile, span.toNanometres()).find(rule);
    return new GreatestGap(span, rule, Length.ofNanometres(found.start()), found.rest());
  }

  /**
   * Finds the greatest gap as {@link #greatest} and shows how it comes about.
   *
   * @param profile the floor, not null
   * @param rule which two points the edge rests on, not null
   * @return the greatest gap with its working and with the doubts about the readings; not null
   * @throws IllegalArgumentException if the edge does not fit
   */
  public Calculated<GreatestGap> calculate(HeightProfile profile, RestRule rule) {
    GreatestGap greatest = greatest(profile, rule);
    return Calculated.of(greatest, EdgeGapWorking.steps(greatest), profile.doubts());
  }

  private void requireRoom(HeightProfile profile) {
    if (!fits(profile)) {
      throw new IllegalArgumentException("an edge of " + span + " does not fit on a profile of " + profile.length()
          + "; measure a longer line or use a shorter edge");
    }
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Straightedge other && span.equals(other.span);
  }

  @Override
  public int hashCode() {
    return span.hashCode();
  }

  @Override
  public String toString() {
    return "straightedge of " + span;
  }
}
