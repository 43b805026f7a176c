package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.Array;
import java.lang.reflect.Proxy;
import java.net.InetAddress;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Scanner;
import java.util.ServiceLoader;
import java.util.Timer;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of {@link Sealed} catch what is planted for them, each alone, and nothing that plain code needs. */
class SealedTest {
  @ParameterizedTest
  @ValueSource(classes = {ReadsFile.class, OpensChannel.class, AsksNetwork.class, BuildsUrl.class, ReadsObjects.class, Reflects.class, Proxies.class,
      LooksUp.class})
  void notSilentOrSealed(Class<?> planted) {
    assertThatThrownBy(() -> Sealed.SILENT_AND_SEALED.check(only(planted))).isInstanceOf(AssertionError.class).hasMessageContaining(planted.getName());
  }

  @ParameterizedTest
  @ValueSource(classes = {FindsClass.class, FindsMethods.class, LooksUp.class, StartsThread.class, KeepsPerThread.class, StartsPool.class, SharesPool.class,
      LaterOn.class, RunsInParallel.class, LoadsLibrary.class, RunsProgram.class, BuildsProcess.class, FindsBundle.class, FindsService.class, SetsTimer.class,
      AsksClock.class, AsksDate.class, AsksSetting.class, AsksEnvironment.class, AsksLocale.class, AsksCharset.class, ByChance.class, ByOtherChance.class,
      ReadsText.class, Prints.class, Ends.class, AsksCores.class})
  void notFromTheMachine(Class<?> planted) {
    assertThatThrownBy(() -> Sealed.NOTHING_FROM_THE_MACHINE.check(only(planted))).isInstanceOf(AssertionError.class).hasMessageContaining(planted.getName());
  }

  @ParameterizedTest
  @ValueSource(classes = {Plain.class, PlainRecord.class})
  void plainCodePasses(Class<?> plain) {
    assertThat(only(plain)).hasSize(1);
    Sealed.SILENT_AND_SEALED.check(only(plain));
    Sealed.NOTHING_FROM_THE_MACHINE.check(only(plain));
  }

  private static JavaClasses only(Class<?> planted) {
    return new ClassFileImporter().importClasses(planted);
  }

  /** Lambdas, joined text, a switch over an enum's name, records: the compiler writes calls by handle for them. */
  static final class Plain implements Serializable {
    private static final long serialVersionUID = 1L;

    String text(int number, List<String> parts) {
      Supplier<String> later = () -> number + " of " + parts;
      int[] copy = new int[2];
      System.arraycopy(new int[] {1, 2}, 0, copy, 0, 2);
      return later.get() + parts.stream().map(String::strip).toList() + getClass().getSimpleName();
    }
  }

  record PlainRecord(String name, int number) {}

  static final class ReadsFile {
    byte[] bytes() throws IOException {
      return Files.readAllBytes(Path.of("x"));
    }
  }

  static final class OpensChannel {
    Object channel() throws IOException {
      return FileChannel.open(Path.of("x"));
    }
  }

  static final class AsksNetwork {
    Object host() throws IOException {
      return InetAddress.getLocalHost();
    }
  }

  static final class BuildsUrl {
    Object place() {
      return URI.create("x:y");
    }
  }

  static final class ReadsObjects {
    Object object() throws IOException, ClassNotFoundException {
      try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(new byte[0]))) {
        return in.readObject();
      }
    }
  }

  static final class Reflects {
    Object many() {
      return Array.newInstance(String.class, 2);
    }
  }

  static final class Proxies {
    boolean proxy() {
      return Proxy.isProxyClass(SealedTest.class);
    }
  }

  static final class LooksUp {
    Object lookup() {
      return MethodHandles.lookup();
    }
  }

  static final class ReadsText {
    Object words() {
      return new Scanner(System.in, java.nio.charset.StandardCharsets.UTF_8);
    }
  }

  static final class FindsClass {
    Object type() throws ClassNotFoundException {
      return Class.forName("x");
    }
  }

  static final class FindsMethods {
    Object methods() {
      return SealedTest.class.getMethods();
    }
  }

  static final class StartsThread {
    void start() {
      new Thread(() -> { }).start();
    }
  }

  static final class KeepsPerThread {
    private final ThreadLocal<String> kept = new ThreadLocal<>();

    String kept() {
      return kept.get();
    }
  }

  static final class StartsPool {
    Object pool() {
      return Executors.newFixedThreadPool(2);
    }
  }

  static final class SharesPool {
    Object pool() {
      return ForkJoinPool.commonPool();
    }
  }

  static final class LaterOn {
    Object later() {
      return CompletableFuture.completedFuture("x");
    }
  }

  static final class RunsInParallel {
    long count() {
      return List.of(1, 2).parallelStream().count();
    }
  }

  static final class LoadsLibrary {
    @SuppressWarnings("restricted") // of newer Javas
    void load() {
      System.load("/x");
    }
  }

  static final class RunsProgram {
    Object run() throws IOException {
      return Runtime.getRuntime().exec(new String[] {"x"});
    }
  }

  static final class BuildsProcess {
    Object build() {
      return new ProcessBuilder("x");
    }
  }

  static final class FindsBundle {
    Object bundle() {
      return ResourceBundle.getBundle("x");
    }
  }

  static final class FindsService {
    Object service() {
      return ServiceLoader.load(Runnable.class);
    }
  }

  static final class SetsTimer {
    Object timer() {
      return new Timer();
    }
  }

  static final class AsksClock {
    long now() {
      return System.nanoTime();
    }
  }

  static final class AsksDate {
    Object today() {
      return LocalDate.now();
    }
  }

  static final class AsksSetting {
    String setting() {
      return System.getProperty("x");
    }
  }

  static final class AsksEnvironment {
    String setting() {
      return System.getenv("x");
    }
  }

  static final class AsksLocale {
    Object locale() {
      return Locale.getDefault();
    }
  }

  static final class AsksCharset {
    Object charset() {
      return Charset.defaultCharset();
    }
  }

  static final class ByChance {
    Object chance() {
      return new Random();
    }
  }

  static final class ByOtherChance {
    Object chance() {
      return UUID.randomUUID();
    }
  }

  static final class Prints {
    void print() {
      System.out.println("x");
    }
  }

  static final class Ends {
    void end() {
      System.exit(1);
    }
  }

  static final class AsksCores {
    int cores() {
      return Runtime.getRuntime().availableProcessors();
    }
  }
}
