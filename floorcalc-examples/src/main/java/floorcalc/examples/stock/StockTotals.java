package floorcalc.examples.stock;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Rows added up. Adding is the same in any order and in any grouping, so the parts may come from anywhere.
 *
 * @param rooms how many rooms
 * @param refused how many of them cannot be planned
 * @param boards boards used
 * @param boardsAtLeast boards that no plans can do without
 * @param packs packs to order
 * @param findings findings of all plans
 * @param narrowestNanometres the narrowest row of all, {@link Long#MAX_VALUE} if there is none
 * @param digest the sum, modulo 2<sup>256</sup>, of the SHA-256 of each row's line; not null
 */
public record StockTotals(long rooms, long refused, long boards, long boardsAtLeast, long packs, long findings,
    long narrowestNanometres, BigInteger digest) implements Serializable {
  private static final int DIGEST_BITS = 256;

  /** No rows at all. */
  public static final StockTotals NONE = new StockTotals(0, 0, 0, 0, 0, 0, Long.MAX_VALUE, BigInteger.ZERO);

  /** Checks that no part is null. */
  public StockTotals {
    Objects.requireNonNull(digest, "digest");
  }

  /**
   * Returns the totals of one row.
   *
   * @param row the row, not null
   * @return its figures, not null
   */
  public static StockTotals of(StockRow row) {
    return new StockTotals(1, row.refused().isEmpty() ? 0 : 1, row.boards(), row.boardsAtLeast(), row.packs(), row.findings(),
        row.narrowest().map(Length::toNanometres).orElse(Long.MAX_VALUE), sha256(row.toLine()));
  }

  /**
   * Adds rows up; a parallel stream will do.
   *
   * @param rows the rows, not null
   * @return their totals, not null
   */
  public static StockTotals of(Stream<StockRow> rows) {
    return rows.map(StockTotals::of).reduce(NONE, StockTotals::plus);
  }

  /**
   * Adds other totals.
   *
   * @param other the totals of other rows, not null
   * @return the totals of both, not null
   */
  public StockTotals plus(StockTotals other) {
    return new StockTotals(rooms + other.rooms, refused + other.refused, boards + other.boards, boardsAtLeast + other.boardsAtLeast,
        packs + other.packs, findings + other.findings, Math.min(narrowestNanometres, other.narrowestNanometres),
        digest.add(other.digest).mod(BigInteger.ONE.shiftLeft(DIGEST_BITS)));
  }

  /**
   * Returns the narrowest row of all.
   *
   * @return its width, empty if there is no row; not null
   */
  public Optional<Length> narrowest() {
    return narrowestNanometres == Long.MAX_VALUE ? Optional.empty() : Optional.of(Length.ofNanometres(narrowestNanometres));
  }

  /**
   * Returns the totals as lines to read.
   *
   * @return lines that end with {@code \n}, not null
   */
  public String toText() {
    return "rooms " + rooms + ", of which " + refused + " cannot be planned\n"
        + "boards " + boards + ", at least " + boardsAtLeast + "\n"
        + "packs " + packs + "\n"
        + "findings " + findings + "\n"
        + "narrowest row " + narrowest().map(Length::toString).orElse("none") + "\n"
        + "digest " + String.format(Locale.ROOT, "%064x", digest) + "\n";
  }

  private static BigInteger sha256(String line) {
    try {
      return new BigInteger(1, MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
