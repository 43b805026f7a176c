package floorcalc;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.deviations.AngleLimit;
import floorcalc.deviations.AngleSet;
import floorcalc.drawing.LevelsDrawing;
import floorcalc.drawing.SurveyDrawing;
import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.Notch;
import floorcalc.fittings.PieceNotches;
import floorcalc.flatness.EdgePlacement;
import floorcalc.flatness.FNumberClass;
import floorcalc.flatness.FreeMovementClass;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.Straightedge;
import floorcalc.levels.Levels;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.movement.ContinuousBay;
import floorcalc.movement.ContinuousFloor;
import floorcalc.movement.JoinedRoom;
import floorcalc.movement.Species;
import floorcalc.movement.SpeciesTable;
import floorcalc.outline.Direction;
import floorcalc.outline.Line;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rows.TrimCover;
import floorcalc.rows.WallFace;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.site.Readiness;
import floorcalc.site.SiteFloor;
import floorcalc.site.SiteReadings;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.RollGoods;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
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
import java.util.Collections;
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
    put(FloorJobBuilder.class, FloorJob.of("Job", boards));
    FloorPlan plan = FloorPlanner.plan(job);
    put(FloorPlan.class, plan);
    put(Area.class, Area.ofSquareMetres("12"));
    put(Price.class, new Price(BigDecimal.TEN, "EUR"));
    put(RuleKey.class, LayingRules.EXPANSION_GAP);
    put(RuleValue.class, job.rules().get(LayingRules.EXPANSION_GAP));
    put(Line.class, new Line(Point.ofMillimetres(0, 0), Point.ofMillimetres(1000, 0)));
    put(AngleLimit.class, AngleSet.all().get(0).limits().get(0));
    put(BarGoods.class, BarGoods.of("bar", List.of(Length.ofMillimetres(2400)), Length.ofMillimetres(16)));
    put(RollGoods.class, RollGoods.underlay("felt", Length.ofMillimetres(1000), Length.ofMillimetres(10_000)));
    List<Run> runs = Run.equalRows(3, Length.ofMillimetres(4000));
    put(Run.class, runs.get(0));
    PieceWanted piece = PieceWanted.of(0, Length.ofMillimetres(500), Length.ZERO, Length.ofMillimetres(185), Ends.values()[0]);
    put(PieceWanted.class, piece);
    put(CuttingPlan.class, CuttingPlan.of(List.of(piece), boards, job.rules()));
    Levels levels = Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(300), Length.ofMillimetres(300),
        List.of(heights(0, 1, 0), heights(1, 0, 1), heights(0, 1, 0)));
    put(Levels.class, levels);
    put(LevelsDrawing.class, LevelsDrawing.of(levels));
    HeightProfile profile = HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), heights(0, 1, 0, 2, 1));
    put(HeightProfile.class, profile);
    put(ProfilePoint.class, new ProfilePoint(Length.ZERO, Length.ZERO));
    put(Straightedge.class, Straightedge.of(Length.ofMillimetres(600)));
    put(EdgePlacement.class, Straightedge.of(Length.ofMillimetres(600)).at(profile, Length.ZERO));
    put(FNumberClass.class, FNumberClass.all().get(0));
    put(FreeMovementClass.class, FreeMovementClass.all().get(0));
    put(Species.class, SpeciesTable.WOOD_HANDBOOK.species().get(0));
    put(Network.class, Network.of(List.of(NetworkPoint.held("a", 0, 0), NetworkPoint.held("b", 1, 0), NetworkPoint.about("c", 0, 1)),
        List.of(Observation.distance("a", "c", 1, 0.001), Observation.distance("b", "c", 1.41, 0.001))));
    put(Adjustment.class, ((Network) known.get(Network.class)).adjust());
    put(Observation.class, Observation.distance("a", "c", 1, 0.001));
    put(AdjustedObservation.class, ((Adjustment) known.get(Adjustment.class)).observations().get(0));
    Length wall = Length.ofMillimetres(3000);
    Survey survey = Survey.of(Collections.nCopies(4, new SurveyWall(wall, Turn.LEFT, Length.ZERO)));
    put(Survey.class, survey);
    put(SurveyReport.class, SurveyReport.of(survey).value());
    put(SurveyDrawing.class, SurveyDrawing.of(SurveyReport.of(survey).value()));
    put(Tie.class, new Tie(1, 3, Length.ofMillimetres(4243)));
    JoinedRoom joined = new JoinedRoom("one", Outline.of(ring));
    put(JoinedRoom.class, joined);
    put(ContinuousFloor.class, ContinuousFloor.of(List.of(joined), List.of(), Direction.ALONG_X));
    put(ContinuousBay.class, ContinuousFloor.of(List.of(joined), List.of(), Direction.ALONG_X).bays(List.of()).get(0));
    SiteFloor floor = SiteFloor.of("one", Area.ofSquareMetres("12"), boards);
    put(SiteFloor.class, floor);
    put(Readiness.class, Readiness.of(floor, SiteReadings.NONE).value());
    put(WallFace.class, WallFace.of(List.of(new WallFace.Offset(Length.ZERO, Length.ofMillimetres(500)),
        new WallFace.Offset(Length.ofMillimetres(2000), Length.ofMillimetres(490)))));
    put(TrimCover.class, new TrimCover(Length.ofMillimetres(16), Length.ofMillimetres(3), Length.ofMillimetres(8)));
    put(Notch.class, PieceNotches.of(BoardPiece.of("one", Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(500, 0),
        Point.ofMillimetres(500, 100), Point.ofMillimetres(400, 100), Point.ofMillimetres(400, 185), Point.ofMillimetres(0, 185)))).value()
        .notches().get(0));
  }

  private static List<Length> heights(int... millimetres) {
    return Arrays.stream(millimetres).mapToObj(Length::ofMillimetres).toList();
  }

  /** Says which value to take for a type. */
  Samples put(Class<?> type, Object value) {
    known.put(type, value);
    return this;
  }

  /** A value of the type, or nothing if none could be made. */
  Optional<Object> of(Type type) {
    if (type instanceof TypeVariable<?> variable) {
      return of(variable.getBounds()[0] == Object.class ? Length.class : variable.getBounds()[0]);
    }
    if (type instanceof WildcardType wildcard) {
      return of(wildcard.getUpperBounds()[0]);
    }
    if (type instanceof ParameterizedType generic) {
      Class<?> raw = (Class<?>) generic.getRawType();
      Type first = generic.getActualTypeArguments()[0];
      if (raw == List.class || raw == Iterable.class || raw == java.util.Collection.class) {
        return first == Step.class ? Optional.of(List.of()) : of(first).map(List::of);
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
