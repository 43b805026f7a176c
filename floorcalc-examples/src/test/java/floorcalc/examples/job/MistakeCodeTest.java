package floorcalc.examples.job;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each mistake has a code for programs beside its line for people. */
class MistakeCodeTest {
  @TestFactory
  List<DynamicTest> oneBrokenJobOfEachKind() {
    return List.of(is("syntax-trailing-comma", "not-json"), is("syntax-not-utf-8", "not-json"),
        is("syntax-nested-deep", "too-large"), is("room-huge", "too-large"),
        is("room-unknown-field", "unknown-field"), is("top-empty-object", "missing-field", "missing-field", "missing-field",
            "missing-field"), is("room-name-twice", "given-twice"), is("top-name-twice", "given-twice"),
        is("top-title-blank", "not-allowed"), is("site-temperature-number", "not-allowed"),
        is("room-survey-beside-outline", "does-not-fit"), is("pipe-outside", "does-not-fit"),
        is("room-smaller-than-gap", "gap-leaves-no-floor"),
        // The outline's own codes, and those of a survey that fixes no shape.
        is("room-wall-runs-back", "walls-touch", "wall-folds-back"), is("room-void-outside", "void-outside"),
        is("survey-without-a-diagonal", "survey-shape-not-fixed"));
  }

  private static DynamicTest is(String job, String... codes) {
    return DynamicTest.dynamicTest(job, () -> assertThat(codes(BrokenJobs.read(job))).containsExactly(codes));
  }

  @Test
  void whatIsNotListedHasACodeToo() {
    String many = IntStream.range(0, 1100).mapToObj(i -> "\"f" + i + "\":0").collect(Collectors.joining(",", "{", "}"));
    assertThat(codes(many.getBytes(UTF_8))).contains("unknown-field").endsWith("more-mistakes");
  }

  private static List<String> codes(byte[] job) {
    return catchThrowableOfType(BadJobException.class, () -> JobReader.read(job)).mistakes().stream().map(Mistake::code).toList();
  }
}
