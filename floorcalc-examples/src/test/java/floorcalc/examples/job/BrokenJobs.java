package floorcalc.examples.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The broken jobs of the test resources and what is said about each. */
public final class BrokenJobs {
  /** Where they are. */
  public static final Path FOLDER = Path.of("src", "test", "resources", "broken-jobs");

  private BrokenJobs() {
  }

  /** The messages by job, both in the order of the list. */
  public static Map<String, List<String>> messages() throws IOException {
    Map<String, List<String>> messages = new LinkedHashMap<>();
    List<String> current = new ArrayList<>();
    for (String line : Files.readString(FOLDER.resolve("messages.txt"), StandardCharsets.UTF_8).split("\n")) {
      if (line.startsWith("== ")) {
        current = new ArrayList<>();
        messages.put(line.substring(3), current);
      } else if (!line.startsWith("#")) {
        current.add(line);
      }
    }
    return messages;
  }

  /** The bytes of a broken job. */
  public static byte[] read(String name) throws IOException {
    return Files.readAllBytes(FOLDER.resolve(name + ".json"));
  }
}
