package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/**
 * Outlines of designed and real rooms against areas, perimeters and inner areas computed with another library; sources
 * and licences stand at the head of {@code reference/rooms_cc_by.csv}. All are printed to six decimals, which is the
 * tolerance: half a unit of the sixth.
 * <p>
 * Fifteen more rooms, whose licence keeps them out of this project, are tested where they lie in a folder beside it, or
 * in the folder that the system property {@code floorcalc.reference.geometry} names.
 */
@Tag("reference")
class RealRoomsReferenceTest {
  private static final double HALF_OF_THE_SIXTH = 0.5e-6;
  /**
   * Two corridors, with walls that turn by less than a degree at reflex corners, are printed too large for a gap of 12 mm:
   * the other library leaves out corners nearer to each other than a twentieth of the gap. A − P·d + d²·Σ cot(θ/2), worked
   * to 50 digits from the printed corners, gives 46.124 048 334 and 81.083 142 328 for 46.124 049 and 81.083 143.
   */
  private static final Map<String, Double> BY_FORMULA =
      Map.of("OSM_94551317", 46.124048334, "OSM_94551428", 81.083142328);

  @TestFactory
  List<DynamicTest> roomsWithTheProject() {
    List<String> rooms = lines(RealRoomsReferenceTest.class.getResourceAsStream("/reference/rooms_cc_by.csv"));
    List<String> expected = lines(RealRoomsReferenceTest.class.getResourceAsStream("/reference/rooms_expected.csv"));
    assertThat(expected).hasSize(21);
    return tests(rooms, expected);
  }

  @TestFactory
  List<DynamicTest> roomsBesideTheProject() throws IOException {
    Path folder = Path.of(System.getProperty("floorcalc.reference.geometry", "../../shared/reference/geometry"));
    Path rooms = folder.resolve("rooms_osm_odbl.csv");
    Path expected = folder.resolve("rooms_expected.csv");
    if (!Files.exists(rooms) || !Files.exists(expected)) {
      return List.of();
    }
    List<String> rows = lines(Files.newInputStream(expected)).stream().filter(row -> row.contains("rooms_osm")).toList();
    assertThat(rows).hasSize(15);
    return tests(lines(Files.newInputStream(rooms)), rows);
  }

  private static List<DynamicTest> tests(List<String> rooms, List<String> expected) {
    Map<String, Outline> outlines = new LinkedHashMap<>();
    for (String row : rooms) {
      String text = row.substring(row.indexOf('"') + 1, row.lastIndexOf('"'));
      assertThat(OutlineCheck.faultsOf(Wkt.parseRings(text, Wkt.Unit.METRES).get(0), List.of())).as(row).isEmpty();
      outlines.put(row.substring(0, row.indexOf(',')), Wkt.parse(text, Wkt.Unit.METRES));
    }
    return expected.stream().map(row -> row.split(","))
        .map(row -> DynamicTest.dynamicTest(row[0], () -> check(outlines.get(row[0]), row))).toList();
  }

  private static void check(Outline room, String[] row) {
    assertThat(room.size()).isEqualTo(Integer.parseInt(row[2]));
    assertThat(room.area().toSquareMetres()).isCloseTo(Double.parseDouble(row[3]), within(HALF_OF_THE_SIXTH));
    assertThat(room.perimeter().toMillimetres() / 1000)
        .isCloseTo(Double.parseDouble(row[4]), within(HALF_OF_THE_SIXTH));
    assertThat(inner(room, 8)).isCloseTo(Double.parseDouble(row[5]), within(HALF_OF_THE_SIXTH));
    if (BY_FORMULA.containsKey(row[0])) {
      assertThat(inner(room, 12)).isCloseTo(BY_FORMULA.get(row[0]), within(room.perimeter().toMillimetres() * 1e-12));
      assertThat(Double.parseDouble(row[6])).isCloseTo(BY_FORMULA.get(row[0]), within(2 * HALF_OF_THE_SIXTH));
    } else {
      assertThat(inner(room, 12)).isCloseTo(Double.parseDouble(row[6]), within(HALF_OF_THE_SIXTH));
    }
    boolean convex = true;
    for (int i = 0; i < room.shell().size(); i++) {
      convex &= room.shell().angleDegrees(i) <= 180;
    }
    if (Boolean.parseBoolean(row[9])) {
      assertThat(convex).isTrue();
    }
  }

  private static double inner(Outline room, long gap) {
    ExpansionGap inset = ExpansionGap.inset(room, Length.ofMillimetres(gap)).value();
    assertThat(inset.laid()).hasSize(1);
    return inset.laidArea().toSquareMetres();
  }

  /** Returns the rows of a file without remarks and without its header. */
  private static List<String> lines(InputStream file) {
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.startsWith("#")).skip(1).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
