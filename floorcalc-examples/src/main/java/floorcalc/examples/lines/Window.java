package floorcalc.examples.lines;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.PrintStream;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;

/**
 * Answers several lines at once and sends the answers in the order of the lines. At most twice as many lines as there are threads
 * are held, from the moment they are read until they are answered. Answers go out while the next line is still waited for.
 */
final class Window {
  private final JobLines jobs;
  private final LineReader lines;
  private final Semaphore places;
  private final BlockingQueue<Future<Optional<Answer>>> answers = new LinkedBlockingQueue<>();
  private final ExecutorService planners;
  private final ExecutorService reader;

  Window(JobLines jobs, LineReader lines, int threads) {
    this.jobs = jobs;
    this.lines = lines;
    this.places = new Semaphore(2 * threads);
    this.planners = Executors.newFixedThreadPool(threads, work -> daemon(work, "planner"));
    this.reader = Executors.newSingleThreadExecutor(work -> daemon(work, "reader"));
  }

  /** A thread that keeps nothing alive: the reader may be waiting for a line that nobody will send. */
  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  Outcome answer(PrintStream out) throws IOException {
    reader.execute(this::read);
    Outcome worst = Outcome.PLANNED;
    try {
      for (Optional<Answer> answer = answers.take().get(); answer.isPresent(); answer = answers.take().get()) {
        if (!JobLines.sent(answer.get(), out)) {
          break;
        }
        places.release();
        worst = worst.worse(answer.get().outcome());
      }
      return worst;
    } catch (ExecutionException fault) {
      if (fault.getCause() instanceof IOException unreadable) {
        throw unreadable;
      }
      throw new IllegalStateException(fault.getCause());
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("stopped from outside");
    } finally {
      planners.shutdownNow();
      reader.shutdownNow();
    }
  }

  private void read() {
    try {
      while (true) {
        places.acquire();
        Optional<Line> line = lines.next();
        if (line.isEmpty()) {
          answers.add(CompletableFuture.completedFuture(Optional.empty()));
          return;
        }
        answers.add(planners.submit(() -> Optional.of(jobs.answer(line.get()))));
      }
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
    } catch (IOException | RuntimeException | Error fault) {
      answers.add(CompletableFuture.failedFuture(fault));
    }
  }
}
