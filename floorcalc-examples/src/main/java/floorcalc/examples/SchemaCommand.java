package floorcalc.examples;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the schema of a format, so that a program need not find the documentation. */
@Command(name = "schema", mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema (draft 2020-12) of the jobs that are read, of the plans that are written, or of what is"
        + " answered to a job that gets no plan.")
final class SchemaCommand implements Callable<Integer> {
  /** The formats, by the names of their schemas. */
  static final List<String> FORMATS = List.of("job", "plan", "refusal");

  private final Console console;

  @Parameters(paramLabel = "FORMAT", description = "job, plan or refusal.")
  private String format;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (!FORMATS.contains(format)) {
      throw new Refusal("[" + format.replaceAll("\\p{Cc}", "?") + "]: must be job, plan or refusal");
    }
    byte[] schema = schema();
    console.out().write(schema, 0, schema.length);
    console.out().flush();
    return Main.OK;
  }

  private byte[] schema() {
    try (InputStream resource = SchemaCommand.class.getResourceAsStream("schema/" + format + ".schema.json")) {
      return resource.readAllBytes();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
