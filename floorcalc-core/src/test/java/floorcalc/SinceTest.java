package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every public type says since which version it is there. */
class SinceTest {

  private static final Path SOURCES = Path.of("src", "main", "java");

  @Test
  void everyPublicTypeSaysSinceWhen() throws IOException {
    for (Class<?> type : PublicApi.types()) {
      Class<?> outermost = type;
      while (outermost.getEnclosingClass() != null) {
        outermost = outermost.getEnclosingClass();
      }
      String source = Files.readString(SOURCES.resolve(outermost.getName().replace('.', '/') + ".java"));
      Matcher declared = Pattern.compile("(?m)^ *public [a-z -]*\\b(class|record|enum|interface) " + type.getSimpleName() + "\\b").matcher(source);
      assertThat(declared.find()).as(type.getName()).isTrue();
      String javadoc = source.substring(source.lastIndexOf("/**", declared.start()), declared.start());
      assertThat(javadoc).as(type.getName()).containsPattern("(?m)^ *\\* @since [0-9]+\\.[0-9]+$");
    }
  }
}
