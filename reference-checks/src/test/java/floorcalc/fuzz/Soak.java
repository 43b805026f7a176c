package floorcalc.fuzz;

import com.sun.management.UnixOperatingSystemMXBean;
import floorcalc.FloorPlanner;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.examples.sheet.CsvFiles;
import floorcalc.examples.sheet.CutCard;
import floorcalc.examples.sheet.JobSheet;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.UnsoundJobException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Plans a stream of jobs in one Java machine, from document to plan file, sheet, cut card and order list, and prints each minute how many
 * were done, what is left in the heap after a collection, the classes loaded, the threads and the open files.
 * <pre>{@code
 * mvn -q -P soak package -pl reference-checks -am -DskipTests -Dsoak.minutes=60 -Dsoak.heap=256m
 * }</pre>
 */
public final class Soak {
  private static final long MINUTE = 60_000_000_000L;

  private Soak() {}

  /**
   * Runs for a time.
   *
   * @param args minutes and seed, not null
   */
  public static void main(String[] args) {
    long minutes = Long.parseLong(args[0]);
    long seed = Long.parseLong(args[1]);
    System.out.printf(Locale.ROOT, "Java %s, heap at most %d MB, seed %d%n", Runtime.version(), Runtime.getRuntime().maxMemory() >> 20, seed);
    System.out.println("minute,jobs,plans,refused,faults,megabytes out,heap after GC kB,classes,threads,open files");
    long start = System.nanoTime();
    long number = 0;
    long plans = 0;
    long bytes = 0;
    long faults = 0;
    for (long minute = 0; minute <= minutes; minute++) {
      while (System.nanoTime() - start < minute * MINUTE) {
        try {
          long written = one(seed, number);
          plans += written > 0 ? 1 : 0;
          bytes += written;
        } catch (RuntimeException fault) {
          faults++;
          System.out.println("FAULT in job " + number + ": " + fault);
        }
        number++;
      }
      System.out.printf(Locale.ROOT, "%d,%d,%d,%d,%d,%d,%d,%d,%d,%d%n", minute, number, plans, number - plans - faults, faults, bytes >> 20, heap() >> 10,
          ManagementFactory.getClassLoadingMXBean().getLoadedClassCount(), ManagementFactory.getThreadMXBean().getThreadCount(), files());
    }
  }

  /** Returns the bytes of everything that a job gives, or 0 if it is refused. Every tenth job is wild. */
  static long one(long seed, long number) {
    Chance chance = Chance.of(seed, "soak", number);
    String job = new JobGrammar(chance, number % 10 == 9 ? 60 : JobGrammar.TAME).text();
    try {
      JobFile file = JobReader.read(job.getBytes(StandardCharsets.UTF_8));
      FloorPlan plan = FloorPlanner.plan(file.job());
      return (long) PlanWriter.write(plan).length + JobSheet.of(file, plan).length + CsvFiles.cutCard(CutCard.of(file.job(), plan)).length
          + CsvFiles.order(plan).length;
    } catch (BadJobException | UnsoundJobException refused) {
      return 0;
    }
  }

  private static long heap() {
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  private static long files() {
    return ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix ? unix.getOpenFileDescriptorCount() : -1;
  }
}
