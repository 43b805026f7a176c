package floorcalc.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of questions for whoever writes a port: complete, and shown in docs; {@code -Ddocs.write} writes the page anew. */
class QuestionsPageTest {
  private static final Path FOLDER = Path.of("src", "main", "resources", "calculations");
  private static final Path PAGE = Path.of("..", "docs", "reference-questions.md");

  private static Map<String, List<DataRow>> lists() throws IOException {
    Map<String, List<DataRow>> lists = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        lists.put(name, DataFile.of(name, Files.readAllLines(file, UTF_8)).rows());
      }
    }
    return lists;
  }

  /** Each question that is asked stands in a list with every input it has and every figure it asks for. */
  @Test
  void theListsAreComplete() throws IOException {
    Map<String, DataRow> rows = new LinkedHashMap<>();
    lists().values().stream().flatMap(List::stream).forEach(row -> assertThat(rows.put(row.text("calculation"), row)).as(row.place()).isNull());
    Set<String> missing = new TreeSet<>();
    Set<String> asked = new TreeSet<>();
    for (ReferenceCase one : Suite.cases()) {
      Question question = one.question();
      asked.add(question.calculation());
      DataRow row = rows.get(question.calculation());
      if (row == null) {
        missing.add(question.calculation());
        continue;
      }
      question.inputs().keySet().stream().filter(input -> !names(row, "inputs").contains(input))
          .forEach(input -> missing.add(question.calculation() + " input " + input));
      one.expected().stream().filter(figure -> names(row, "figures").stream().noneMatch(name -> matches(name, figure.figure())))
          .forEach(figure -> missing.add(question.calculation() + " figure " + figure.figure()));
    }
    assertThat(missing).isEmpty();
    assertThat(rows.keySet()).containsExactlyInAnyOrderElementsOf(asked);
  }

  /** A sentence that fell apart at a semicolon would be taken for a name. */
  @Test
  void everyPartHasANameAndAMeaning() throws IOException {
    for (DataRow row : lists().values().stream().flatMap(List::stream).toList()) {
      for (String column : List.of("inputs", "figures")) {
        assertThat(names(row, column)).as(row.place()).allSatisfy(name -> assertThat(name.replaceAll("<[^>]*>", "x")).matches("[A-Za-z][A-Za-z0-9.]*"));
      }
    }
  }

  private static List<String> names(DataRow row, String column) {
    return Arrays.stream(row.text(column).split(";")).flatMap(part -> Arrays.stream(part.split(":")[0].split(","))).map(String::strip).toList();
  }

  /** In a name such as {@code <point>.x} what stands in angle brackets is any text. */
  private static boolean matches(String name, String figure) {
    String pattern = Arrays.stream(name.split("(?=<)|(?<=>)")).map(part -> part.startsWith("<") ? ".+" : java.util.regex.Pattern.quote(part))
        .collect(Collectors.joining());
    return figure.matches(pattern);
  }

  @Test
  void thePageIsUpToDate() throws IOException {
    List<String> lines = new ArrayList<>(List.of("# Questions of the reference suite", "",
        "For whoever holds another implementation against the suite: see [reference suite](reference-suite.md#another-implementation). All inputs are texts, lists of",
        "texts or tables of texts. What stands in angle brackets is a name that the inputs give. This page is made from",
        "`reference-checks/src/main/resources/calculations` and compared with it when the project is built."));
    for (Map.Entry<String, List<DataRow>> list : lists().entrySet()) {
      lines.addAll(List.of("", "## " + list.getKey().replace(".csv", "").replace('-', ' '), "", "| Calculation | Question | Inputs | Figures |", "| --- | --- | --- | --- |"));
      list.getValue().forEach(row -> lines.add("| `" + row.text("calculation") + "` | " + row.text("question") + " | " + cell(row.text("inputs")) + " | "
          + cell(row.text("figures")) + " |"));
    }
    String page = String.join("\n", lines) + "\n";
    if (System.getProperty("docs.write") != null) {
      Files.writeString(PAGE, page, UTF_8);
    }
    assertThat(Files.readString(PAGE, UTF_8)).as("mvn -pl reference-checks -am test -Dtest=QuestionsPageTest -Ddocs.write writes it").isEqualTo(page);
  }

  private static String cell(String parts) {
    return Arrays.stream(parts.split(";")).map(part -> {
      String[] sides = part.strip().split(":", 2);
      return Arrays.stream(sides[0].split(",")).map(name -> "`" + name.strip() + "`").collect(Collectors.joining(", ")) + (sides.length > 1 ? ":" + sides[1].replace("|", "\\|") : "");
    }).collect(Collectors.joining("; "));
  }
}
