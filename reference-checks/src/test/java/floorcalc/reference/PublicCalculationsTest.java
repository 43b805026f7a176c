package floorcalc.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import floorcalc.reference.answers.Library;
import floorcalc.reference.report.CoreCalculation;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of public calculations is the core's, and what is said to check them calls them. */
class PublicCalculationsTest {
  private static final JavaClasses ALL = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
      .importPackages("floorcalc");
  private static final Set<String> OURS = Set.of("floorcalc.reference", "floorcalc.recheck", "floorcalc.examples");

  /** What gives a result with its working is a calculation; the list has some more that give none. */
  @Test
  void everythingThatShowsItsWorkingIsListed() {
    Set<String> listed = CoreCalculation.all().stream().map(CoreCalculation::type).collect(Collectors.toCollection(TreeSet::new));
    assertThat(listed).hasSameSizeAs(CoreCalculation.all());
    List<String> missing = core().stream().filter(PublicCalculationsTest::givesWorking).map(JavaClass::getName)
        .filter(name -> !listed.contains(name)).toList();
    assertThat(missing).as("not in public-calculations.csv").isEmpty();
    assertThat(listed).isSubsetOf(core().stream().map(JavaClass::getName).toList());
  }

  /** A claim that a question checks a class is held against the calls in the byte code of the answers. */
  @Test
  void eachClassUnderTestIsCalledByTheAnswers() {
    Set<String> called = new TreeSet<>();
    for (JavaClass answers : ALL) {
      if (answers.getPackageName().equals("floorcalc.reference.answers")) {
        answers.getAccessesFromSelf().forEach(access -> called.add(access.getTargetOwner().getName()));
      }
    }
    assertThat(new Library().underTest().values()).allSatisfy(classes -> assertThat(called).containsAll(classes));
  }

  /** Calculations that are answered but not asked would be counted by nobody. */
  @Test
  void everyAnswerIsAskedAndEveryQuestionAnswered() {
    Set<String> asked = Suite.cases().stream().map(one -> one.question().calculation()).collect(Collectors.toCollection(TreeSet::new));
    assertThat(asked).isEqualTo(new TreeSet<>(new Library().underTest().keySet()));
  }

  private static List<JavaClass> core() {
    List<JavaClass> core = new ArrayList<>();
    for (JavaClass type : ALL) {
      if (type.isTopLevelClass() && type.getModifiers().contains(JavaModifier.PUBLIC) && !type.getSimpleName().equals("package-info")
          && OURS.stream().noneMatch(ours -> type.getPackageName().equals(ours) || type.getPackageName().startsWith(ours + "."))) {
        core.add(type);
      }
    }
    return core;
  }

  private static boolean givesWorking(JavaClass type) {
    return !type.getPackageName().equals("floorcalc.working") && type.getMethods().stream().anyMatch(method ->
        method.getModifiers().contains(JavaModifier.PUBLIC) && method.getRawReturnType().isEquivalentTo(Calculated.class));
  }
}
