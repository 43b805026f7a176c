package floorcalc.flatness;

import floorcalc.measure.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The measured slab of {@code e1155_slac_elevations.csv}, and rows of the other files of reference figures. */
final class Slac {
  private Slac() {}

  static Profile line(int line) {
    List<ProfilePoint> readings = new ArrayList<>();
    rows("e1155_slac_elevations.csv").filter(row -> row[0].equals(Integer.toString(line))).forEach(row -> readings.add(
        new ProfilePoint(Length.ofMillimetres(row[2]), Length.ofMillimetres(row[3]))));
    return Profile.of(readings);
  }

  /** The rows of a file without comments and header; none of these files quotes a comma. */
  static Stream<String[]> rows(String file) {
    try (InputStream in = Slac.class.getResourceAsStream("/reference/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).skip(1)
          .map(line -> line.split(",", -1)).toList().stream();
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
