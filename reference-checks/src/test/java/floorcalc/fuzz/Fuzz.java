package floorcalc.fuzz;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Tries many cases and prints how they ended, the slowest one and each cause of a fault once with the first case that has it.
 * <pre>{@code
 * mvn -q -P fuzz package -pl reference-checks -am -DskipTests -Dfuzz.target=JOB_BYTES -Dfuzz.cases=1000000 -Dfuzz.seed=1
 * }</pre>
 */
public final class Fuzz {
  /** Seconds of processor time. */
  private static final long HANGS_AFTER_SECONDS = 120;
  private static final int FRAMES = 12;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Target target;
  private final long seed;
  private final PrintStream out;
  private final Map<Ending, Long> endings = new EnumMap<>(Ending.class);
  private final Map<String, Long> faults = new LinkedHashMap<>();
  private final AtomicLong running = new AtomicLong(-1);
  private volatile long began;
  private volatile Thread worker;
  private long used;
  private long slowest;
  private long slowestCase;

  private Fuzz(Target target, long seed, PrintStream out) {
    this.target = target;
    this.seed = seed;
    this.out = out;
  }

  /**
   * Runs cases: target or {@code ALL}, number of cases, seed, and the first case if it is not 0; with {@code show} as a fifth word prints the
   * input of that one case as well.
   *
   * @param args the five words, not null
   */
  public static void main(String[] args) {
    long cases = Long.parseLong(args[1]);
    long seed = Long.parseLong(args[2]);
    long from = args.length > 3 ? Long.parseLong(args[3]) : 0;
    Target[] targets = args[0].equals("ALL") ? Target.values() : new Target[] {Target.valueOf(args[0])};
    System.out.printf(Locale.ROOT, "Java %s, heap %d MB, seed %d%n", Runtime.version(), Runtime.getRuntime().maxMemory() >> 20, seed);
    long faults = 0;
    for (Target target : targets) {
      if (args.length > 4) {
        System.out.println(new String(target.input(seed, from), StandardCharsets.UTF_8));
      }
      faults += new Fuzz(target, seed, System.out).run(from, from + cases);
    }
    System.exit(faults == 0 ? 0 : 1);
  }

  /** Tries the first cases of a seed. */
  static Fuzz tried(Target target, long seed, long cases, PrintStream out) {
    Fuzz fuzz = new Fuzz(target, seed, out);
    fuzz.run(0, cases);
    return fuzz;
  }

  /** How many cases ended so. */
  long ended(Ending ending) {
    return endings.getOrDefault(ending, 0L);
  }

  /** How many cases ended otherwise. */
  long faults() {
    return faults.values().stream().mapToLong(Long::longValue).sum();
  }

  private long run(long from, long to) {
    Thread watch = new Thread(this::watch, "watch");
    watch.setDaemon(true);
    watch.start();
    worker = Thread.currentThread();
    long start = System.nanoTime();
    for (long number = from; number < to; number++) {
      began = THREADS.getCurrentThreadCpuTime();
      running.set(number);
      one(number);
      long took = THREADS.getCurrentThreadCpuTime() - began;
      used += took;
      if (took > slowest) {
        slowest = took;
        slowestCase = number;
      }
      if ((number - from + 1) % 100_000 == 0) {
        out.printf(Locale.ROOT, "  %s %d cases, %d s%n", target, number - from + 1, (System.nanoTime() - start) / 1_000_000_000);
      }
    }
    running.set(-1);
    watch.interrupt();
    long sum = faults();
    out.printf(Locale.ROOT, "%s: cases %d to %d of seed %d: %d done, %d refused, %d faults of %d kinds; %.1f s by the clock, %.1f s of processor time, the slowest %.2f s of processor time (case %d)%n", target, from,
        to - 1, seed, ended(Ending.DONE), ended(Ending.REFUSED), sum, faults.size(),
        (System.nanoTime() - start) / 1e9, used / 1e9, slowest / 1e9, slowestCase);
    faults.forEach((kind, count) -> out.println("  " + count + " times " + kind));
    return sum;
  }

  private void one(long number) {
    byte[] input = target.input(seed, number);
    try {
      endings.merge(target.tried(input, seed, number), 1L, Long::sum);
    } catch (RuntimeException | AssertionError | StackOverflowError | OutOfMemoryError fault) {
      if (faults.merge(kind(fault), 1L, Long::sum) == 1) {
        out.println("FAULT in case " + number + " of " + target + ", seed " + seed + ": " + fault);
        StackTraceElement[] frames = fault.getStackTrace();
        for (int i = 0; i < Math.min(FRAMES, frames.length); i++) {
          out.println("    at " + frames[i]);
        }
      }
    }
  }

  /** Faults are of one kind if they are of one class and come from one line of ours. */
  private static String kind(Throwable fault) {
    for (StackTraceElement frame : fault.getStackTrace()) {
      if (frame.getClassName().startsWith("floorcalc.") && !frame.getClassName().endsWith(".Claim")) {
        return fault.getClass().getSimpleName() + " at " + frame;
      }
    }
    return fault.getClass().getSimpleName();
  }

  /** Says so, and ends the machine, if a case does not end. */
  @SuppressWarnings("deprecation") // of newer Javas: the number of a thread
  private void watch() {
    try {
      while (true) {
        Thread.sleep(5000);
        long number = running.get();
        if (number >= 0 && worker != null && THREADS.getThreadCpuTime(worker.getId()) - began > HANGS_AFTER_SECONDS * 1_000_000_000L) {
          out.println("HANGS: case " + number + " of " + target + ", seed " + seed);
          for (StackTraceElement frame : worker.getStackTrace()) {
            out.println("    at " + frame);
          }
          out.flush();
          Runtime.getRuntime().halt(3);
        }
      }
    } catch (InterruptedException done) {
      Thread.currentThread().interrupt();
    }
  }
}
