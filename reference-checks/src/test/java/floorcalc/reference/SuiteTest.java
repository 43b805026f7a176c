package floorcalc.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import floorcalc.reference.answers.Library;
import floorcalc.reference.cases.Topic;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Checks;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Verdict;
import floorcalc.reference.data.DataFile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every figure of every source against the library. */
@Tag("reference")
class SuiteTest {
  private static final Library LIBRARY = new Library();

  @TestFactory
  Stream<DynamicContainer> everyFigureAgrees() {
    return Suite.topics().stream().map(topic -> {
      Map<String, List<ReferenceCase>> byFile = new LinkedHashMap<>();
      topic.files().forEach(file -> byFile.put(file, new ArrayList<>()));
      topic.cases().forEach(one -> byFile.get(one.file()).add(one));
      return dynamicContainer(topic.name(), byFile.entrySet().stream().map(file -> dynamicTest(file.getKey(), () ->
          assertThat(Checks.run(file.getValue(), LIBRARY)).filteredOn(check -> check.verdict() != Verdict.AGREES)
              .extracting(Check::toString).isEmpty())));
    });
  }

  /** A file from which no case is made would look checked without being so. */
  @Test
  void everyFileOfATopicGivesCases() {
    for (Topic topic : Suite.topics()) {
      assertThat(topic.cases().stream().map(ReferenceCase::file).distinct().toList()).as(topic.name())
          .containsExactlyInAnyOrderElementsOf(topic.files());
    }
  }

  @Test
  void everyFileNamesItsSource() {
    for (Topic topic : Suite.topics()) {
      for (String file : topic.files()) {
        DataFile data = DataFile.read(file);
        assertThat(DataFile.REQUIRED).as(file).allSatisfy(key -> assertThat(data.head(key)).as(key).isNotEmpty());
      }
    }
  }

  @Test
  void noTwoCasesOfAFileHaveTheSameName() {
    Set<String> seen = new HashSet<>();
    assertThat(Suite.cases()).allSatisfy(one -> assertThat(seen.add(one.file() + " " + one.id() + " " + one.kind())).as(one.file() + " " + one.id()).isTrue());
  }

  @Test
  void differentialFiguresComeFromNoFile() {
    assertThat(Suite.cases()).noneMatch(one -> one.kind() == Kind.DIFFERENTIAL);
  }
}
