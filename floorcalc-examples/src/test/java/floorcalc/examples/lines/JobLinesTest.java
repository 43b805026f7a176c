package floorcalc.examples.lines;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.FloorPlanner;
import floorcalc.examples.Docs;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.io.SequenceInputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class JobLinesTest {
  private final List<Throwable> told = Collections.synchronizedList(new ArrayList<>());

  private static String job(String title, int width) {
    return "{\"format\":\"floorcalc-job/1\",\"title\":\"" + title + "\",\"board\":{\"length\":1200,\"coverWidth\":185,"
        + "\"thickness\":14,\"perPack\":6,\"construction\":\"engineered\"},\"rooms\":[{\"name\":\"Closet\",\"outline\":[[0,0],["
        + width + ",0],[" + width + ",900],[0,900]]}]}";
  }

  private static InputStream text(String text) {
    return new ByteArrayInputStream(text.getBytes(UTF_8));
  }

  private Outcome answer(InputStream in, OutputStream out, int threads) throws IOException {
    return JobLines.tellingFaults(told::add).answer(in, new PrintStream(out, true, UTF_8), threads);
  }

  private List<String> failing(Function<FloorJob, FloorPlan> planner, String input, int threads) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(new JobLines(planner, told::add).answer(text(input), new PrintStream(out, true, UTF_8), threads))
        .isEqualTo(Outcome.FAULT);
    return out.toString(UTF_8).lines().toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void aFaultOfTheProgramIsAnAnswerAndTheConversationGoesOn(int threads) throws IOException {
    List<String> lines = failing(job -> {
      if (job.title().equals("B")) {
        throw new IllegalStateException("a\nb");
      }
      return FloorPlanner.plan(job);
    }, job("A", 1500) + "\n\n" + job("B", 1500) + "\n{}\n" + job("C", 1500), threads);
    assertThat(lines).hasSize(4);
    assertThat(lines.get(0)).startsWith("{\"format\":\"floorcalc-plan/1\",\"title\":\"A\",");
    assertThat(lines.get(1)).startsWith("{\"format\":\"floorcalc-refusal/1\",\"line\":3,\"outcome\":\"fault\",\"mistakes\":"
        + "[{\"pointer\":\"\",\"code\":\"program-fault\",").contains("\"message\":\"internal fault: IllegalStateException (a b). This is a mistake in the program,"
        + " not in your job:");
    assertThat(lines.get(2)).startsWith("{\"format\":\"floorcalc-refusal/1\",\"line\":4,\"outcome\":\"refused\",");
    assertThat(lines.get(3)).startsWith("{\"format\":\"floorcalc-plan/1\",\"title\":\"C\",");
    assertThat(lines.subList(1, 3)).allSatisfy(line -> assertThat(Docs.faultsOfRefusal(line.getBytes(UTF_8))).isEmpty());
    assertThat(told).singleElement().isInstanceOf(IllegalStateException.class);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void soIsARunOutOfMemoryOrOfStack(int threads) throws IOException {
    List<String> lines = failing(job -> {
      throw job.title().equals("A") ? new OutOfMemoryError("Java heap space") : new StackOverflowError();
    }, job("A", 1500) + "\n" + job("B", 1500), threads);
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).contains("OutOfMemoryError (Java heap space)");
    assertThat(lines.get(1)).contains("StackOverflowError. ");
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBytes() throws IOException {
    StringBuilder input = new StringBuilder();
    for (int i = 0; i < 60; i++) {
      // Large floors first, so that with several threads later lines are done before earlier ones.
      input.append(i % 7 == 3 ? "{\"format\": 1}" : job("Job " + i, i % 10 == 0 ? 30_000 : 1300 + 10 * i)).append(i % 4 == 0 ? "\n\n" : "\n");
    }
    ByteArrayOutputStream one = new ByteArrayOutputStream();
    assertThat(answer(text(input.toString()), one, 1)).isEqualTo(Outcome.REFUSED);
    assertThat(one.toString(UTF_8).lines()).hasSize(60);
    for (int threads : new int[] {2, 5}) {
      ByteArrayOutputStream several = new ByteArrayOutputStream();
      assertThat(answer(text(input.toString()), several, threads)).isEqualTo(Outcome.REFUSED);
      assertThat(several.toString(UTF_8)).isEqualTo(one.toString(UTF_8));
    }
  }

  /** Another program writes a line, reads its answer, and only then writes the next. */
  @ParameterizedTest
  @ValueSource(ints = {1, 3})
  void conversation(int threads) throws Exception {
    PipedOutputStream asking = new PipedOutputStream();
    try (PipedInputStream asked = new PipedInputStream(asking); PipedInputStream answering = new PipedInputStream(1 << 20);
        PipedOutputStream answered = new PipedOutputStream(answering)) {
      CompletableFuture<Outcome> worst = CompletableFuture.supplyAsync(() -> {
        try {
          return answer(asked, answered, threads);
        } catch (IOException fault) {
          throw new IllegalStateException(fault);
        }
      });
      BufferedReader answers = new BufferedReader(new InputStreamReader(answering, UTF_8));
      for (int i = 0; i < 4; i++) {
        asking.write((job("Job " + i, 1500) + "\n").getBytes(UTF_8));
        asking.flush();
        assertThat(answers.readLine()).startsWith("{\"format\":\"floorcalc-plan/1\",\"title\":\"Job " + i + "\",");
      }
      asking.close();
      assertThat(worst.get(200, TimeUnit.SECONDS)).isEqualTo(Outcome.PLANNED);
    }
  }

  /** Of a floor that takes long, no more than twice as many lines as threads are read ahead. */
  @Test
  void fewLinesAreHeldAtOnce() throws IOException {
    AtomicInteger begun = new AtomicInteger();
    CountDownLatch first = new CountDownLatch(1);
    OutputStream sent = new OutputStream() {
      @Override
      public void write(int b) {
        // nobody looks
      }
    };
    new JobLines(job -> {
      begun.incrementAndGet();
      try {
        if (job.title().equals("Job 0")) {
          // Long enough for the other thread to do all it may; it would do 40 if nothing held it back.
          first.await(300, TimeUnit.MILLISECONDS);
          assertThat(begun.get()).isLessThanOrEqualTo(4);
        }
      } catch (InterruptedException stop) {
        throw new IllegalStateException(stop);
      }
      throw new IllegalStateException("nothing is planned here");
    }, told::add).answer(text(String.join("\n", IntStream.range(0, 40).mapToObj(i -> job("Job " + i, 1500)).toList())),
        new PrintStream(sent, true, UTF_8), 2);
    assertThat(begun).hasValue(40);
    assertThat(told).hasSize(40).allSatisfy(fault -> assertThat(fault).isInstanceOf(IllegalStateException.class));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void nobodyReadsAnyMore(int threads) throws IOException {
    AtomicInteger writes = new AtomicInteger();
    OutputStream closed = new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        writes.incrementAndGet();
        throw new IOException("Broken pipe");
      }
    };
    Outcome worst = answer(new SequenceInputStream(text(job("A", 1500) + "\n"), endless()), closed, threads);
    assertThat(worst).isEqualTo(Outcome.PLANNED);
    assertThat(writes).hasValue(1);
    assertThat(told).isEmpty();
  }

  /** Small wrong jobs for ever. */
  private static InputStream endless() {
    return new InputStream() {
      private int at;

      @Override
      public int read() {
        return "{}\n".charAt(at++ % 3);
      }
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void inputThatCannotBeReadEndsItAfterTheAnswersToWhatCould(int threads) {
    InputStream torn = new SequenceInputStream(text("{}\n"), new InputStream() {
      @Override
      public int read() throws IOException {
        throw new IOException("torn");
      }
    });
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThatThrownBy(() -> answer(torn, out, threads)).isInstanceOf(IOException.class).hasMessage("torn");
    assertThat(out.toString(UTF_8).lines()).hasSize(1);
  }

  @Test
  void inputThatFailsAsNoInputShould() {
    InputStream failing = new InputStream() {
      @Override
      public int read() {
        throw new IllegalStateException("a");
      }
    };
    assertThatThrownBy(() -> answer(failing, new ByteArrayOutputStream(), 2)).isInstanceOf(IllegalStateException.class)
        .hasRootCauseMessage("a");
  }

  @Test
  void whoeverStopsTheThreadStopsTheConversation() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> answer(endless(), new ByteArrayOutputStream(), 2)).isInstanceOf(IOException.class);
    assertThat(Thread.interrupted()).isTrue();
  }
}
