package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.PlainNumber;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No class of the core or of the examples turns a {@code double} into text but {@link PlainNumber}: what {@link Double#toString(double)},
 * a {@code +} beside a text, {@code %.2f} and {@code BigDecimal.valueOf(double)} make depends on the version of Java. Reads the
 * names in the compiled classes, so that a {@code +} is seen too.
 */
class FloatingTextTest {
  private static final Set<String> REFUSED = Set.of("toString(D)", "toString(F)", "valueOf(D)Ljava/lang/String;",
      "valueOf(D)Ljava/math/BigDecimal;", "append(D)", "append(F)", "print(D)", "print(F)", "println(D)", "println(F)");

  @Test
  void onlyOneClassWritesFloatingNumbers() throws IOException, URISyntaxException {
    assertThat(found(PlainNumber.class)).isEmpty();
    assertThat(found(Main.class)).isEmpty();
  }

  @Test
  void aPlusBesideATextIsSeen() throws IOException {
    try (InputStream own = FloatingTextTest.class.getResourceAsStream("FloatingTextTest$Sample.class")) {
      assertThat(refused(own)).containsExactlyInAnyOrder("makeConcatWithConstants(Ljava/lang/String;D)Ljava/lang/String;",
          "valueOf(D)Ljava/math/BigDecimal;", "%.2f");
    }
  }

  /** Does what must not be done. */
  static final class Sample {
    private Sample() {}

    static String text(String name, double value) {
      return name + value;
    }

    static String more(double value) {
      return java.math.BigDecimal.valueOf(value).toPlainString().concat(String.format(java.util.Locale.ROOT, "%.2f", value));
    }
  }

  private static List<String> found(Class<?> one) throws IOException, URISyntaxException {
    Path place = Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
    if (Files.isDirectory(place)) {
      return inFolder(place);
    }
    try (FileSystem jar = FileSystems.newFileSystem(place)) {
      return inFolder(jar.getPath("/floorcalc"));
    }
  }

  private static List<String> inFolder(Path folder) throws IOException {
    List<Path> classes;
    try (Stream<Path> all = Files.walk(folder)) {
      classes = all.filter(path -> path.toString().endsWith(".class")).sorted().toList();
    }
    assertThat(classes).hasSizeGreaterThan(100);
    List<String> found = new ArrayList<>();
    for (Path path : classes) {
      try (InputStream in = Files.newInputStream(path)) {
        refused(in).forEach(what -> found.add(folder.relativize(path) + ": " + what));
      }
    }
    return found;
  }

  /** What a class file refers to and must not; the form of its constants is that of the Java Virtual Machine Specification, 4.4. */
  private static Set<String> refused(InputStream file) throws IOException {
    DataInputStream in = new DataInputStream(new java.io.BufferedInputStream(file));
    in.skipNBytes(8);
    int size = in.readUnsignedShort();
    String[] texts = new String[size];
    List<int[]> namesAndTypes = new ArrayList<>();
    for (int i = 1; i < size; i++) {
      int tag = in.readUnsignedByte();
      switch (tag) {
        case 1 -> texts[i] = in.readUTF();
        case 5, 6 -> {
          in.skipNBytes(8);
          i++;
        }
        case 12 -> namesAndTypes.add(new int[] {in.readUnsignedShort(), in.readUnsignedShort()});
        case 7, 8, 16, 19, 20 -> in.skipNBytes(2);
        case 15 -> in.skipNBytes(3);
        case 3, 4, 9, 10, 11, 17, 18 -> in.skipNBytes(4);
        default -> throw new IOException("constant of kind " + tag);
      }
    }
    Set<String> refused = new TreeSet<>();
    for (int[] pair : namesAndTypes) {
      String called = texts[pair[0]] + texts[pair[1]];
      boolean joins = texts[pair[0]].equals("makeConcatWithConstants")
          && texts[pair[1]].replaceAll("L[^;]*;", "").matches("\\(.*[DF].*\\).*");
      if (joins || REFUSED.stream().anyMatch(called::startsWith)) {
        refused.add(called);
      }
    }
    for (String text : texts) {
      if (text != null && text.matches("(?s).*%[-#+ 0,(]*[0-9]*(\\.[0-9]+)?[efgaEGA](?![a-zA-Z]).*")) {
        refused.add(text);
      }
    }
    return refused;
  }
}
