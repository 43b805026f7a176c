package floorcalc.examples;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Says on standard error what takes longer than a second, then every five seconds. */
final class Heartbeat {
  private Heartbeat() {
  }

  static <T> T during(Console console, String doing, Supplier<T> work) {
    ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(task -> {
      Thread thread = new Thread(task, "heartbeat");
      thread.setDaemon(true);
      return thread;
    });
    long start = System.nanoTime();
    timer.scheduleAtFixedRate(
        () -> console.warn(doing + " … " + TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start) + " s"), 1, 5,
        TimeUnit.SECONDS);
    try {
      return work.get();
    } finally {
      timer.shutdownNow();
    }
  }
}
