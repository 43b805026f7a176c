package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Deviations from the middle of a chord: the height of a reading less the mean of the floor's heights half a chord to either side.
 * <p>
 * {@code dev = h - (hL + hR) / 2}, up positive. This is the levelling-grid test described for DIN 18202, and what an edge rolled on
 * wheels at its two ends shows at its middle. It is not the gap under a straightedge, which rests on high points: a chord
 * ends where it ends, on a hump or in a hole. A reading counts if both ends of its chord are on the line; between
 * readings the floor runs straight. Deviations are to the nearest nanometre, a half to the even one. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class MidChord {
  private final Length chord;
  private final List<ChordDeviation> deviations;
  private final Length rootMeanSquare;

  private MidChord(Length chord, List<ChordDeviation> deviations, Length rootMeanSquare) {
    this.chord = chord;
    this.deviations = List.copyOf(deviations);
    this.rootMeanSquare = rootMeanSquare;
  }

  /**
   * Finds the deviation at each reading whose chord is on the line.
   *
   * @param profile the floor, not null
   * @param chord the level distance between the ends of the chord, not null, more than zero, an even number of nanometres
   * @return the deviations with the working of the greatest, of the least and of the root mean square; not null
   * @throws IllegalArgumentException if the chord is out of range, or no reading has a whole chord on the line
   */
  public static Calculated<MidChord> of(HeightProfile profile, Length chord) {
    Objects.requireNonNull(profile, "profile");
    long half = Objects.requireNonNull(chord, "chord").toNanometres() / 2;
    if (!chord.isPositive() || 2 * half != chord.toNanometres()) {
      throw new IllegalArgumentException("chord must be more than 0 mm and an even number of nanometres, but was " + chord);
    }
    List<ChordDeviation> found = new ArrayList<>();
    for (int i = 0; i < profile.size(); i++) {
      long left = profile.place(i) - half;
      long right = profile.place(i) + half;
      if (left >= profile.place(0) && right <= profile.place(profile.size() - 1)) {
        found.add(new ChordDeviation(profile.reading(i), Length.ofNanometres(-Cross.gap(left, profile.heightOn(left),
            profile.place(i), profile.height(i), right, profile.heightOn(right)))));
      }
    }
    if (found.isEmpty()) {
      throw new IllegalArgumentException("no reading of a profile of " + profile.length() + " has a chord of " + chord
          + " on the line; use a shorter chord");
    }
    Statistics statistics = Statistics.of(found.stream().map(ChordDeviation::deviation).toList());
    MidChord result = new MidChord(chord, found, statistics.rootMeanSquare());
    return Calculated.of(result, List.of(result.step("highest", "highest above", result.highest(), profile),
        result.step("lowest", "lowest against", result.lowest(), profile),
        new Step("root-mean-square", "What is the root of the mean of the squares of all deviations?",
            "r = sqrt(Q / n), rounded to the nearest nanometre",
            List.of(Term.of("Q", "sum of the squares of the deviations", statistics.squares()),
                Term.of("n", "number of deviations", statistics.number())), statistics.rootMeanSquare(), Source.DEFINITION)),
        profile.doubts());
  }

  private Step step(String id, String most, ChordDeviation at, HeightProfile profile) {
    Length place = at.reading().place();
    Length left = Length.ofNanometres(place.toNanometres() - chord.toNanometres() / 2);
    return new Step(id, "How far is the floor at " + place + ", where it is " + most + " a chord of " + chord
        + ", above the chord's middle?", "dev = h - (hL + hR) / 2, rounded to the nearest nanometre",
        List.of(Term.of("h", "height of the reading", at.reading().height()),
            Term.of("hL", "height at the left end of the chord", profile.heightAt(left)),
            Term.of("hR", "height at the right end of the chord", profile.heightAt(left.plus(chord)))),
        at.deviation(), Source.DEFINITION);
  }

  /**
   * Returns the length of the chord.
   *
   * @return the chord, not null
   */
  public Length chord() {
    return chord;
  }

  /**
   * Returns the deviation at each reading that has one, from left to right.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<ChordDeviation> deviations() {
    return deviations;
  }

  /**
   * Returns the deviation that is farthest up, the first of equals; it may be negative.
   *
   * @return the deviation, not null
   */
  public ChordDeviation highest() {
    ChordDeviation found = deviations.get(0);
    for (ChordDeviation each : deviations) {
      found = each.deviation().compareTo(found.deviation()) > 0 ? each : found;
    }
    return found;
  }

  /**
   * Returns the deviation that is farthest down, the first of equals; it may be positive.
   *
   * @return the deviation, not null
   */
  public ChordDeviation lowest() {
    ChordDeviation found = deviations.get(0);
    for (ChordDeviation each : deviations) {
      found = each.deviation().compareTo(found.deviation()) < 0 ? each : found;
    }
    return found;
  }

  /**
   * Returns the root of the mean of the squares of all deviations, to the nearest nanometre.
   *
   * @return the root mean square, not null, not negative
   */
  public Length rootMeanSquare() {
    return rootMeanSquare;
  }

  @Override
  public String toString() {
    return deviations.size() + " deviations from a chord of " + chord + ", " + lowest().deviation() + " to "
        + highest().deviation();
  }
}
