package floorcalc;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import java.util.function.Predicate;

/** What the core never does: it computes, and touches nothing but its arguments. {@link SealedTest} plants what the rules must catch. */
final class Sealed {
  /** The compiler writes these for lambdas, joined texts and records; nobody can call them otherwise than by name. */
  private static final Set<String> BY_THE_COMPILER = Set.of("java.lang.invoke.LambdaMetafactory", "java.lang.invoke.StringConcatFactory",
      "java.lang.invoke.MethodHandles$Lookup", "java.lang.invoke.CallSite", "java.lang.invoke.MethodHandle", "java.lang.invoke.MethodType",
      "java.lang.invoke.SerializedLambda", "java.lang.runtime.ObjectMethods");

  /** What the serial form of a value asks for. Reading and writing streams is left to the caller. */
  private static final Set<String> SERIAL_FORM = Set.of("java.io.Serializable", "java.io.InvalidObjectException", "java.io.ObjectStreamException");

  static final ArchRule SILENT_AND_SEALED = noClasses().should(
      dependOnClassesThat(resideInAnyPackage("java.io..", "java.net..", "java.nio.file..", "java.nio.channels..",
          "java.lang.reflect..", "java.lang.ref..", "java.lang.instrument..", "java.lang.management..", "java.lang.module..",
          "java.util.logging..", "java.util.prefs..", "java.util.zip..", "java.util.jar..", "java.rmi..", "java.sql..", "java.awt..",
          "org.slf4j..", "org.apache.commons.logging..", "javax..", "sun..", "com.sun..", "jdk..")
          .and(not(describe("the serial form of values", c -> SERIAL_FORM.contains(c.getName()))))))
      .orShould(dependOnClassesThat(resideInAnyPackage("java.lang.invoke..", "java.lang.runtime..")
          .and(not(describe("what the compiler writes", c -> BY_THE_COMPILER.contains(c.getName()))))))
      .because("the core neither logs nor reads nor writes nor reflects");

  static final ArchRule NOTHING_FROM_THE_MACHINE = noClasses().should()
      .accessTargetWhere(use("the clock, the machine's settings, its random numbers or reflection", Sealed::asksTheMachine))
      .orShould(dependOnClassesThat(describe("are threads, processes, loaders of classes and services, or chance of the machine", Sealed::isOfTheMachine)))
      .orShould().accessField(System.class, "out").orShould().accessField(System.class, "err")
      .orShould().accessField(System.class, "in")
      .because("the same job gives the same bytes on every machine, and an embedder keeps its threads");

  private Sealed() {}

  private static boolean asksTheMachine(CodeUnitAccessTarget target) {
    String name = target.getName();
    return switch (target.getOwner().getName()) {
      case "java.lang.System" -> !Set.of("arraycopy").contains(name);
      case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
      case "java.lang.Class" -> !Set.of("getSimpleName", "getName", "cast", "isInstance", "desiredAssertionStatus", "getEnumConstants", "isEnum",
          "isAssignableFrom", "hashCode", "equals", "toString").contains(name);
      case "java.lang.Object" -> Set.of("wait", "notify", "notifyAll", "finalize").contains(name);
      case "java.lang.invoke.MethodHandles" -> true;
      case "java.util.Locale" -> Set.of("getDefault", "setDefault", "getAvailableLocales").contains(name);
      case "java.util.TimeZone" -> Set.of("getDefault", "setDefault").contains(name);
      case "java.nio.charset.Charset" -> name.equals("defaultCharset");
      case "java.util.Random" -> name.equals("<init>") && target.getRawParameterTypes().isEmpty();
      case "java.util.UUID" -> name.equals("randomUUID");
      case "java.util.Collection", "java.util.List", "java.util.Set", "java.util.ArrayList" -> name.equals("parallelStream");
      default -> name.equals("now") && target.getOwner().getPackageName().equals("java.time")
          || Set.of("parallel", "parallelStream", "parallelSort", "parallelPrefix", "parallelSetAll").contains(name);
    };
  }

  private static boolean isOfTheMachine(JavaClass type) {
    String name = type.getName();
    return name.startsWith("java.util.concurrent.") && !name.startsWith("java.util.concurrent.atomic.")
        || name.startsWith("java.security.") || Set.of("java.lang.Thread", "java.lang.ThreadGroup", "java.lang.ThreadLocal",
            "java.lang.InheritableThreadLocal", "java.lang.Runtime", "java.lang.Process", "java.lang.ProcessBuilder", "java.lang.ProcessHandle",
            "java.lang.ClassLoader", "java.lang.Module", "java.lang.ModuleLayer", "java.lang.StackWalker", "java.util.Timer",
            "java.util.ServiceLoader", "java.util.ResourceBundle", "java.util.Scanner", "java.util.WeakHashMap").contains(name);
  }

  /** A call of such a method or constructor, or a reference to it such as {@code Math::sin}. */
  static DescribedPredicate<JavaAccess<?>> use(String what, Predicate<CodeUnitAccessTarget> test) {
    return describe(what, access -> access.getTarget() instanceof CodeUnitAccessTarget target && test.test(target));
  }
}
