package floorcalc.recheck;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The second auditor knows no class of the library, nor of its examples: only JSON, a geometry library and the JDK. */
@AnalyzeClasses(packages = "floorcalc", importOptions = ImportOption.DoNotIncludeTests.class)
class RecheckHouseTest {
  @ArchTest
  static final ArchRule ALONE = classes().that().resideInAPackage("floorcalc.recheck").and().doNotHaveSimpleName("RecheckCommand")
      .should().onlyDependOnClassesThat().resideInAnyPackage("floorcalc.recheck", "java..", "com.fasterxml.jackson..", "org.locationtech.jts..");
  @ArchTest
  static final ArchRule ON_A_GRID = noClasses().that().resideInAPackage("floorcalc.recheck").should().dependOnClassesThat()
      .haveSimpleName("OverlayNGRobust").because("floating places once made an overlap of boards that only touch");
  @ArchTest
  static final ArchRule COMMAND = classes().that().haveSimpleName("RecheckCommand")
      .should().onlyDependOnClassesThat().resideInAnyPackage("floorcalc.recheck", "java..", "picocli..");
}
