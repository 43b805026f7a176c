package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A skirting, a quadrant or a profile as it is sold, by the bar, and how it is worked. Immutable and thread-safe.
 *
 * @param name what the order list calls it, not null, not blank
 * @param lengths the lengths that are sold, each once, from 100 mm to 100 m; not null, not empty
 * @param thickness how far it stands out from the wall, not null, from 0 mm to 300 mm
 * @param inside how inside corners are made, not null
 * @param openEnds how an end at an opening is made, not null
 * @param longRuns what is done where a wall is longer than the longest bar, not null
 * @param leastPiece no part of a long wall is shorter, not null, from 0 mm up to half the longest bar
 * @param allowance what each piece is cut longer for fitting, not null, from 0 mm to 1 m
 * @param voids what is done at columns and other voids, not null
 * @param price what it costs, empty if not stated; not null
 * @since 0.1
 */
public record BarGoods(String name, List<Length> lengths, Length thickness, InsideCorners inside, OpenEnds openEnds,
    LongRuns longRuns, Length leastPiece, Length allowance, AtVoids voids, Optional<UnitPrice> price)
    implements Serializable {
  private static final Length SHORTEST = Length.ofMillimetres(100);
  private static final Length LONGEST = Length.ofMillimetres(100_000);
  /** No part of a long wall is shorter than this unless given: common practice, no source. */
  private static final Length LEAST_PIECE = Length.ofMillimetres(300);

  /**
   * How two pieces meet in a corner of less than 180°.
   *
   * @since 0.1
   */
  public enum InsideCorners {
    /** Both are sawn at half the angle. */
    MITRED,
    /** One runs into the corner, the other is sawn to its outline. */
    SCRIBED
  }

  /**
   * How a piece ends at an opening.
   *
   * @since 0.1
   */
  public enum OpenEnds {
    /** Square, against a casing or a frame. */
    SQUARE,
    /** Mitred, with a short piece that returns to the wall. */
    RETURNED
  }

  /**
   * What is done where a wall is longer than the longest bar.
   *
   * @since 0.1
   */
  public enum LongRuns {
    /** It is made up of parts that overlap in a slanting joint of the thickness. */
    SCARFED,
    /** It should be in one piece; where no bar is long enough, that is a finding, and it is made up of parts. */
    IN_ONE_PIECE
  }

  /**
   * What is done at voids.
   *
   * @since 0.1
   */
  public enum AtVoids {
    /** It runs round them, as round a column. */
    AROUND,
    /** It stops at the walls; voids get none, as an island or a hearth. */
    LEFT_OUT
  }

  /** Checks that no part is null or out of range. */
  public BarGoods {
    Objects.requireNonNull(thickness, "thickness");
    Objects.requireNonNull(leastPiece, "leastPiece");
    Objects.requireNonNull(allowance, "allowance");
    Objects.requireNonNull(price, "price");
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a bar needs a name that is not blank");
    }
    lengths = lengths.stream().sorted((a, b) -> b.compareTo(a)).toList();
    if (lengths.isEmpty()) {
      throw new IllegalArgumentException(name + ": there is no length that is sold; give at least one");
    }
    if (lengths.stream().distinct().count() < lengths.size()) {
      throw new IllegalArgumentException(name + ": a length is listed twice; list each length that is sold once");
    }
    lengths.forEach(length -> inRange("length of a bar", length, SHORTEST, LONGEST));
    inRange("thickness of a bar", thickness, Length.ZERO, Length.ofMillimetres(300));
    Objects.requireNonNull(inside, "inside");
    Objects.requireNonNull(openEnds, "openEnds");
    Objects.requireNonNull(longRuns, "longRuns");
    Objects.requireNonNull(voids, "voids");
    inRange("allowance for fitting", allowance, Length.ZERO, Length.ofMillimetres(1000));
    inRange("least piece", leastPiece, Length.ZERO, lengths.get(0));
    if (leastPiece.multipliedBy(2).compareTo(lengths.get(0)) > 0) {
      throw new IllegalArgumentException(name + ": the least piece must be at most half of the longest bar, " + lengths.get(0)
          + ", but was " + leastPiece);
    }
    Objects.requireNonNull(price, "price");
  }

  private static void inRange(String what, Length length, Length least, Length most) {
    if (length.compareTo(least) < 0 || length.compareTo(most) > 0) {
      throw new IllegalArgumentException(what + " must be from " + least + " to " + most + ", but was " + length);
    }
  }

  /**
   * Returns bars with mitred corners, square ends and scarfed long runs, round voids as well, no part shorter than 300 mm or a
   * quarter of the longest bar; common practice, no source.
   *
   * @param name what the order list calls it, not null, not blank
   * @param lengths the lengths that are sold, each once; not null, not empty
   * @param thickness how far it stands out from the wall, not null, from 0 mm to 300 mm
   * @return the goods, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static BarGoods of(String name, List<Length> lengths, Length thickness) {
    Objects.requireNonNull(thickness, "thickness");
    Length longest = lengths.stream().reduce(Length.ZERO, Length::max);
    Length least = LEAST_PIECE.min(Length.ofNanometres(longest.toNanometres() / 4));
    return new BarGoods(name, lengths, thickness, InsideCorners.MITRED, OpenEnds.SQUARE, LongRuns.SCARFED, least, Length.ZERO,
        AtVoids.AROUND, Optional.empty());
  }

  /**
   * Returns the same bars with other inside corners.
   *
   * @param made how they are made, not null
   * @return the goods, not null
   */
  public BarGoods withInsideCorners(InsideCorners made) {
    Objects.requireNonNull(made, "made");
    return new BarGoods(name, lengths, thickness, made, openEnds, longRuns, leastPiece, allowance, voids, price);
  }

  /**
   * Returns the same bars with other ends at openings.
   *
   * @param made how they are made, not null
   * @return the goods, not null
   */
  public BarGoods withOpenEnds(OpenEnds made) {
    Objects.requireNonNull(made, "made");
    return new BarGoods(name, lengths, thickness, inside, made, longRuns, leastPiece, allowance, voids, price);
  }

  /**
   * Returns the same bars with another way with long walls.
   *
   * @param made what is done, not null
   * @return the goods, not null
   */
  public BarGoods withLongRuns(LongRuns made) {
    Objects.requireNonNull(made, "made");
    return new BarGoods(name, lengths, thickness, inside, openEnds, made, leastPiece, allowance, voids, price);
  }

  /**
   * Returns the same bars with another least part of a long wall.
   *
   * @param least no part is shorter, not null, from 0 mm up to half the longest bar
   * @return the goods, not null
   */
  public BarGoods withLeastPiece(Length least) {
    Objects.requireNonNull(least, "least");
    return new BarGoods(name, lengths, thickness, inside, openEnds, longRuns, least, allowance, voids, price);
  }

  /**
   * Returns the same bars, pieces cut longer for fitting.
   *
   * @param more by how much, not null, from 0 mm to 1 m
   * @return the goods, not null
   */
  public BarGoods withAllowance(Length more) {
    Objects.requireNonNull(more, "more");
    return new BarGoods(name, lengths, thickness, inside, openEnds, longRuns, leastPiece, more, voids, price);
  }

  /**
   * Returns the same bars with another way with voids.
   *
   * @param made what is done at voids, not null
   * @return the goods, not null
   */
  public BarGoods atVoids(AtVoids made) {
    Objects.requireNonNull(made, "made");
    return new BarGoods(name, lengths, thickness, inside, openEnds, longRuns, leastPiece, allowance, made, price);
  }

  /**
   * Returns the same bars with their price.
   *
   * @param cost a price of a bar, of one length only, or of a metre; not null
   * @return the goods, not null
   * @throws IllegalArgumentException if the price is of a bar and several lengths are sold, or of a square metre
   */
  public BarGoods withPrice(UnitPrice cost) {
    if (cost.per() == UnitPrice.Per.SQUARE_METRE || cost.per() == UnitPrice.Per.UNIT && lengths.size() > 1) {
      throw new IllegalArgumentException(name + ": bars are priced by the metre, or by the bar if one length is sold, but the price was "
          + cost);
    }
    return new BarGoods(name, lengths, thickness, inside, openEnds, longRuns, leastPiece, allowance, voids, Optional.of(cost));
  }

  /**
   * Returns the longest bar.
   *
   * @return its length, not null
   */
  public Length longest() {
    return lengths.get(0);
  }

  private Object writeReplace() {
    return new Form(name, lengths, thickness, inside, openEnds, longRuns, leastPiece, allowance, voids, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, List<Length> lengths, Length thickness, InsideCorners inside, OpenEnds openEnds,
      LongRuns longRuns, Length leastPiece, Length allowance, AtVoids voids, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new BarGoods(name, lengths, thickness, inside, openEnds, longRuns, leastPiece, allowance, voids,
          Optional.ofNullable(price));
    }
  }
}
