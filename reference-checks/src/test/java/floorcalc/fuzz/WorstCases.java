package floorcalc.fuzz;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobReader;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.plan.UnsoundJobException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Time and memory of the largest and worst shaped input that the limits allow, one row each: processor time of the thread and bytes that it
 * allocated. What a case needs at once is found by running it alone with less and less heap.
 * <pre>{@code
 * mvn -q -P fuzz package -pl reference-checks -am -DskipTests -Dfuzz.main=floorcalc.fuzz.WorstCases -Dfuzz.target=comb
 * }</pre>
 */
public final class WorstCases {
  private static final long MM = Rings.MM;

  private WorstCases() {}

  /**
   * Runs the cases whose names begin with a word, all of them for {@code ALL}.
   *
   * @param args the word; more is passed over
   */
  public static void main(String[] args) {
    System.out.printf(Locale.ROOT, "Java %s, heap at most %d MB%n", Runtime.version(), Runtime.getRuntime().maxMemory() >> 20);
    com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    cases().forEach((name, worst) -> {
      if (!args[0].equals("ALL") && !name.startsWith(args[0])) {
        return;
      }
      long cpu = threads.getCurrentThreadCpuTime();
      long bytes = threads.getCurrentThreadAllocatedBytes();
      String came;
      try {
        came = worst.get();
      } catch (BadJobException | UnsoundJobException refused) {
        came = "refused: " + refused.getMessage().lines().findFirst().orElse("").replaceAll("^(.{0,160}).*", "$1");
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        came = "FAULT " + fault;
      }
      System.out.printf(Locale.ROOT, "%-28s %8.2f s %8d MB  %s%n", name, (threads.getCurrentThreadCpuTime() - cpu) / 1e9,
          (threads.getCurrentThreadAllocatedBytes() - bytes) >> 20, came);
    });
  }

  private static Map<String, Supplier<String>> cases() {
    Map<String, Supplier<String>> cases = new LinkedHashMap<>();
    for (int teeth : new int[] {30, 60, 120, 240, 480, 499}) {
      cases.put("comb " + teeth, () -> planned(job(Rings.comb(teeth, 200 * MM, 200 * MM, 1500 * MM))));
    }
    for (int teeth : new int[] {1000, 2000, 2499}) {
      cases.put("large comb " + teeth, () -> planned(job(Rings.comb(teeth, 200 * MM, 200 * MM, 1500 * MM))));
    }
    for (int corners : new int[] {250, 500, 1000, 2000, 10_000}) {
      cases.put("round " + corners, () -> planned(job(Rings.round(corners, 4000 * MM))));
      cases.put("saw " + corners, () -> planned(job(saw(corners))));
    }
    for (int legs : new int[] {20, 40, 80}) {
      cases.put("spiral " + legs, () -> planned(job(Rings.spiral(legs, 600 * MM))));
    }
    for (int voids : new int[] {25, 50, 100, 200, 400, 1000}) {
      cases.put("voids " + voids, () -> planned(job(voids)));
    }
    for (int number : new int[] {50, 100, 500}) {
      cases.put("pipes " + number, () -> planned(document(40, room("Hall", 30, 20, "", "\"pipes\": [" + pipes(number) + "]"))));
      cases.put("doors " + number / 5, () -> planned(document(40, room("Hall", 30, 20, "", "\"doors\": [" + doors(number / 5) + "]"))));
    }
    for (int rooms : new int[] {50, 200, 500}) {
      cases.put("rooms " + rooms, () -> planned(document(40, rooms(rooms))));
    }
    for (int walls : new int[] {15, 30, 60}) {
      cases.put("survey walls " + walls, () -> planned(document(40, survey(walls))));
    }
    for (int boards : new int[] {10_000, 100_000, 990_000}) {
      cases.put("boards " + boards, () -> planned(document(40, room("Hall", 200, boards * 0.407 / 200, "", "\"pipes\": []"))));
    }
    for (int readings : new int[] {100, 1000, 10_000}) {
      cases.put("heights grid " + readings, () -> planned(document(40, room("Hall", 100, 100, "", "\"site\": {\"heights\": [" + heights(readings, 1) + "]}"))));
      cases.put("heights scattered " + readings, () -> planned(document(40, room("Hall", 100, 100, "", "\"site\": {\"heights\": ["
          + heights(readings, 7) + "]}"))));
      cases.put("line " + readings, () -> planned(document(40, room("Hall", 100, 100, "", "\"site\": {\"lines\": [{\"name\": \"A\", \"spacing\": 100, \"heights\": ["
          + line(readings) + "]}]}"))));
    }
    cases.put("bytes deep", () -> read("[".repeat(20_000_000)));
    cases.put("bytes zeros", () -> read("[" + "0,".repeat(9_999_998) + "0]"));
    cases.put("bytes 1999998 zeros", () -> read("[" + "0,".repeat(1_999_997) + "0]"));
    cases.put("bytes objects", () -> read("[" + "{},".repeat(1_900_000) + "{}]"));
    cases.put("bytes unknown fields", () -> read("{\"format\": \"floorcalc-job/1\", " + fields(900_000) + "\"x\": 1}"));
    cases.put("bytes one text", () -> read("\"" + "x".repeat(19_999_990) + "\""));
    cases.put("bytes one number", () -> read("1" + "0".repeat(19_999_990)));
    cases.put("bytes one name twice", () -> read("{" + "\"a\":1,".repeat(1_900_000) + "\"a\":1}"));
    cases.put("bytes lines", () -> read("{" + "\n".repeat(19_000_000) + "x}"));
    cases.put("bytes ring of a million", () -> read("{\"format\": \"floorcalc-job/1\", \"rooms\": [{\"outline\": [" + "[0,0],".repeat(600_000) + "[1,1]]}]}"));
    cases.put("bytes long numbers", () -> read("[" + ("1".repeat(900) + ",").repeat(22_000) + "1]"));
    return cases;
  }

  private static String fields(int number) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < number; i++) {
      text.append("\"f").append(i).append("\": 1, ");
    }
    return text.toString();
  }

  private static String read(String text) {
    JobReader.read(text.getBytes(StandardCharsets.UTF_8));
    return "read";
  }

  private static String planned(FloorJob job) {
    var plan = FloorPlanner.plan(job);
    return plan.bays().size() + " bays, " + plan.order().boardsUsed() + " boards";
  }

  private static String planned(String document) {
    FloorJob job = JobReader.read(document.getBytes(StandardCharsets.UTF_8)).job();
    return planned(job);
  }

  private static FloorJob job(long[] shell) {
    return job(Outline.of(ring(shell)));
  }

  private static FloorJob job(Outline outline) {
    return FloorJob.of("Invented", BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6))
        .room(Room.of("Room", outline)).build();
  }

  /** A hall with columns in rows. */
  private static FloorJob job(int voids) {
    int across = (int) StrictMath.ceil(StrictMath.sqrt(voids));
    List<Ring> columns = new ArrayList<>();
    for (int i = 0; i < voids; i++) {
      columns.add(ring(Rings.moved(Rings.rectangle(300 * MM, 300 * MM), (1000 + i % across * 1500L) * MM, (1000 + i / across * 1500L) * MM)));
    }
    return job(Outline.of(ring(Rings.rectangle((across + 1) * 1500 * MM, (across + 1) * 1500 * MM)), columns));
  }

  private static Ring ring(long[] at) {
    long[] xs = new long[at.length / 2];
    long[] ys = new long[at.length / 2];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = at[2 * i];
      ys[i] = at[2 * i + 1];
    }
    return Ring.ofNanometres(xs, ys);
  }

  /** A room whose walls go in and out by a few millimetres. */
  private static long[] saw(int corners) {
    long[] ring = Rings.round(corners, 4000 * MM);
    for (int i = 0; i < ring.length; i += 4) {
      ring[i] = ring[i] * 99 / 100;
      ring[i + 1] = ring[i + 1] * 99 / 100;
    }
    return ring;
  }

  private static String document(int perPack, String rooms) {
    return "{\"format\": \"floorcalc-job/1\", \"title\": \"Invented\", \"board\": {\"length\": 2200, \"coverWidth\": 185, \"thickness\": 14, \"perPack\": "
        + perPack + ", \"construction\": \"engineered\"}, \"laying\": {\"maximumRun\": {\"alongBoards\": \"1000 m\", \"acrossBoards\": \"1000 m\"}}, \"rooms\": ["
        + rooms + "]}";
  }

  private static String room(String name, double wideMetres, double deepMetres, String more, String field) {
    long wide = Math.round(wideMetres * 1000);
    long deep = Math.round(deepMetres * 1000);
    return "{\"name\": \"" + name + "\", \"outline\": [[0,0],[" + wide + ",0],[" + wide + "," + deep + "],[0," + deep + "]], " + more + field + "}";
  }

  private static String rooms(int number) {
    List<String> rooms = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      rooms.add(room("Room " + i, 4 + i % 7 * 0.3, 3 + i % 5 * 0.2, "", "\"pipes\": []"));
    }
    return String.join(",", rooms);
  }

  private static String pipes(int number) {
    List<String> pipes = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      pipes.add("{\"at\": [" + (200 + i % 40 * 700) + ", " + (200 + i / 40 * 900) + "], \"diameter\": 22}");
    }
    return String.join(",", pipes);
  }

  private static String doors(int number) {
    List<String> doors = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      int y = i % 2 == 0 ? 0 : 20_000;
      int x = 100 + i / 2 * 590;
      doors.add("{\"name\": \"D" + i + "\", \"from\": [" + x + ", " + y + "], \"to\": [" + (x + 500) + ", " + y + "], \"beyond\": {\"finish\": \"tile\", \"higherBy\": -4}}");
    }
    return String.join(",", doors);
  }

  /** Walls of a comb with all diagonals that the limit lets in. */
  private static String survey(int walls) {
    long[] ring = Rings.round(walls, 4000 * MM);
    List<String> lengths = new ArrayList<>();
    List<String> ties = new ArrayList<>();
    for (int i = 0; i < walls; i++) {
      lengths.add("{\"length\": " + apart(ring, i, (i + 1) % walls) + "}");
      for (int j = i + 2; j < walls && ties.size() < 500; j++) {
        if (!(i == 0 && j == walls - 1)) {
          ties.add("{\"from\": " + (i + 1) + ", \"to\": " + (j + 1) + ", \"length\": " + apart(ring, i, j) + "}");
        }
      }
    }
    return "{\"name\": \"Study\", \"survey\": {\"walls\": [" + String.join(",", lengths) + "], \"ties\": [" + String.join(",", ties) + "]}}";
  }

  private static long apart(long[] ring, int i, int j) {
    return StrictMath.round(StrictMath.hypot((double) ring[2 * i] - ring[2 * j], (double) ring[2 * i + 1] - ring[2 * j + 1]) / MM);
  }

  private static String heights(int number, int stride) {
    int across = (int) StrictMath.ceil(StrictMath.sqrt(number));
    List<String> heights = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      int x = i % across * (90_000 / across);
      int y = i / across * (90_000 / across);
      heights.add("[" + (x + (stride == 1 ? 0 : i * 37 % 211)) + ", " + (y + (stride == 1 ? 0 : i * 53 % 197)) + ", " + i * 7919 % 100 / 10.0 + "]");
    }
    return String.join(",", heights);
  }

  private static String line(int number) {
    List<String> heights = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      heights.add(Double.toString(i * 7919 % 100 / 10.0));
    }
    return String.join(",", heights);
  }
}
