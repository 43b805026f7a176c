package floorcalc.reference.data;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of figures with the lines that name its source. Those stand on top, {@code # key: text}, and a key may stand more than once:
 * {@code title}, {@code publisher}, {@code year}, {@code edition}, {@code locator} (table, clause, page), {@code known} (how the figures were
 * read, and when; or that they are from memory), {@code precision} (how the figures are printed), {@code errata}, {@code licence},
 * {@code note}. Below them is a table as CSV, or lines of some other form.
 */
public final class DataFile {
  /** The keys that every file has. */
  public static final List<String> REQUIRED = List.of("title", "publisher", "year", "locator", "known", "precision");
  /** All keys. */
  public static final List<String> KEYS = List.of("title", "publisher", "year", "edition", "locator", "known", "precision", "errata",
      "licence", "note");
  private static final String FOLDER = "/reference/";
  private static final Pattern HEAD = Pattern.compile("# ?(\\w+): (.+)");

  private final String name;
  private final Map<String, List<String>> head;
  private final List<String> lines;

  private DataFile(String name, Map<String, List<String>> head, List<String> lines) {
    this.name = name;
    this.head = head;
    this.lines = lines;
  }

  /**
   * Reads a file of the suite.
   *
   * @param name the file's name with its ending, not null
   * @return the file, not null
   * @throws IllegalArgumentException if there is no such file, or a line on top is not {@code # key: text} with one of the keys
   */
  public static DataFile read(String name) {
    InputStream found = DataFile.class.getResourceAsStream(FOLDER + Objects.requireNonNull(name, "name"));
    if (found == null) {
      throw new IllegalArgumentException("the suite has no file " + name);
    }
    try (BufferedReader in = new BufferedReader(new InputStreamReader(found, StandardCharsets.UTF_8))) {
      return of(name, in.lines().toList());
    } catch (IOException broken) {
      throw new UncheckedIOException(name, broken);
    }
  }

  /**
   * Reads a file from its lines.
   *
   * @param name the file's name, for messages, not null
   * @param text all lines, not null
   * @return the file, not null
   * @throws IllegalArgumentException if a line on top is not {@code # key: text} with one of the keys
   */
  public static DataFile of(String name, List<String> text) {
    Map<String, List<String>> head = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (String line : text) {
      if (!line.startsWith("#")) {
        lines.add(line);
        continue;
      }
      Matcher parts = HEAD.matcher(line);
      if (!parts.matches() || !KEYS.contains(parts.group(1))) {
        throw new IllegalArgumentException(name + ": \"" + line + "\" must be \"# key: text\" with one of the keys " + KEYS);
      }
      head.computeIfAbsent(parts.group(1), key -> new ArrayList<>()).add(parts.group(2).strip());
    }
    return new DataFile(name, head, List.copyOf(lines));
  }

  /**
   * Returns the file's name.
   *
   * @return the name with its ending, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns what stands on top under a key.
   *
   * @param key one of {@link #KEYS}, not null
   * @return the texts of all lines with this key, with a space between; empty if there is none; not null
   */
  public String head(String key) {
    return String.join(" ", head.getOrDefault(Objects.requireNonNull(key, "key"), List.of()));
  }

  /**
   * Returns what stands below the lines on top.
   *
   * @return the lines, without empty ones, not null
   */
  public List<String> lines() {
    return lines.stream().filter(line -> !line.isBlank()).toList();
  }

  /**
   * Reads the table.
   *
   * @return its rows in order, not null
   * @throws IllegalArgumentException if a row has not as many cells as there are columns
   */
  public List<DataRow> rows() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).setTrim(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(lines.stream().collect(Collectors.joining("\n", "", "\n"))), format)) {
      List<DataRow> rows = new ArrayList<>();
      for (CSVRecord cells : parser) {
        String place = name + " row " + cells.getRecordNumber();
        if (!cells.isConsistent()) {
          throw new IllegalArgumentException(place + " has " + cells.size() + " cells; there are " + parser.getHeaderNames().size() + " columns");
        }
        Map<String, String> row = new LinkedHashMap<>();
        parser.getHeaderNames().forEach(column -> row.put(column, cells.get(column)));
        rows.add(new DataRow(place, Collections.unmodifiableMap(row)));
      }
      return List.copyOf(rows);
    } catch (IOException broken) {
      throw new UncheckedIOException(name, broken);
    }
  }
}
