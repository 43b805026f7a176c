package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/**
 * Values can be shared by threads because nothing in them changes: every field is final and of a type that cannot change, lists
 * handed out cannot be written to, arrays are handed out as copies. And one job planned by many threads at once gives one plan.
 */
class ImmutableTest {

  private static final Set<Class<?>> FIXED = Set.of(String.class, Integer.class, Long.class, Double.class, Boolean.class,
      BigDecimal.class, BigInteger.class, MathContext.class, Optional.class, OptionalInt.class, OptionalLong.class, OptionalDouble.class, Class.class);

  /** Of the geometry library, which only ever makes what is asked for and keeps nothing: allowed as private constants. */
  private static final Set<String> STATELESS = Set.of("org.locationtech.jts.geom.GeometryFactory", "org.locationtech.jts.geom.PrecisionModel");

  /** What a type keeps to itself and hands out as a view or as a copy. */
  private static final Set<Class<?>> GUARDED = Set.of(List.class, Set.class, Map.class, java.util.SortedMap.class,
      java.util.NavigableMap.class, java.util.EnumMap.class);

  @Test
  void everyFieldIsFinalAndOfATypeThatCannotChange() {
    List<String> found = new ArrayList<>();
    for (Class<?> type : PublicApi.types()) {
      if (type == FloorJobBuilder.class) { // says that it is not thread-safe
        continue;
      }
      for (Field field : type.getDeclaredFields()) {
        String name = type.getSimpleName() + "." + field.getName() + ": " + field.getGenericType().getTypeName();
        if (field.isSynthetic()) {
          continue;
        }
        if (!Modifier.isFinal(field.getModifiers())) {
          found.add(name + " is not final");
        }
        if (!cannotChange(field)) {
          found.add(name + " may change");
        }
      }
    }
    assertThat(found).isEmpty();
  }

  private static boolean cannotChange(Field field) {
    Class<?> type = field.getType();
    if (type.isArray() || GUARDED.contains(type)) {
      return Modifier.isPrivate(field.getModifiers()) || !type.isArray() && Modifier.isStatic(field.getModifiers());
    }
    if (STATELESS.contains(type.getName())) {
      return Modifier.isPrivate(field.getModifiers()) && Modifier.isStatic(field.getModifiers());
    }
    return type.isPrimitive() || type.isEnum() || FIXED.contains(type) || type.getName().startsWith("floorcalc.")
        || type == Object.class && field.getDeclaringClass().getPackageName().equals("floorcalc.working")
        || field.getGenericType() instanceof java.lang.reflect.TypeVariable<?>
        || type == java.util.regex.Pattern.class || type.getName().startsWith("java.util.function.") || type == java.util.Comparator.class;
  }

  @Test
  void whatIsHandedOutCannotBeWrittenTo() throws IllegalAccessException {
    Samples samples = new Samples();
    List<String> writable = new ArrayList<>();
    int asked = 0;
    for (Class<?> type : PublicApi.types()) {
      Optional<Object> sample = samples.of(type);
      for (Field field : type.getFields()) {
        if (Collection.class.isAssignableFrom(field.getType()) || Map.class.isAssignableFrom(field.getType())) {
          if (isWritable(field.get(null))) {
            writable.add(field.toString());
          }
        }
      }
      for (Method method : type.getDeclaredMethods()) {
        if (!Modifier.isPublic(method.getModifiers()) || method.getParameterCount() > 0 || method.isSynthetic()
            || sample.isEmpty() && !Modifier.isStatic(method.getModifiers())) {
          continue;
        }
        Class<?> given = method.getReturnType();
        if (given.isArray() && !type.isEnum()) {
          assertThat(handedOut(method, sample.orElse(null))).as(method.toString()).isNotSameAs(handedOut(method, sample.orElse(null)));
          asked++;
        } else if (Collection.class.isAssignableFrom(given) || Map.class.isAssignableFrom(given)) {
          if (isWritable(handedOut(method, sample.orElse(null)))) {
            writable.add(method.toString());
          }
          asked++;
        }
      }
    }
    assertThat(writable).isEmpty();
    assertThat(asked).isGreaterThan(150);
  }

  private static Object handedOut(Method method, Object on) {
    try {
      return Samples.invoke(method, on);
    } catch (InvocationTargetException e) {
      return Collections.emptyList(); // refused: nothing was handed out
    }
  }

  @SuppressWarnings("unchecked")
  private static boolean isWritable(Object held) {
    try {
      if (held instanceof Map<?, ?> map) {
        ((Map<Object, Object>) map).put("one", "one");
      } else {
        ((Collection<Object>) held).add("one");
      }
      return true;
    } catch (UnsupportedOperationException e) {
      return false;
    } catch (ClassCastException e) {
      return true; // sorted: it would take what fits
    }
  }

  @Test
  void oneJobSharedByManyThreadsGivesOnePlan() throws Exception {
    Outline bent = Wkt.parse("POLYGON ((0 0, 5210 0, 5195 2620, 2600 2620, 2600 4010, 0 4005, 0 0))");
    BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    FloorJob job = FloorJob.of("Shared", boards).room(Room.of("Study", bent)).room(Room.of("Den", Outline.rectangle(
        Length.parse("3.1 m"), Length.parse("2.4 m")))).build();
    FloorPlan alone = FloorPlanner.plan(job);
    int threads = 8;
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<FloorPlan>> plans = pool.invokeAll(Collections.nCopies(2 * threads, (Callable<FloorPlan>) () -> FloorPlanner.plan(job)));
      for (Future<FloorPlan> plan : plans) {
        assertThat(plan.get()).isEqualTo(alone);
        assertThat(plan.get().toString()).isEqualTo(alone.toString());
      }
    } finally {
      pool.shutdown();
    }
  }
}
