package floorcalc.examples;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The pages, and the published schemas read from {@code docs}. */
public final class Docs {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Schema JOB = schema("job.schema.json");
  private static final Schema PLAN = schema("plan.schema.json");
  private static final Schema REFUSAL = schema("refusal.schema.json");

  private Docs() {
  }

  public static List<String> faultsOfJob(byte[] json) {
    return faults(JOB, json);
  }

  public static List<String> faultsOfPlan(byte[] json) {
    return faults(PLAN, json);
  }

  public static List<String> faultsOfRefusal(byte[] json) {
    return faults(REFUSAL, json);
  }

  public static String page(String name) throws IOException {
    return Files.readString(DOCS.resolve(name), StandardCharsets.UTF_8);
  }

  /** Every page for readers: those at the top of the project and all below {@code docs}, in order. */
  public static List<Path> pages() throws IOException {
    Path home = DOCS.resolve("..").toAbsolutePath().normalize();
    try (Stream<Path> top = Files.list(home); Stream<Path> below = Files.walk(home.resolve("docs"))) {
      return Stream.concat(top, below).filter(file -> file.toString().endsWith(".md")).sorted().toList();
    }
  }

  public static String text(Path page) throws IOException {
    return Files.readString(page, StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  private static List<String> faults(Schema schema, byte[] json) {
    return schema.validate(new String(json, StandardCharsets.UTF_8), InputFormat.JSON).stream()
        .map(Error::toString).toList();
  }

  private static Schema schema(String name) {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(page(name), InputFormat.JSON);
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }
}
