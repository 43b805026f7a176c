package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No number of a plan can be changed unnoticed, and nothing that is done to the files makes the second auditor fail. */
class EveryNumberTest {
  private static final int NUMBERS = 80;
  private static final int DAMAGES = 80;
  private static final String[] STRANGE = {"null", "\"\"", "\"x\"", "true", "-1", "0", "1e99", "0.00000001", "[]", "{}", "[1,2,3]", "99999999999"};

  /** A number of the plan: where it stands. */
  private record Leaf(ContainerNode<?> parent, String field, int index) {

    void add(double more) {
      if (parent instanceof ObjectNode object) {
        TwoFiles.add(object, field, more);
      } else {
        TwoFiles.add((ArrayNode) parent, index, more);
      }
    }

    void set(JsonNode value) {
      if (parent instanceof ObjectNode object) {
        object.set(field, value);
      } else {
        ((ArrayNode) parent).set(index, value);
      }
    }

    @Override
    public String toString() {
      return field + "/" + index + " of " + parent;
    }
  }

  private static void leaves(JsonNode node, boolean numbersAlone, List<Leaf> found) {
    if (node instanceof ObjectNode object) {
      object.fieldNames().forEachRemaining(name -> {
        // Of the bound the files tell only that it is not above the boards; working is for people to read.
        if (!(numbersAlone && List.of("working", "checks", "materials", "boardsAtLeast").contains(name))) {
          note(new Leaf(object, name, 0), object.get(name), numbersAlone, found);
        }
      });
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        note(new Leaf(array, "", i), array.get(i), numbersAlone, found);
      }
    }
  }

  private static void note(Leaf leaf, JsonNode node, boolean numbersAlone, List<Leaf> found) {
    if (!numbersAlone || node.isNumber()) {
      found.add(leaf);
    }
    leaves(node, numbersAlone, found);
  }

  @Test
  void noNumberCanBeChangedByOneUnnoticed() {
    Random random = new Random(7);
    int tried = 0;
    while (tried < NUMBERS) {
      TwoFiles files = new TwoFiles(tried % 2 == 0 ? SoundPlans.WITH_BREAK : SoundPlans.WITH_COMPROMISES);
      List<Leaf> numbers = new ArrayList<>();
      leaves(files.plan, true, numbers);
      Leaf leaf = numbers.get(random.nextInt(numbers.size()));
      double by = random.nextBoolean() ? 1 : -1;
      leaf.add(by);
      assertThat(files.report().isSound()).as("%s changed by %s", leaf, by).isFalse();
      tried++;
    }
  }

  @Test
  void nothingMakesItFail() throws Exception {
    Random random = new Random(11);
    for (int i = 0; i < DAMAGES; i++) {
      TwoFiles files = new TwoFiles(SoundPlans.WITH_BREAK);
      List<Leaf> all = new ArrayList<>();
      leaves(i % 3 == 0 ? files.job : files.plan, false, all);
      Leaf leaf = all.get(random.nextInt(all.size()));
      String strange = STRANGE[random.nextInt(STRANGE.length)];
      leaf.set(new com.fasterxml.jackson.databind.ObjectMapper().readTree(strange));
      assertThat(files.report().lines()).as("%s is %s", leaf, strange).isNotEmpty();
    }
  }

  @Test
  void whatIsNoJsonIsAFault() {
    String job = SoundPlans.WITH_BREAK.jobText();
    for (String bad : List.of("", " ", "{", "[]", "3", "null", "{\"format\": 1, \"format\": 1}", "{} {}", "NaN", "{'a': 1}", "\u0000",
        "[".repeat(5000), "{\"a\": 1e999999999999}")) {
      RecheckReport plan = PlanRecheck.of(job, bad);
      assertThat(plan.breaks(Rule.FORMAT)).as(bad).isTrue();
      assertThat(plan.leftOut()).as(bad).isNotEmpty();
      assertThat(PlanRecheck.of(bad, SoundPlans.WITH_BREAK.planText()).isSound()).as(bad).isFalse();
    }
    assertThat(PlanRecheck.of(job, "{").lines().get(0))
        .startsWith("format, plan: found no JSON at line 1, column 2").endsWith("the file must be strict JSON, each name once in its object");
  }
}
