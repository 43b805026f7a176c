package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Designed and real rooms, split with boards three ways; sources and licences stand at the head of {@code rooms_cc_by.csv}. */
@Tag("reference")
class RealRoomsSplitTest {
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"));
  private static final Pattern ROW = Pattern.compile("([^,]+),.*?(POLYGON \\(\\([^\"]*\\)\\)).*");

  private static List<DynamicTest> tests(InputStream csv) {
    List<DynamicTest> tests = new ArrayList<>();
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(csv, StandardCharsets.UTF_8))) {
      lines.lines().map(ROW::matcher).filter(Matcher::matches).forEach(row -> {
        for (double degrees : new double[] {0, 90, 30}) {
          tests.add(DynamicTest.dynamicTest(row.group(1) + " at " + degrees, () ->
              assertSplit(Wkt.parse(row.group(2), Wkt.Unit.METRES, java.math.RoundingMode.HALF_EVEN), degrees)));
        }
      });
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return tests;
  }

  @TestFactory
  List<DynamicTest> roomsWithTheProject() {
    List<DynamicTest> tests = tests(RealRoomsSplitTest.class.getResourceAsStream("/reference/rooms_cc_by.csv"));
    assertThat(tests).hasSize(63);
    return tests;
  }

  @TestFactory
  List<DynamicTest> roomsBesideTheProject() throws IOException {
    Path rooms = Path.of(System.getProperty("floorcalc.reference.geometry", "../../shared/reference/geometry")).resolve(
        "rooms_osm_odbl.csv");
    return Files.exists(rooms) ? tests(Files.newInputStream(rooms)) : List.of();
  }

  private static void assertSplit(Outline room, double degrees) {
    Direction boards = Direction.fromDegrees(degrees);
    BaySplit split = BaySplit.of(room, boards, List.of(), RULES).value();
    assertThat(split.isProvenLeast()).isTrue();
    Area sum = split.parts().stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    assertThat(sum.minus(room.area()).abs().toSquareMetres()).isLessThan(1e-6);
    for (Outline part : split.parts()) {
      Outline turned = boards.toFrame(part);
      assertThat(turned.extent().width().toMillimetres()).isLessThan(12_020.002);
      assertThat(turned.extent().height().toMillimetres()).isLessThan(8_020.002);
      assertThat(BruteForce.deepestRecess(BruteForce.polygon(part))).isLessThanOrEqualTo(500.002);
    }
  }

  /** Forty corners, eighteen of them inner ones, made at random on a stretched grid; the length is a regression value. */
  @Test
  void fortyCornersAreSplitExactly() {
    Outline room = Wkt.parse(FORTY, Wkt.Unit.METRES);
    assertThat(room.size()).isEqualTo(40);
    BaySplit split = BaySplit.of(room, Direction.ALONG_X, List.of(), RULES).value();
    assertThat(split.isProvenLeast()).isTrue();
    assertThat(split.length()).isEqualTo(Length.ofMillimetres(18_567));
  }

  private static final String FORTY = "POLYGON ((0 6.703, 1.498 6.703, 1.498 5.457, 2.101 5.457, 2.101 4.053, 1.498 4.053, 1.498 2.924, "
      + "2.101 2.924, 2.101 0.623, 2.761 0.623, 2.761 1.432, 4.441 1.432, 4.441 2.924, 5.291 2.924, 5.291 1.432, "
      + "6.501 1.432, 6.501 0.623, 7.382 0.623, 7.382 2.924, 8.834 2.924, 8.834 5.457, 7.382 5.457, 7.382 4.053, "
      + "6.501 4.053, 6.501 6.703, 8.834 6.703, 8.834 7.337, 7.382 7.337, 7.382 8.62, 6.501 8.62, 6.501 7.337, "
      + "5.291 7.337, 5.291 8.62, 3.381 8.62, 3.381 9.713, 2.761 9.713, 2.761 8.62, 1.498 8.62, 1.498 9.713, "
      + "0 9.713, 0 6.703))";
}
