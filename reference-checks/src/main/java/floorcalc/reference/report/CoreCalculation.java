package floorcalc.reference.report;

import floorcalc.reference.data.DataFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * A public calculation of the core.
 *
 * @param type the full name of its class, not null
 * @param worksOut what it works out, a few words, not null
 * @param uncheckedBecause why no figure from outside checks it; empty if one does, not null
 */
public record CoreCalculation(String type, String worksOut, String uncheckedBecause) {
  private static final String LIST = "/public-calculations.csv";

  /** Checks that nothing is null. */
  public CoreCalculation {
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(worksOut, "worksOut");
    Objects.requireNonNull(uncheckedBecause, "uncheckedBecause");
  }

  /**
   * Reads the list of all public calculations. A test holds it against the core.
   *
   * @return the calculations in the order of the list, not null
   */
  public static List<CoreCalculation> all() {
    try (BufferedReader in = new BufferedReader(new InputStreamReader(Objects.requireNonNull(CoreCalculation.class.getResourceAsStream(LIST), LIST),
        StandardCharsets.UTF_8))) {
      return DataFile.of(LIST, in.lines().toList()).rows().stream().map(row -> new CoreCalculation("floorcalc." + row.text("class"),
          row.text("works_out"), row.text("unchecked_because"))).toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(LIST, broken);
    }
  }

  /**
   * Returns the class's name without {@code floorcalc.}.
   *
   * @return package and name, not null
   */
  public String shortName() {
    return type.substring(type.indexOf('.') + 1);
  }
}
