package floorcalc;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.constructors;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.members;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Formatter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the house is built: which package may know which, what the core never does, what its public face never shows. */
@AnalyzeClasses(packages = "floorcalc", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

  /** Each package from the ground up, with the packages that it may know. */
  private static final Map<String, Set<String>> ARROWS = arrows();

  private static Map<String, Set<String>> arrows() {
    Map<String, Set<String>> arrows = new LinkedHashMap<>();
    arrows.put("measure", Set.of());
    arrows.put("working", Set.of("measure"));
    arrows.put("rules", Set.of("measure", "working"));
    arrows.put("outline", Set.of("measure", "working"));
    arrows.put("rows", Set.of("measure", "working", "rules", "outline"));
    arrows.put("joints", Set.of("measure", "working", "rules"));
    arrows.put("boards", Set.of("measure", "working", "rules", "joints"));
    arrows.put("bays", Set.of("measure", "working", "rules", "outline"));
    arrows.put("transitions", Set.of("measure", "working", "rules", "outline"));
    arrows.put("fittings", Set.of("measure", "working", "rules", "outline"));
    arrows.put("trims", Set.of("measure", "working", "rules", "outline"));
    arrows.put("moisture", Set.of("measure", "working", "outline"));
    arrows.put("movement", Set.of("measure", "working", "rules", "outline", "moisture"));
    arrows.put("flatness", Set.of("measure", "working"));
    arrows.put("levels", Set.of("measure", "working", "outline", "flatness"));
    arrows.put("deviations", Set.of("measure", "working", "outline", "boards", "levels"));
    arrows.put("underlay", Set.of("measure", "working", "outline", "moisture", "trims"));
    arrows.put("materials",
        Set.of("measure", "working", "rules", "outline", "levels", "boards", "trims", "underlay"));
    arrows.put("site", Set.of("measure", "working", "rules", "outline", "boards", "moisture", "movement", "flatness",
        "levels"));
    arrows.put("plan", Set.of("measure", "working", "rules", "outline", "bays", "transitions", "fittings", "rows", "joints",
        "boards", "deviations", "underlay", "materials", "site"));
    arrows.put("laying",
        Set.of("measure", "working", "rules", "outline", "bays", "rows", "joints", "boards", "materials", "plan"));
    // The audit shares no arithmetic with what it checks. A job hands out its boards and a plan its ledger: it reads
    // these two values and nothing else of their packages (see AuditIndependenceTest).
    arrows.put("audit", Set.of("measure", "working", "rules", "outline", "bays", "boards", "materials", "plan"));
    arrows.put("finishing", Set.of("measure", "working", "rules", "outline", "bays", "transitions", "fittings", "rows", "joints",
        "boards", "materials", "trims", "underlay", "moisture", "movement", "flatness", "levels", "site", "plan"));
    // A job hands out its boards, whose width tells a sawn edge from a factory edge.
    arrows.put("drawing", Set.of("measure", "working", "rules", "outline", "rows", "joints", "bays", "transitions", "fittings", "trims",
        "moisture", "movement", "flatness", "levels", "boards", "plan"));
    return arrows;
  }

  @ArchTest
  static void arrowsPointOneWay(JavaClasses classes) {
    ARROWS.forEach((name, known) -> {
      String[] allowed = Stream.concat(known.stream(), Stream.of(name)).map(HouseTest::inside).toArray(String[]::new);
      noClasses().that().resideInAPackage(inside(name))
          .should(dependOnClassesThat(resideInAnyPackage("floorcalc..").and(not(resideInAnyPackage(allowed)))
              .as("reside in another package of floorcalc than %s", new TreeSet<>(known))))
          .allowEmptyShould(true).check(classes);
    });
  }

  @ArchTest
  static void everyPackageHasItsPlace(JavaClasses classes) {
    assertThat(classes.stream().map(JavaClass::getPackageName).distinct().filter(name -> !name.equals("floorcalc"))
        .map(name -> name.split("\\.")[1]))
        .as("a new package is entered in ARROWS, and on the page by ArchitecturePageTest with -Ddocs.draw")
        .isSubsetOf(ARROWS.keySet());
  }

  @ArchTest
  static final ArchRule OUTLINES_KNOW_NO_SURVEY = noClasses().that().resideInAPackage("floorcalc.outline").should()
      .dependOnClassesThat(resideInAnyPackage("floorcalc.outline.survey..", "floorcalc.outline.network.."));

  @ArchTest
  static final ArchRule NETWORKS_KNOW_NO_ROOM = noClasses().that().resideInAPackage("floorcalc.outline.network..").should()
      .dependOnClassesThat(resideInAnyPackage("floorcalc.outline", "floorcalc.outline.survey.."));

  @ArchTest
  static final ArchRule THE_FRONT_DOOR_DRAWS_NOTHING =
      noClasses().that().resideInAPackage("floorcalc").should().dependOnClassesThat().resideInAPackage(inside("drawing"))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule NO_CYCLES = slices().matching("floorcalc.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule SILENT_AND_SEALED = Sealed.SILENT_AND_SEALED;

  @ArchTest
  static final ArchRule NOTHING_FROM_THE_MACHINE = Sealed.NOTHING_FROM_THE_MACHINE;

  /** What {@link Math} may compute otherwise on another machine; square roots and whole numbers are exact. */
  private static final Set<String> INEXACT = Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh",
      "tanh", "exp", "expm1", "log", "log10", "log1p", "pow", "cbrt", "hypot");

  @ArchTest
  static final ArchRule STRICT_MATHS = noClasses().should()
      .accessTargetWhere(Sealed.use("inexact functions of Math",
          target -> target.getOwner().isEquivalentTo(Math.class) && INEXACT.contains(target.getName())))
      .because("StrictMath gives the same bits on every machine");

  @ArchTest
  static final ArchRule POLYGONS_CROSS_ON_A_GRID = noClasses().should()
      .accessTargetWhere(Sealed.use("overlays of floating places", HouseTest::overlaysFloatingPlaces))
      .because("two boards that touch along nearly one line were taken to lie on each other so: cross polygons on whole nanometres");

  private static boolean overlaysFloatingPlaces(CodeUnitAccessTarget target) {
    return target.getOwner().getSimpleName().equals("OverlayNGRobust") || target.getOwner().isAssignableTo("org.locationtech.jts.geom.Geometry")
        && Set.of("intersection", "union", "difference", "symDifference").contains(target.getName());
  }

  @ArchTest
  static final ArchRule NO_DEFAULT_LOCALE = noClasses().should()
      .accessTargetWhere(Sealed.use("what follows the default locale", HouseTest::followsTheDefaultLocale))
      .because("digits and letters are the same everywhere: pass Locale.ROOT");

  private static boolean followsTheDefaultLocale(CodeUnitAccessTarget target) {
    boolean localeGiven = target.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(Locale.class));
    JavaClass owner = target.getOwner();
    if (owner.isEquivalentTo(String.class)) {
      return Set.of("format", "formatted", "toLowerCase", "toUpperCase").contains(target.getName()) && !localeGiven;
    }
    if (owner.isEquivalentTo(Formatter.class)) {
      return target.getName().equals("<init>") && !localeGiven;
    }
    return owner.getPackageName().equals("java.text") && !owner.getSimpleName().endsWith("Symbols")
        && Set.of("<init>", "getInstance", "getIntegerInstance", "getNumberInstance").contains(target.getName())
        && target.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class)
            || type.getSimpleName().endsWith("Symbols"));
  }

  @ArchTest
  static final ArchRule STATES_NEVER_CHANGE =
      fields().that().areStatic().and().doNotHaveModifier(JavaModifier.SYNTHETIC).should().beFinal()
          .because("no setting is shared by threads or kept between jobs");

  @ArchTest
  static final ArchRule OWN_TYPES_OUTSIDE = members().that(areSeenByCallers()).should(showNoTypeOf(
      "org.locationtech.jts", "org.apache.commons.math3")).because("other libraries stay inside");

  @ArchTest
  static final ArchRule NO_BOOLEAN_PARAMETERS = codeUnits().that(areSeenByCallers())
      .and(not(describe("belong to a record", unit -> unit.getOwner().isRecord())))
      .should(notHave("a boolean parameter", unit -> ((JavaCodeUnit) unit).getRawParameterTypes().stream()
          .anyMatch(type -> type.isEquivalentTo(boolean.class) || type.isEquivalentTo(Boolean.class))
          && !unit.getName().equals("equals")))
      .because("a call reads as a sentence");

  @ArchTest
  static final ArchRule CLOSED_TYPES = classes().that().arePublic().and().areNotInterfaces().and().areNotEnums()
      .and().areNotAssignableTo(Throwable.class)
      .and(not(describe("are sealed", HouseTest::isSealed)))
      .should().haveModifier(JavaModifier.FINAL)
      .because("a type that can be extended cannot promise to be immutable");

  @ArchTest
  static final ArchRule NAMED_FACTORIES = constructors().that(areSeenByCallers())
      .and(not(describe("belong to a record or an exception",
          unit -> unit.getOwner().isRecord() || unit.getOwner().isAssignableTo(Throwable.class))))
      .should(notHave("a caller", unit -> true)).because("values are made by static factories: of is exact, from may round")
      .allowEmptyShould(true);

  private static String inside(String name) {
    return "floorcalc." + name + "..";
  }

  private static boolean isSealed(JavaClass type) {
    return type.reflect().isSealed();
  }

  /** A public or protected member of a type that callers can name. */
  private static DescribedPredicate<JavaMember> areSeenByCallers() {
    return describe("are seen by callers", member -> isSeen(member.getModifiers()) && isSeen(member.getOwner()));
  }

  private static boolean isSeen(JavaClass type) {
    return isSeen(type.getModifiers()) && type.getEnclosingClass().map(HouseTest::isSeen).orElse(true);
  }

  private static boolean isSeen(Set<JavaModifier> modifiers) {
    return (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED))
        && !modifiers.contains(JavaModifier.SYNTHETIC);
  }

  private static ArchCondition<JavaMember> showNoTypeOf(String... packages) {
    return new ArchCondition<>("show no type of " + List.of(packages)) {
      @Override
      public void check(JavaMember member, ConditionEvents events) {
        shown(member).map(JavaClass::getBaseComponentType)
            .filter(type -> Stream.of(packages).anyMatch(p -> type.getPackageName().startsWith(p)))
            .forEach(type -> events.add(SimpleConditionEvent.violated(member,
                member.getFullName() + " shows " + type.getName())));
      }
    };
  }

  private static Stream<JavaClass> shown(JavaMember member) {
    Stream<JavaType> types;
    if (member instanceof JavaCodeUnit unit) {
      types = Stream.of(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream(),
          unit.getExceptionTypes().stream(), unit.getTypeParameters().stream().map(JavaType.class::cast)).flatMap(s -> s);
    } else {
      types = Stream.of(((JavaField) member).getType());
    }
    Stream<JavaClass> parents = Stream.concat(member.getOwner().getAllRawSuperclasses().stream(),
        member.getOwner().getAllRawInterfaces().stream());
    return Stream.concat(types.flatMap(type -> type.getAllInvolvedRawTypes().stream()), parents)
        .collect(Collectors.toCollection(LinkedHashSet::new)).stream();
  }

  private static ArchCondition<JavaMember> notHave(String what, Predicate<JavaMember> test) {
    return new ArchCondition<>("not have " + what) {
      @Override
      public void check(JavaMember member, ConditionEvents events) {
        if (test.test(member)) {
          events.add(SimpleConditionEvent.violated(member, member.getFullName() + " has " + what));
        }
      }
    };
  }
}
