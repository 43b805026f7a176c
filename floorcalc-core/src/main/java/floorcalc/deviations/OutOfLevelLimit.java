package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;

/**
 * How far a floor may be out of level by one source.
 *
 * @param measure between which readings, not null
 * @param over for floors whose line across is longer than this, the bound itself not among them; not negative, not null
 * @param upTo for floors up to this across, itself among them; empty if there is no such bound; not null
 * @param perMetre how much for each metre between the two places; empty if it does not grow; not null
 * @param most how much at most; where {@code perMetre} is there too the lesser of both holds; empty if there is none; not null
 * @param rule how long the rule is, under which it is measured; empty for every other measure; not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record OutOfLevelLimit(LevelMeasure measure, Length over, Optional<Length> upTo, Optional<Length> perMetre, Optional<Length> most,
    Optional<Length> rule, Source source) {
  private static final Length METRE = Length.ofMillimetres(1000);

  /**
   * Checks every part.
   *
   * @throws IllegalArgumentException if nothing is limited, a length is negative, or a rule is missing or idle
   */
  public OutOfLevelLimit {
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(upTo, "upTo");
    Objects.requireNonNull(source, "source");
    if (perMetre.isEmpty() && most.isEmpty()) {
      throw new IllegalArgumentException("a limit of level must say how much is allowed, for each metre or in all");
    }
    if (over.isNegative() || perMetre.filter(Length::isNegative).isPresent() || most.filter(Length::isNegative).isPresent()) {
      throw new IllegalArgumentException("what is allowed out of level must not be negative");
    }
    if (rule.filter(Length::isPositive).isPresent() != (measure == LevelMeasure.UNDER_RULE)) {
      throw new IllegalArgumentException("a rule of more than 0 mm belongs to limits under a rule, and to no others");
    }
    if (measure == LevelMeasure.FROM_DATUM && perMetre.isPresent()) {
      throw new IllegalArgumentException("a limit from the level line is one length, not so much for each metre");
    }
  }

  /**
   * Returns a limit for each metre between two places.
   *
   * @param measure between which readings; not under a rule or from the level line; not null
   * @param perMetre how much for each metre, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static OutOfLevelLimit perMetre(LevelMeasure measure, Length perMetre, Source source) {
    Objects.requireNonNull(perMetre, "perMetre");
    return new OutOfLevelLimit(measure, Length.ZERO, Optional.empty(), Optional.of(perMetre), Optional.empty(), Optional.empty(), source);
  }

  /**
   * Returns a limit in all.
   *
   * @param measure between which readings; not under a rule; not null
   * @param most how much at most, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static OutOfLevelLimit inAll(LevelMeasure measure, Length most, Source source) {
    Objects.requireNonNull(most, "most");
    return new OutOfLevelLimit(measure, Length.ZERO, Optional.empty(), Optional.empty(), Optional.of(most), Optional.empty(), source);
  }

  /**
   * Returns a limit under a rule.
   *
   * @param rule how long the rule is, more than zero, not null
   * @param most how much at most between its ends, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static OutOfLevelLimit underRule(Length rule, Length most, Source source) {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(most, "most");
    return new OutOfLevelLimit(LevelMeasure.UNDER_RULE, Length.ZERO, Optional.empty(), Optional.empty(), Optional.of(most), Optional.of(rule),
        source);
  }

  /**
   * Returns the same limit, and nothing beyond a length in all either.
   *
   * @param length the greatest allowed, not null
   * @return the limit, not null
   */
  public OutOfLevelLimit andAtMost(Length length) {
    Objects.requireNonNull(length, "length");
    return new OutOfLevelLimit(measure, over, upTo, perMetre, Optional.of(length), rule, source);
  }

  /**
   * Returns the same limit for floors up to some length across.
   *
   * @param bound the longest, itself among them, not null
   * @return the limit, not null
   */
  public OutOfLevelLimit acrossUpTo(Length bound) {
    Objects.requireNonNull(bound, "bound");
    return new OutOfLevelLimit(measure, over, Optional.of(bound), perMetre, most, rule, source);
  }

  /**
   * Returns the same limit for floors over some length across.
   *
   * @param bound just too short, not null
   * @return the limit, not null
   */
  public OutOfLevelLimit acrossOver(Length bound) {
    Objects.requireNonNull(bound, "bound");
    return new OutOfLevelLimit(measure, bound, upTo, perMetre, most, rule, source);
  }

  /**
   * Tells whether the limit is for floors of some length across.
   *
   * @param across the length of the line, not null
   * @return true if it is
   */
  public boolean covers(Length across) {
    return across.compareTo(over) > 0 && upTo.filter(bound -> across.compareTo(bound) > 0).isEmpty();
  }

  /**
   * Returns how much is allowed between two places: {@code min(r * d / 1 m, m)}.
   *
   * @param distance how far apart they are along the floor, not null
   * @return the greatest difference of height allowed, rounded down to a whole nanometre, not null
   */
  public Length allowed(Length distance) {
    Objects.requireNonNull(distance, "distance");
    if (perMetre.isEmpty()) {
      return most.orElseThrow();
    }
    Length grown = perMetre.get().times(distance).dividedBy(METRE, RoundingMode.FLOOR);
    return most.map(grown::min).orElse(grown);
  }

  /**
   * Returns the limit as text.
   *
   * @return for example {@code "at most 3 mm per m, floors up to 6000 mm across"}, not null
   */
  @Override
  public String toString() {
    String amount = perMetre.map(each -> each + " per m").orElse("") + (perMetre.isPresent() && most.isPresent() ? ", " : "")
        + most.map(length -> (perMetre.isPresent() ? "at most " : "") + length).orElse("");
    return "at most " + amount + rule.map(length -> " under a rule of " + length).orElse("")
        + (over.isZero() && upTo.isEmpty() ? "" : ", floors" + (over.isZero() ? "" : " over " + over) + upTo.map(bound -> " up to " + bound)
            .orElse("") + " across");
  }
}
