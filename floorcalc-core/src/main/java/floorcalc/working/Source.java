package floorcalc.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * Where a rule, a limit or a formula comes from.
 *
 * @param title the work's title, or a few words on the practice; not null, may be empty for a definition
 * @param publisher who issued it, not null, empty if nobody did
 * @param year the year of the edition, 0 if unknown or not applicable
 * @param locator clause, table or page, not null, may be empty
 * @param standing how sure it is, not null
 * @since 0.1
 */
public record Source(String title, String publisher, int year, String locator, Standing standing)
    implements Serializable {

  /** Follows from a definition or from arithmetic alone. */
  public static final Source DEFINITION = new Source("", "", 0, "", Standing.DEFINITION);

  /** Done by many in the trade; no published source was found. */
  public static final Source COMMON_PRACTICE = new Source("", "", 0, "", Standing.COMMON_PRACTICE);

  /** Given by the person who asks. */
  public static final Source GIVEN = new Source("", "", 0, "", Standing.GIVEN);

  /** Checks that no part is null and that the year is not negative. */
  public Source {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(publisher, "publisher");
    Objects.requireNonNull(locator, "locator");
    Objects.requireNonNull(standing, "standing");
    if (year < 0) {
      throw new IllegalArgumentException("year must not be negative, but was " + year);
    }
  }

  /**
   * Returns a source that was read: a standard, a maker's instructions, a book.
   *
   * @param title what it is called, not null
   * @param publisher who published it, not null, empty if not known
   * @param year the year of publication, 0 if not known
   * @param locator clause, table or page, not null, may be empty
   * @return the source, with {@link Standing#READ}; not null
   */
  public static Source read(String title, String publisher, int year, String locator) {
    return new Source(title, publisher, year, locator, Standing.READ);
  }

  /**
   * Returns one line: title, publisher, year, locator, then how sure it is.
   *
   * @return for example {@code "NF DTU 51.11, AFNOR, 2009, clause 8.2 (read in the source)"}, not null
   */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder(title);
    append(line, publisher);
    append(line, year == 0 ? "" : Integer.toString(year));
    append(line, locator);
    return line.length() == 0 ? standing.words() : line + " (" + standing.words() + ")";
  }

  private static void append(StringBuilder line, String part) {
    if (!part.isEmpty()) {
      line.append(line.length() == 0 ? "" : ", ").append(part);
    }
  }
}
