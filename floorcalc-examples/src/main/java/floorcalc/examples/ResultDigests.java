package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.Tape;
import floorcalc.examples.stock.StockRoom;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.plan.UnsoundJobException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * Digests of all that the library and the runner make of many jobs: plan files, sheets, drawings, lists, reports and refusals. The
 * script {@code same-everywhere} beside the module's {@code pom.xml} runs this on several versions of Java, in other languages, time zones and character
 * sets, and on several threads, and compares.
 */
public final class ResultDigests {
  private static final CSVFormat ROOMS = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private ResultDigests() {
  }

  /**
   * Prints a line for each part that is named: the part, a space, and its SHA-256. The parts: {@code jobs=FOLDER}, the job files in a
   * folder; {@code reports=FOLDER}, what {@code site} and {@code survey} say of them; {@code rooms=FILE}, outlines in metres in a column
   * {@code wkt_m}; {@code stock=FROM-TO}, rooms of the invented housing stock, the last not among them.
   *
   * @param args the parts, not null
   * @throws IOException if a file cannot be read
   */
  public static void main(String[] args) throws IOException {
    run(List.of(args), new PrintStream(System.out, true, StandardCharsets.UTF_8));
  }

  static void run(List<String> parts, PrintStream out) throws IOException {
    for (String part : parts) {
      int equals = part.indexOf('=');
      String value = part.substring(equals + 1);
      Stream<byte[]> digests = switch (part.substring(0, equals)) {
        case "jobs" -> jobs(Path.of(value)).parallelStream().map(job -> ofJob(bytes(job)));
        case "reports" -> jobs(Path.of(value)).parallelStream().map(job -> digest(reports(job)));
        case "rooms" -> rooms(bytes(Path.of(value))).parallelStream().map(ResultDigests::ofPlan);
        default -> IntStream.range(Integer.parseInt(value.split("-")[0]), Integer.parseInt(value.split("-")[1])).parallel()
            .mapToObj(StockRoom::of).map(room -> ofPlan(new JobFile(room.job(), tape(room.number()))));
      };
      MessageDigest all = sha256();
      digests.toList().forEach(all::update);
      out.print(part + " " + HexFormat.of().formatHex(all.digest()) + "\n");
    }
  }

  private static Tape tape(int number) {
    return number % 3 == 0 ? Tape.FEET_AND_INCHES : Tape.METRIC;
  }

  private static List<Path> jobs(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static List<JobFile> rooms(byte[] csv) {
    BoardGoods boards = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    try (CSVParser rows = ROOMS.parse(new StringReader(new String(csv, StandardCharsets.UTF_8)))) {
      return rows.stream().map(row -> new JobFile(FloorJob.of(row.get(0), boards)
          .room(Room.of(row.get(0), Wkt.parse(row.get("wkt_m"), Wkt.Unit.METRES))).build(), Tape.METRIC)).toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** What is said of the site and of the measurements of a job. */
  private static Map<String, byte[]> reports(Path job) {
    Map<String, byte[]> said = new TreeMap<>();
    for (String command : List.of("site", "survey")) {
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      PrintStream out = new PrintStream(text, true, StandardCharsets.UTF_8);
      // What takes long says so beside the report, and what takes long is not the same everywhere.
      PrintStream beside = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
      Main.run(new String[] {command, job.toString()}, new ByteArrayInputStream(new byte[0]), out, beside);
      said.put(command, text.toByteArray());
    }
    return said;
  }

  private static byte[] ofJob(byte[] utf8) {
    try {
      return ofPlan(JobReader.read(utf8));
    } catch (BadJobException bad) {
      return refusal(bad);
    }
  }

  private static byte[] ofPlan(JobFile file) {
    try {
      return digest(Results.of(Path.of("of"), file, FloorPlanner.plan(file.job())).files());
    } catch (UnsoundJobException unsound) {
      return refusal(unsound);
    }
  }

  private static byte[] refusal(RuntimeException fault) {
    return digest(Map.of("refusal", fault.getMessage().getBytes(StandardCharsets.UTF_8)));
  }

  /** A digest of files, each with its name and how long it is. */
  private static byte[] digest(Map<String, byte[]> files) {
    MessageDigest digest = sha256();
    new TreeMap<>(files).forEach((name, bytes) -> {
      digest.update((name + " " + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
      digest.update(bytes);
    });
    return digest.digest();
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
