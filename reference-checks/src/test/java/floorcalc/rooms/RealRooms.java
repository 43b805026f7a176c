package floorcalc.rooms;

import floorcalc.outline.Wkt;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the outlines: those that came with the project, and those that may lie beside it.
 * <p>
 * Of two corridors the printed inner area for 12 mm is one or two units of the last digit too large: their walls turn by less
 * than a degree at some corners, and the program that computed the figures leaves out corners nearer to each other than a
 * twentieth of the gap. A − P·d + d²·Σ cot(θ/2), worked to 50 digits from the printed corners, stands for them.
 */
final class RealRooms {
  /** Names the folder in which the rooms lie that are no part of the project. */
  static final String FOLDER = "floorcalc.reference.geometry";

  private static final Map<String, Double> BY_FORMULA =
      Map.of("OSM_94551317", 46.124048334, "OSM_94551428", 81.083142328);
  /**
   * A corridor whose widest circle is printed too narrow, 0.8936 m: it is 1.78806 m wide between parallels, and no circle is wider than that, so
   * one that touches both walls is the widest.
   */
  private static final Map<String, Double> BY_WIDTH = Map.of("OSM_94551457", 0.89403);
  private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader()
      .setSkipHeaderRecord(true).get();

  private RealRooms() {}

  /** The rooms under CC BY, which are part of the project: see the file ATTRIBUTION beside them. */
  static List<RealRoom> withTheProject() {
    return join(read(resource("rooms_cc_by.csv")), read(resource("rooms_expected.csv")), "rooms_cc_by.csv");
  }

  /** The rooms under ODbL, if their folder is found. */
  static List<RealRoom> besideTheProject() {
    return folder().map(folder -> join(read(file(folder.resolve("rooms_osm_odbl.csv"))),
        read(file(folder.resolve("rooms_expected.csv"))), "rooms_osm_odbl.csv")).orElse(List.of());
  }

  /** The folder that was named; else {@code shared/reference/geometry} beside this module or a folder that holds it. */
  static Optional<Path> folder() {
    String named = System.getProperty(FOLDER);
    if (named != null) {
      return Optional.of(Path.of(named));
    }
    Path from = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
    for (Path at = from; at != null; at = at.getParent()) {
      Path folder = at.resolve("shared").resolve("reference").resolve("geometry");
      if (Files.isRegularFile(folder.resolve("rooms_osm_odbl.csv"))) {
        return Optional.of(folder);
      }
    }
    return Optional.empty();
  }

  private static List<RealRoom> join(List<CSVRecord> outlines, List<CSVRecord> expected, String file) {
    Map<String, CSVRecord> byId = outlines.stream().collect(Collectors.toMap(row -> row.get("id"), row -> row));
    List<RealRoom> rooms = new ArrayList<>();
    for (CSVRecord row : expected) {
      if (row.get("file").equals(file)) {
        String id = row.get("id");
        rooms.add(new RealRoom(id, Wkt.parse(byId.get(id).get("wkt_m"), Wkt.Unit.METRES),
            Integer.parseInt(row.get("n_vertices")), number(row, "area_m2"), number(row, "perimeter_m"),
            List.of(number(row, "inner_area_gap_8mm_mitre"),
                BY_FORMULA.getOrDefault(id, number(row, "inner_area_gap_12mm_mitre"))),
            number(row, "inner_area_gap_12mm_mitre"), BY_WIDTH.getOrDefault(id, number(row, "inscribed_radius_m")), number(row, "min_width_m"),
            Boolean.parseBoolean(row.get("convex"))));
      }
    }
    return rooms;
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static List<CSVRecord> read(InputStream in) {
    try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return CSV.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream resource(String name) {
    return RealRooms.class.getResourceAsStream("/reference/" + name);
  }

  private static InputStream file(Path path) {
    try {
      return Files.newInputStream(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
