package floorcalc.reference;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** How the suite is built: what asks does not know what answers. */
@AnalyzeClasses(packages = "floorcalc", importOptions = ImportOption.DoNotIncludeTests.class)
class SuiteHouseTest {
  private static final String[] ANYWHERE = {"java..", "org.apache.commons.csv", "com.fasterxml.jackson.."};

  @ArchTest
  static final ArchRule DATA = knows("floorcalc.reference.data");
  @ArchTest
  static final ArchRule CHECK = knows("floorcalc.reference.check");
  @ArchTest
  static final ArchRule CASES = knows("floorcalc.reference.cases", "floorcalc.reference.check", "floorcalc.reference.data");
  @ArchTest
  static final ArchRule PORT = knows("floorcalc.reference.port", "floorcalc.reference.check");
  @ArchTest
  static final ArchRule REPORT = knows("floorcalc.reference.report", "floorcalc.reference.cases", "floorcalc.reference.check",
      "floorcalc.reference.data");

  private static ArchRule knows(String room, String... others) {
    return classes().that().resideInAPackage(room).should().onlyDependOnClassesThat().resideInAnyPackage(
        java.util.stream.Stream.of(new String[] {room}, others, ANYWHERE).flatMap(java.util.Arrays::stream).toArray(String[]::new));
  }
}
