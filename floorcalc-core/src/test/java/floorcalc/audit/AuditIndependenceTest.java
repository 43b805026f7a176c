package floorcalc.audit;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.Set;

/** The audit works out everything itself: of the other packages it only reads values. */
@AnalyzeClasses(packages = "floorcalc", importOptions = ImportOption.DoNotIncludeTests.class)
class AuditIndependenceTest {

  /** What the audit may ask of the types that carry geometry, goods and sums: the values that they hold. */
  private static final Map<String, Set<String>> READ = Map.of(
      "floorcalc.outline.Ring", Set.of("size", "x", "y"),
      "floorcalc.outline.Outline", Set.of("shell", "voids"),
      "floorcalc.outline.Direction", Set.of("degrees", "equals", "toString"),
      "floorcalc.outline.Point", Set.of("ofNanometres", "xNanometres", "yNanometres", "toString"),
      "floorcalc.boards.BoardGoods", Set.of("pack", "lengths", "laidPitch"),
      "floorcalc.boards.PackContent", Set.of("length", "perPack"),
      "floorcalc.boards.OffcutUse", Set.of("IN_LAYING_ORDER", "CUT_AHEAD"),
      "floorcalc.materials.WasteLedger", Set.of("bought", "laid", "trimmedToShape", "sawKerf", "usableOffcuts",
          "shortOffcuts", "spare", "packRounding"),
      "floorcalc.plan.Cut", Set.of("board", "alongFrom", "alongTo", "acrossFrom", "acrossTo"),
      "floorcalc.plan.Order", Set.of("boardsUsed", "boardsAtLeast", "spare", "packs", "boardsInPacks"));

  @ArchTest
  static final ArchRule ONLY_VALUES_ARE_READ = noClasses().that().resideInAPackage("floorcalc.audit..")
      .should().accessTargetWhere(describe("something that another package works out", AuditIndependenceTest::isWorkedOut));

  private static boolean isWorkedOut(JavaAccess<?> access) {
    String owner = access.getTargetOwner().getName();
    String home = access.getTargetOwner().getPackageName();
    if (Set.of("floorcalc.outline", "floorcalc.boards", "floorcalc.materials", "floorcalc.joints", "floorcalc.rows",
        "floorcalc.laying").contains(home) || READ.containsKey(owner)) {
      return !READ.getOrDefault(owner, Set.of()).contains(access.getTarget().getName());
    }
    if (home.equals("floorcalc.bays") && !access.getTargetOwner().isRecord()) {
      return true;
    }
    return home.startsWith("org.locationtech") || home.startsWith("org.apache.commons");
  }
}
