package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page on the audit lists every code once, and no other. */
class AuditPageTest {

  @Test
  void listsEveryCode() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "audit.md"), StandardCharsets.UTF_8);
    List<String> table = Pattern.compile("(?m)^\\| `([a-z-]+)` \\|").matcher(page).results()
        .map(result -> result.group(1)).toList();
    List<String> notes = Pattern.compile("(?s)Notes break nothing:.*?\n\n").matcher(page).results().map(MatchResult::group)
        .flatMap(text -> Pattern.compile("`([a-z-]+)`").matcher(text).results().map(result -> result.group(1))).toList();
    Set<String> all = Stream.of(Code.values()).map(Code::text).collect(Collectors.toCollection(TreeSet::new));
    assertThat(Stream.concat(table.stream(), notes.stream()).sorted().toList()).isEqualTo(List.copyOf(all));
    assertThat(table).doesNotContainAnyElementsOf(notes);
  }
}
