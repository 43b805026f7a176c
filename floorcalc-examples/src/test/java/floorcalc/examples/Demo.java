package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.plan.FloorPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The demo jobs, each planned once for all tests. */
public final class Demo {
  /** Where they are. */
  public static final Path FOLDER = Path.of("demo");
  /** A whole flat in one frame: an L with a column and a hearth, a hall with four doors, a surveyed bedroom, a kitchen with an island. */
  public static final String FLAT = "gullhaven-flat";
  /** Rooms in millimetres: one out of square, one L-shaped. */
  public static final String HOUSE = "gullhaven-house";
  /** A room in feet and inches. */
  public static final String LOFT = "gullhaven-loft";

  /** A room in feet and inches by its measurements: an L with a chimney breast and a bay. */
  public static final String PARLOUR = "gullhaven-parlour";

  private static final Map<String, FloorPlan> PLANS = new HashMap<>();

  private Demo() {
  }

  public static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".json"))
          .map(name -> name.replace(".json", "")).sorted().toList();
    }
  }

  public static byte[] bytes(String name) throws IOException {
    return Files.readAllBytes(FOLDER.resolve(name + ".json"));
  }

  public static JobFile job(String name) throws IOException {
    return JobReader.read(bytes(name));
  }

  public static synchronized FloorPlan plan(String name) throws IOException {
    if (!PLANS.containsKey(name)) {
      PLANS.put(name, FloorPlanner.plan(job(name).job()));
    }
    return PLANS.get(name);
  }
}
