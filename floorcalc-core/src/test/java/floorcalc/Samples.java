package floorcalc;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

/**
 * A valid value of a type, for tests that go through all that is public: from a table where it has to be a certain one, else by
 * the type's own constants, constructor or factories, whose arguments are samples in turn.
 */
final class Samples {

  private final Map<Class<?>, Object> known = new HashMap<>();
  private final Set<Class<?>> underway = new HashSet<>();

  Samples() {
    put(boolean.class, true);
    put(int.class, 1);
    put(long.class, 1L);
    put(double.class, 1.0);
    put(Integer.class, 1);
    put(Long.class, 1L);
    put(Double.class, 1.0);
    put(String.class, "one");
    put(CharSequence.class, "100 mm");
    put(Object.class, "one");
    put(BigDecimal.class, new BigDecimal("0.01"));
    put(BigInteger.class, BigInteger.TEN);
    put(RoundingMode.class, RoundingMode.HALF_EVEN);
    put(double[].class, new double[] {1, 2});
    put(long[].class, new long[] {0, 1_000_000_000});
    put(Length.class, Length.ofMillimetres(100));
    put(Point.class, Point.ofMillimetres(0, 0));
    put(Source.class, Source.GIVEN);
    Ring ring = Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0), Point.ofMillimetres(4000, 3000), Point.ofMillimetres(0, 3000));
    put(Ring.class, ring);
    put(Outline.class, Outline.of(ring));
    BoardGoods boards = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    put(BoardGoods.class, boards);
    put(LayingRules.class, RuleSet.COMMON_PRACTICE.forBoard(boards.thickness(), boards.coverWidth()));
    put(Room.class, Room.of("Room", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))")));
    FloorJob job = FloorJob.of("Job", boards).room((Room) known.get(Room.class)).build();
    put(FloorJob.class, job);
    FloorPlan plan = FloorPlanner.plan(job);
    put(FloorPlan.class, plan);
  }

  /** Says which value to take for a type. */
  Samples put(Class<?> type, Object value) {
    known.put(type, value);
    return this;
  }

  /** A value of the type, or nothing if none could be made. */
  Optional<Object> of(Type type) {
    if (type instanceof TypeVariable<?> variable) {
      return variable.getBounds()[0] == Object.class ? Optional.of("one") : of(variable.getBounds()[0]);
    }
    if (type instanceof WildcardType wildcard) {
      return of(wildcard.getUpperBounds()[0]);
    }
    if (type instanceof ParameterizedType generic) {
      Class<?> raw = (Class<?>) generic.getRawType();
      Type first = generic.getActualTypeArguments()[0];
      if (raw == List.class || raw == Iterable.class || raw == java.util.Collection.class) {
        return of(first).map(List::of);
      }
      if (raw == Set.class) {
        return of(first).map(Set::of);
      }
      if (raw == Optional.class) {
        return of(first).map(Optional::of);
      }
      if (raw == Map.class) {
        return of(first).flatMap(key -> of(generic.getActualTypeArguments()[1]).map(value -> Map.of(key, value)));
      }
      if (raw == Calculated.class) {
        return of(first).map(value -> Calculated.of(value, List.of()));
      }
      return ofClass(raw);
    }
    return type instanceof Class<?> plain ? ofClass(plain) : Optional.empty();
  }

  private Optional<Object> ofClass(Class<?> type) {
    if (known.containsKey(type)) {
      return Optional.ofNullable(known.get(type));
    }
    if (type == OptionalInt.class || type == OptionalLong.class || type == OptionalDouble.class) {
      return Optional.of(type == OptionalInt.class ? OptionalInt.of(1) : type == OptionalLong.class ? OptionalLong.of(1)
          : OptionalDouble.of(1));
    }
    if (type.isEnum()) {
      return Optional.of(type.getEnumConstants()[0]);
    }
    if (type.isArray()) {
      return of(type.getComponentType()).map(one -> {
        Object array = java.lang.reflect.Array.newInstance(type.getComponentType(), 1);
        java.lang.reflect.Array.set(array, 0, one);
        return array;
      });
    }
    if (!type.getName().startsWith("floorcalc.") || !underway.add(type)) {
      return Optional.empty();
    }
    Optional<Object> made = make(type);
    underway.remove(type);
    known.put(type, made.orElse(null));
    return made;
  }

  private Optional<Object> make(Class<?> type) {
    if (type.isRecord()) {
      Optional<Object> made = call(canonical(type), null);
      if (made.isPresent()) {
        return made;
      }
    }
    for (var field : type.getFields()) {
      if (Modifier.isStatic(field.getModifiers()) && field.getType() == type) {
        try {
          return Optional.of(field.get(null));
        } catch (IllegalAccessException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    List<Method> factories = new ArrayList<>(Arrays.asList(type.getMethods()));
    factories.removeIf(method -> !Modifier.isStatic(method.getModifiers()) || !gives(method.getGenericReturnType(), type));
    factories.sort(Comparator.comparing(Method::getParameterCount).thenComparing(Method::toGenericString));
    for (Method factory : factories) {
      Optional<Object> made = call(factory, null).map(value -> value instanceof Calculated<?> calculated
          && type != Calculated.class ? calculated.value() : value);
      if (made.isPresent()) {
        return made;
      }
    }
    return Optional.empty();
  }

  private static boolean gives(Type returned, Class<?> type) {
    return returned == type || returned instanceof ParameterizedType generic && (generic.getRawType() == type
        || generic.getRawType() == Calculated.class && generic.getActualTypeArguments()[0] == type);
  }

  static Constructor<?> canonical(Class<?> type) {
    try {
      return type.getDeclaredConstructor(
          Arrays.stream(type.getRecordComponents()).map(RecordComponent::getType).toArray(Class<?>[]::new));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What a call with samples for every argument gives; nothing if there are none or they are refused. */
  Optional<Object> call(java.lang.reflect.Executable unit, Object on) {
    return arguments(unit).flatMap(arguments -> {
      try {
        return Optional.ofNullable(invoke(unit, on, arguments));
      } catch (InvocationTargetException e) {
        return Optional.empty();
      }
    });
  }

  /** Samples for every argument, or nothing if one is missing. */
  Optional<Object[]> arguments(java.lang.reflect.Executable unit) {
    List<Object> arguments = new ArrayList<>();
    for (Type type : unit.getGenericParameterTypes()) {
      Optional<Object> sample = of(type);
      if (sample.isEmpty()) {
        return Optional.empty();
      }
      arguments.add(sample.get());
    }
    return Optional.of(arguments.toArray());
  }

  static Object invoke(java.lang.reflect.Executable unit, Object on, Object... arguments) throws InvocationTargetException {
    try {
      return unit instanceof Constructor<?> constructor ? constructor.newInstance(arguments) : ((Method) unit).invoke(on, arguments);
    } catch (IllegalAccessException | InstantiationException e) {
      throw new IllegalStateException(unit.toString(), e);
    }
  }
}
