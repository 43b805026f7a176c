package floorcalc.examples.readings;

import floorcalc.examples.job.Shown;
import floorcalc.examples.job.Tape;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.levels.LevelFault;
import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads heights from a table (CSV, RFC 4180, UTF-8). The header is required and names each column with its unit, in any order:
 * {@code distance (m),height (mm)} for a line, {@code x (m),y (m),z (mm)} for a room. Units are {@code mm}, {@code cm}, {@code m},
 * {@code in}, {@code ft}, and {@code tape} where each value has its own. Heights count upwards.
 * <p>
 * Columns are separated by commas or by semicolons. The decimal sign is a point; between semicolons it may be a comma if no value of
 * the file has a point and not every comma could group thousands. Blank lines and lines that begin with {@code #} are left
 * out. At most 10 000 readings and 5 MB. Values are exact.
 */
public final class ReadingFile {
  private static final Length LINE_FARTHEST = Length.ofMillimetres(10_000_000);

  private final LineMistakes mistakes = new LineMistakes();
  private final List<Reading> readings = new ArrayList<>();
  private boolean imperial;

  /** The values of a line. */
  private record Reading(int line, List<Length> values) {}

  private ReadingFile() {}

  /**
   * Heights along a line.
   *
   * @param profile the line, not null
   * @param tape in which units it was measured, not null
   */
  public record Line(HeightProfile profile, Tape tape) {}

  /**
   * Heights at places of a room.
   *
   * @param levels the levels, not null
   * @param tape in which units they were measured, not null
   */
  public record Room(Levels levels, Tape tape) {}

  /**
   * Reads heights along a line.
   *
   * @param bytes the file, not null
   * @return the line, not null
   * @throws BadReadingsException if anything is wrong with the file
   */
  public static Line line(byte[] bytes) {
    ReadingFile file = new ReadingFile();
    file.read(bytes, List.of("distance", "height"), LINE_FARTHEST, "; x, y and z are levels of a room: see explain levels");
    file.checkOrder();
    if (file.readings.size() < 2 && file.mistakes.none()) {
      file.mistakes.add("there must be at least 2 readings, better many more, but there "
          + (file.readings.isEmpty() ? "is none" : "is 1"));
    }
    file.mistakes.check();
    return new Line(HeightProfile.of(file.readings.stream().map(r -> new ProfilePoint(r.values().get(0), r.values().get(1))).toList()),
        file.tape());
  }

  /**
   * Reads heights at places of a room.
   *
   * @param bytes the file, not null
   * @return the levels, not null
   * @throws BadReadingsException if anything is wrong with the file
   */
  public static Room room(byte[] bytes) {
    ReadingFile file = new ReadingFile();
    file.read(bytes, List.of("x", "y", "z"), Levels.FURTHEST, "; distance and height are a line: see explain flatness");
    List<SpotLevel> spots = file.readings.stream()
        .map(r -> SpotLevel.of(r.values().get(0), r.values().get(1), r.values().get(2))).toList();
    boolean whole = file.mistakes.none();
    for (LevelFault fault : Levels.faultsOf(spots)) {
      if (fault.kind() == LevelFault.Kind.READ_TWICE) {
        file.readTwice(fault.readings().get(0) - 1, fault.readings().get(1) - 1);
      } else if (whole) {
        file.mistakes.add(fault.message());
      }
    }
    file.mistakes.check();
    return new Room(Levels.of(spots), file.tape());
  }

  private Tape tape() {
    return imperial ? Tape.FEET_AND_INCHES : Tape.METRIC;
  }

  private void read(byte[] bytes, List<String> wanted, Length farthest, String otherwise) {
    ReadingTable table = ReadingTable.read(bytes, wanted, otherwise, mistakes);
    DecimalSign sign = DecimalSign.of(table);
    for (ReadingTable.Row row : table.rows) {
      List<Length> values = new ArrayList<>();
      for (int i = 0; i < wanted.size(); i++) {
        value(row, table.columns.get(i), row.cells().get(i), sign, farthest).ifPresent(values::add);
      }
      if (values.size() == wanted.size()) {
        readings.add(new Reading(row.line(), values));
      }
    }
  }

  private Optional<Length> value(ReadingTable.Row row, ReadingTable.Column column, String text, DecimalSign sign, Length farthest) {
    String name = column.toString();
    if (text.isEmpty()) {
      mistakes.add(row.line(), name, "the value is missing; must be " + column.unit().wanted());
      return Optional.empty();
    }
    String found = "found [" + Shown.plain(text, ReadingTable.SHOWN) + "]; must be ";
    Optional<String> comma = sign.fault(text);
    if (comma.isPresent()) {
      mistakes.add(row.line(), name, found + column.unit().wanted() + ": " + comma.get());
      return Optional.empty();
    }
    try {
      String pointed = DecimalSign.pointed(text);
      Length length = column.unit().read(pointed);
      imperial |= column.unit().isImperial(pointed);
      if (length.abs().compareTo(farthest) > 0) {
        mistakes.add(row.line(), name, found + "at most " + farthest + " from zero; is the unit right?");
        return Optional.empty();
      }
      return Optional.of(length);
    } catch (IllegalArgumentException fault) {
      mistakes.add(row.line(), name, found + column.unit().wanted() + ": " + fault.getMessage());
      return Optional.empty();
    }
  }

  private void readTwice(int first, int second) {
    Reading before = readings.get(first);
    Reading after = readings.get(second);
    mistakes.add(after.line(), "", "x = " + after.values().get(0) + ", y = " + after.values().get(1) + " was read in line "
        + before.line() + " already; heights there are " + before.values().get(2) + " and " + after.values().get(2)
        + ": keep the one that is right");
  }

  /** Distances rise from line to line, and none comes twice. */
  private void checkOrder() {
    Map<Length, Reading> seen = new HashMap<>();
    for (int i = 0; i < readings.size(); i++) {
      Reading reading = readings.get(i);
      Length place = reading.values().get(0);
      Reading same = seen.putIfAbsent(place, reading);
      if (same != null) {
        mistakes.add(reading.line(), "distance", place + " was read in line " + same.line() + " already; heights there are "
            + same.values().get(1) + " and " + reading.values().get(1) + ": keep the one that is right");
      } else if (i > 0 && place.compareTo(readings.get(i - 1).values().get(0)) < 0) {
        mistakes.add(reading.line(), "distance", place + " lies before " + readings.get(i - 1).values().get(0) + " of line "
            + readings.get(i - 1).line() + "; list the readings in the order of the line");
      }
    }
  }
}
