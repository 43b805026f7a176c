package floorcalc.reference.data;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** One row of a table of published figures. */
public final class DataRow {
  private final String place;
  private final Map<String, String> cells;

  DataRow(String place, Map<String, String> cells) {
    this.place = place;
    this.cells = cells;
  }

  /**
   * Returns where the row stands.
   *
   * @return the file's name and the number of the row, counted from 1 below the column names, not null
   */
  public String place() {
    return place;
  }

  /**
   * Returns a cell as it is printed.
   *
   * @param column the column's name, one of the file's, not null
   * @return the cell without spaces round it, empty if there is nothing in it, not null
   * @throws IllegalArgumentException if the file has no such column
   */
  public String text(String column) {
    String cell = cells.get(Objects.requireNonNull(column, "column"));
    if (cell == null) {
      throw new IllegalArgumentException(place + " has no column " + column + "; it has " + cells.keySet());
    }
    return cell;
  }

  /**
   * Returns whether there is nothing in a cell.
   *
   * @param column the column's name, one of the file's, not null
   * @return true if the cell is empty
   */
  public boolean isEmpty(String column) {
    return text(column).isEmpty();
  }

  /**
   * Returns a cell as a number, with the digits that are printed.
   *
   * @param column the column's name, one of the file's, not null
   * @return the number, not null
   * @throws IllegalArgumentException if the cell is no number
   */
  public BigDecimal number(String column) {
    String text = text(column);
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException noNumber) {
      throw new IllegalArgumentException(place + ", column " + column + ": " + text + " is no number", noNumber);
    }
  }

  /**
   * Returns a cell as a whole number.
   *
   * @param column the column's name, one of the file's, not null
   * @return the number
   * @throws IllegalArgumentException if the cell is no whole number
   */
  public int count(String column) {
    try {
      return number(column).intValueExact();
    } catch (ArithmeticException broken) {
      throw new IllegalArgumentException(place + ", column " + column + ": " + text(column) + " is no whole number", broken);
    }
  }

  /**
   * Returns the names of the columns, in order.
   *
   * @return an unmodifiable set, not null
   */
  public Set<String> columns() {
    return cells.keySet();
  }

  /** {@inheritDoc} */
  @Override
  public String toString() {
    return place + " " + cells;
  }
}
