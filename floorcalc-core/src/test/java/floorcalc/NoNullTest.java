package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.rules.LayingRules;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No null goes in: every public constructor, factory and method of the core is called with one argument null at a time, the
 * others valid, and must refuse it at once with a {@link NullPointerException} that names the parameter. What could not be
 * called, for want of a sample of its type or of another argument, is counted below.
 */
class NoNullTest {

  /** Each looked through by eye instead. */
  private static final List<String> NOT_REACHED = List.of(
      "bays.BayParts.of(Outline, List)",
      "bays.BaySplit.of(Outline, Direction, List, LayingRules)",
      "fittings.Notch(Kind, Set, Ring, List)",
      "no LevelPlane: levels.LevelPlane.heightAt(Point)",
      "no LevelPlane: levels.LevelPlane.residual(SpotLevel)",
      "materials.BoardMoney.of(PackOrder, List, Price, WasteLedger, int, BigDecimal)",
      "movement.BreakAdvice.ExpansionBreak(JoinedOpening, Length)",
      "movement.ContinuousFloor.of(List, List, Direction)",
      "plan.FloorPlan(String, List, List, Order, WasteLedger, List, List, List, List, List, List, List, Optional, List)",
      "plan.Room(String, Outline, List, List, Subfloor, SiteReadings, Optional, List, Optional, RoomUse)",
      "plan.RoomBreak(String, ExpansionBreak, Length)",
      "no TrimCutting: trims.TrimCutting.cutList(String, String)");

  private final Samples samples = new Samples();
  private final List<String> failures = new ArrayList<>();
  private final List<String> unreached = new ArrayList<>();
  private int tried;

  @Test
  void everyNullIsRefusedByName() {
    for (Class<?> type : PublicApi.types()) {
      Optional<Object> sample = samples.of(type);
      units(type).forEach(unit -> {
        if (unit instanceof Method && !Modifier.isStatic(unit.getModifiers()) && sample.isEmpty()) {
          unreached.add("no " + type.getSimpleName() + ": " + name(unit));
        } else {
          refusesNull(unit, sample.orElse(null));
        }
      });
    }
    assertThat(failures).as("take or pass on null").isEmpty();
    assertThat(tried).isGreaterThan(1600);
    assertThat(unreached).as("what this test cannot reach, for want of a sample").isSubsetOf(NOT_REACHED);
  }

  @Test
  void nothingNullComesBack() throws InvocationTargetException {
    int asked = 0;
    for (Class<?> type : PublicApi.types()) {
      Optional<Object> sample = samples.of(type);
      for (Method method : type.getDeclaredMethods()) {
        boolean of = Modifier.isStatic(method.getModifiers()) || sample.isPresent();
        if (of && Modifier.isPublic(method.getModifiers()) && method.getParameterCount() == 0 && method.getReturnType() != void.class) {
          try {
            assertThat(Samples.invoke(method, sample.orElse(null))).as(name(method)).isNotNull();
            asked++;
          } catch (InvocationTargetException e) {
            assertThat(e.getCause()).as(name(method)).isNotInstanceOf(NullPointerException.class);
          }
        }
      }
    }
    assertThat(asked).isGreaterThan(1000);
  }

  private static Stream<Executable> units(Class<?> type) {
    List<Executable> units = new ArrayList<>();
    for (Constructor<?> constructor : type.getDeclaredConstructors()) {
      if (Modifier.isPublic(constructor.getModifiers())) {
        units.add(constructor);
      }
    }
    for (Method method : type.getDeclaredMethods()) {
      if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !method.getName().equals("equals")
          && !(type.isEnum() && method.getName().equals("valueOf"))) {
        units.add(method);
      }
    }
    return units.stream().filter(unit -> Arrays.stream(unit.getParameterTypes()).anyMatch(parameter -> !parameter.isPrimitive()))
        .sorted(Comparator.comparing(Executable::toGenericString));
  }

  private void refusesNull(Executable unit, Object on) {
    Parameter[] parameters = unit.getParameters();
    Optional<Object[]> arguments = samples.arguments(unit);
    for (int i = 0; i < parameters.length; i++) {
      if (parameters[i].getType().isPrimitive()) {
        continue;
      }
      Object[] given = arguments.map(Object[]::clone).orElse(null);
      if (given == null) {
        if (parameters.length > 1) {
          unreached.add(name(unit));
          return;
        }
        given = new Object[1];
      }
      given[i] = null;
      tried++;
      String what = name(unit) + ", " + parameters[i].getName() + " null: ";
      try {
        Samples.invoke(unit, on, given);
        failures.add(what + "taken");
      } catch (InvocationTargetException e) {
        Throwable refused = e.getCause();
        if (!(refused instanceof NullPointerException) || !names(refused.getMessage(), parameters[i])) {
          failures.add(what + refused);
        }
      }
    }
  }

  /** The value of a rule is refused by the name of its rule. */
  private static boolean names(String message, Parameter parameter) {
    return message != null && (!parameter.isNamePresent() || message.equals(LayingRules.EXPANSION_GAP.name())
        || Pattern.compile("\\b" + Pattern.quote(parameter.getName()) + "\\b").matcher(message).find());
  }

  private static String name(Executable unit) {
    return unit.getDeclaringClass().getCanonicalName().substring("floorcalc.".length())
        + (unit instanceof Constructor<?> ? "" : "." + unit.getName())
        + "(" + String.join(", ", Arrays.stream(unit.getParameterTypes()).map(Class::getSimpleName).toList()) + ")";
  }
}
