package floorcalc.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ErrorsPageTest {
  @Test
  void print() throws IOException {
    var codes = new CodesInSource(List.of(Path.of("../floorcalc-core/src/main/java")));
    codes.uses().forEach((code, uses) -> System.out.println(code + " " + uses));
    codes.unclear().forEach(line -> System.out.println("UNCLEAR " + line));
  }
}
