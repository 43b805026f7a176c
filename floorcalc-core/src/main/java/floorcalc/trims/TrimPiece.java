package floorcalc.trims;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A piece of trim that is wanted: skirting for a wall, a profile for a doorway, a casing.
 *
 * @param name what it is for, such as {@code "study, north wall"}; not null, may be empty
 * @param length its finished length, not null, more than zero
 * @param allowance what is cut longer for mitres, coping and fitting, all of it together; not null, not negative
 * @param count how many such pieces are wanted, at least 1
 * @since 0.1
 */
public record TrimPiece(String name, Length length, Length allowance, int count) {
  /** Checks that no part is null or out of range. */
  public TrimPiece {
    Objects.requireNonNull(name, "name");
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("length of piece '" + name + "' must be more than 0 mm, but was " + length);
    }
    if (Objects.requireNonNull(allowance, "allowance").isNegative()) {
      throw new IllegalArgumentException("allowance of piece '" + name + "' must be 0 mm or more, but was " + allowance);
    }
    if (count < 1) {
      throw new IllegalArgumentException("count of piece '" + name + "' must be at least 1, but was " + count);
    }
  }

  /**
   * Returns one piece that is cut as long as it is, with nothing for mitres.
   *
   * @param name what it is for, not null, may be empty
   * @param length its length, not null, more than zero
   * @return the piece, not null
   */
  public static TrimPiece of(String name, Length length) {
    return new TrimPiece(name, length, Length.ZERO, 1);
  }

  /**
   * Returns such a piece a number of times.
   *
   * @param number how many, at least 1
   * @return the pieces, not null
   */
  public TrimPiece times(int number) {
    return new TrimPiece(name, length, allowance, number);
  }

  /**
   * Returns the same piece cut longer by an allowance.
   *
   * @param more what mitres and fitting take, both ends together; not null, not negative
   * @return the piece, not null
   */
  public TrimPiece withAllowance(Length more) {
    Objects.requireNonNull(more, "more");
    return new TrimPiece(name, length, more, count);
  }

  /**
   * Returns the length that is sawn: the finished length and the allowance.
   *
   * @return the length, not null
   */
  public Length cutLength() {
    return length.plus(allowance);
  }
}
