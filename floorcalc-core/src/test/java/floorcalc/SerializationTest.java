package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.flatness.GapReading;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.FillerGoods;
import floorcalc.levels.SpotLevel;
import floorcalc.materials.FillerStock;
import floorcalc.materials.FloorGoods;
import floorcalc.materials.GlueGoods;
import floorcalc.materials.SealantGoods;
import floorcalc.materials.WedgeGoods;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.MoistureLimits;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.Pinning;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.PlanFigures;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.site.HeightLine;
import floorcalc.site.SiteReadings;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.TapeGoods;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.lang.reflect.Field;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A job and its plan travel as bytes and come back as they were; bytes that were tampered with are refused. */
class SerializationTest {

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** A job in which everything that can be stated is stated. */
  private static FloorJob everything() {
    BoardGoods boards = BoardGoods.of(mm("2200"), mm("185"), mm("14"), 6).withMeasuredStack(10, mm("1853")).withSpecies("oak, white")
        .withPackMass(new Mass(new BigDecimal("18.5"))).withPackPrice(new Price(new BigDecimal("95.40"), "EUR"));
    Optional<UnitPrice> price = Optional.of(new UnitPrice(new Price(new BigDecimal("3.10"), "EUR"), UnitPrice.Per.UNIT));
    BarGoods bar = BarGoods.of("bar", List.of(mm("2400"), mm("2000")), mm("16"));
    FloorGoods goods = FloorGoods.NONE
        .withLayers(List.of(RollGoods.barrier("film", mm("2000"), mm("25000"), Lap.BUTT).withThickness(mm("0.2"))
            .withPermeance(new BigDecimal("0.1"))))
        .withSkirting(bar).withQuadrant(bar).withProfile("T", bar).withProfile("end", bar)
        .withTape(new TapeGoods("tape", mm("50000"), TapeGoods.Along.SEAMS, price))
        .withSealant(new SealantGoods("sealant", new BigDecimal("310"), new BigDecimal("0.1"), mm("10"), mm("10"), mm("5000"), price))
        .withGlue(new GlueGoods("glue", new BigDecimal("500"), new BigDecimal("8"), price))
        .withWedges(new WedgeGoods("wedges", 30, mm("500"), price))
        .withFiller(new FillerStock("filler", FillerGoods.of(new BigDecimal("1.7"), new Mass(new BigDecimal("25"))).inLayers(mm("1"), mm("20")),
            price))
        .withCasing(mm("60")).withPacksBeyond(1, new BigDecimal("0.5")).withStackHeight(mm("1200"));
    SiteReadings site = SiteReadings.NONE.withAir(air("21", "50")).withSeasons(air("20", "35"), air("22", "65"))
        .withSubfloorMoisture(List.of(MoistureReading.of(MoistureMethod.CM, "1.8").at(Point.ofMillimetres(500, 500)).depth(mm("20")).named("door")))
        .withBoardMoisture(List.of(Percent.of("8"), Percent.of("8.5"))).withDaysInRoom(new BigDecimal("3")).withPacksClosed()
        .withLines(List.of(HeightLine.ofEqualSpacing("A", mm("300"), List.of(mm("0"), mm("1"), mm("0"), mm("1")))))
        .withHeights(List.of(SpotLevel.of(mm("100"), mm("100"), mm("1"))))
        .withStraightedge(List.of(new GapReading(mm("2000"), mm("1"), "window")))
        .withTrimCover(mm("14")).withPinning(Pinning.found(List.of(new Pinning.Fixing(Pinning.FixedBy.GLUE, "door"))))
        .withFlatness(ToleranceSet.of("own", "own floor", List.of(SpanLimit.of(mm("2000"), mm("3"), Source.GIVEN))))
        .withAirLimits(ClimateLimits.NF_DTU_51_2).withSubfloorLimits(MoistureLimits.NWFA_GUIDELINES)
        .withBoardLimits(BoardMoistureLimits.of("own", Percent.of("7"), Percent.of("9"), Source.GIVEN));
    Point from = Point.ofMillimetres(1000, 0);
    Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0), (2000 2000, 2000 2100, 2100 2100, 2100 2000, 2000 2000))"))
        .withDoors(List.of(new Door("D1", from, Point.ofMillimetres(1900, 0), "hall", Beyond.aboveSubfloor("tiles", mm("12"))).withLeaf(mm("25"))))
        .withPipes(List.of(new Pipe(Point.ofMillimetres(3000, 3000), mm("15")))).withSite(site);
    Room den = Room.of("Den", surveyed());
    return FloorJob.of("Everything", boards).room(study).room(den).goods(goods)
        .rules(floorcalc.rules.RuleSet.COMMON_PRACTICE.forBoard(mm("14"), mm("185")).with(LayingRules.EXPANSION_GAP, mm("12"), Source.GIVEN))
        .measuredBoards(new MeasuredBoards(DeviationReadings.of(boards).with(Deviation.WIDTH, List.of(mm("185.1"), mm("184.9")))
            .over(Area.ofSquareMetres("20")).atMoisture(new BigDecimal("8")), DeviationSet.all(floorcalc.deviations.Stage.GOODS).get(0)))
        .build();
  }

  private static AirClimate air(String celsius, String humidity) {
    return AirClimate.of(Temperature.celsius(celsius), Percent.of(humidity));
  }

  private static Calculated<SurveyReport> surveyed() {
    return SurveyReport.of(Survey.of(List.of(wall("3000"), wall("2500"), wall("3000"), wall("2500")))
        .withTies(List.of(new Tie(1, 3, mm("3905")), new Tie(2, 4, mm("3905")))));
  }

  private static SurveyWall wall(String length) {
    return new SurveyWall(mm(length), Turn.LEFT, Length.ZERO);
  }

  @Test
  void aJobComesBackEqualAndIsPlannedTheSame() throws Exception {
    FloorJob job = everything();
    FloorJob back = roundTrip(job);
    assertThat(back).isNotSameAs(job).isEqualTo(job).hasSameHashCodeAs(job);
    FloorPlan plan = FloorPlanner.plan(job);
    assertThat(FloorPlanner.plan(back)).isEqualTo(plan);
  }

  @Test
  void aPlanComesBackEqualWithItsFiguresAndItsWorking() throws Exception {
    FloorPlan plan = FloorPlanner.plan(everything());
    FloorPlan back = roundTrip(plan);
    assertThat(back).isEqualTo(plan);
    assertThat(back.working().stream().flatMap(worked -> worked.steps().stream()).map(floorcalc.working.Step::explain))
        .containsExactlyElementsOf(plan.working().stream().flatMap(worked -> worked.steps().stream())
            .map(floorcalc.working.Step::explain).toList());
    PlanFigures figures = plan.figures().orElseThrow();
    assertThat(roundTrip(figures)).isEqualTo(figures);
    PlanFigures oneRow = new PlanFigures(Optional.empty(), 0, 0, 1, Length.ZERO);
    assertThat(roundTrip(oneRow)).isEqualTo(oneRow);
  }

  @Test
  void everySerializableTypeOfWhichThereIsASampleComesBackEqual() throws Exception {
    Samples samples = new Samples().put(Calculated.class, surveyed());
    int tried = 0;
    for (Class<?> type : PublicApi.types()) {
      Optional<Object> sample = Serializable.class.isAssignableFrom(type) && !Throwable.class.isAssignableFrom(type)
          ? samples.of(type) : Optional.empty();
      if (sample.isPresent() && !(type.isEnum())) {
        assertThat(roundTrip(sample.get())).as(type.getName()).isEqualTo(sample.get());
        tried++;
      }
    }
    assertThat(tried).isGreaterThan(80);
  }

  @Test
  void publishedSetsStayThemselves() throws Exception {
    for (ToleranceSet set : ToleranceSet.all()) {
      assertThat(roundTrip(set)).isSameAs(set);
    }
    for (MoistureLimits set : MoistureLimits.all()) {
      assertThat(roundTrip(set)).isSameAs(set);
    }
    for (ClimateLimits set : ClimateLimits.all()) {
      assertThat(roundTrip(set)).isSameAs(set);
    }
    for (DeviationSet set : DeviationSet.all()) {
      assertThat(roundTrip(set)).isEqualTo(set);
    }
    assertThat(roundTrip(LayingRules.SAW_KERF)).isSameAs(LayingRules.SAW_KERF);
  }

  @Test
  void whatAJobAndAPlanHoldIsSerializable() {
    Set<Class<?>> held = new LinkedHashSet<>();
    List.of(FloorJob.class, FloorPlan.class, PlanFigures.class).forEach(type -> hold(type, held));
    assertThat(held).hasSizeGreaterThan(90).allSatisfy(type -> assertThat(Serializable.class).isAssignableFrom(type));
  }

  /** The types of all fields that are written, and of theirs. */
  private static void hold(Type type, Set<Class<?>> held) {
    if (type instanceof ParameterizedType generic) {
      hold(generic.getRawType(), held);
      Arrays.stream(generic.getActualTypeArguments()).forEach(argument -> hold(argument, held));
    } else if (type instanceof WildcardType wildcard) {
      hold(wildcard.getUpperBounds()[0], held);
    } else if (type instanceof GenericArrayType array) {
      hold(array.getGenericComponentType(), held);
    } else if (type instanceof Class<?> one && !(type instanceof TypeVariable<?>)) {
      Class<?> plain = one.isArray() ? one.getComponentType() : one;
      if (!plain.isPrimitive() && !Set.of(List.class, Map.class, Set.class, Optional.class, Object.class).contains(plain) && held.add(plain)
          && plain.getName().startsWith("floorcalc.")) {
        Arrays.stream(plain.getDeclaredFields())
            .filter(field -> !Modifier.isStatic(field.getModifiers()) && !Modifier.isTransient(field.getModifiers()))
            .map(Field::getGenericType).forEach(field -> hold(field, held));
      }
    }
  }

  /** No class of ours takes over what stands in the bytes; an optional part has no serial form of its own. */
  @Test
  void nothingIsReadUnchecked() {
    for (Class<?> type : PublicApi.types()) {
      if (!Serializable.class.isAssignableFrom(type) || type.isEnum() || Throwable.class.isAssignableFrom(type)) {
        continue;
      }
      if (type.isRecord()) {
        if (Arrays.stream(type.getRecordComponents()).anyMatch(component -> component.getType() == Optional.class)) {
          assertThat(type.getDeclaredMethods()).as(type.getName()).anyMatch(method -> method.getName().equals("writeReplace"));
        }
      } else if (!Set.of("Length", "Point", "Angle").contains(type.getSimpleName())) { // any whole number will do
        assertThat(type.getDeclaredMethods()).as(type.getName()).anyMatch(method -> method.getName().equals("readResolve"));
      }
    }
  }

  @Test
  void tamperedBytesAreRefused() throws Exception {
    Pipe pipe = new Pipe(Point.ofMillimetres(7, 9), Length.ofNanometres(15_000_001));
    assertThat(read(replaced(bytes(pipe), 15_000_001, 15_000_002))).isEqualTo(new Pipe(pipe.at(), Length.ofNanometres(15_000_002)));
    assertThatThrownBy(() -> read(replaced(bytes(pipe), 15_000_001, -1))).rootCause()
        .hasMessage("the diameter of a pipe must be more than 0 mm, but was -0.000001 mm");
    BoardGoods boards = BoardGoods.of(mm("2200"), Length.ofNanometres(185_000_001), mm("14"), 6);
    assertThatThrownBy(() -> read(replaced(bytes(boards), 185_000_001, 0)))
        .hasMessage("cover width must be more than 0 mm, but was 0 mm");
    LayingRules rules = everything().rules().with(LayingRules.EXPANSION_GAP, Length.ofNanometres(12_000_001), Source.GIVEN);
    assertThatThrownBy(() -> read(replaced(bytes(rules), 12_000_001, 12_000_000_001L))).rootCause()
        .hasMessageContaining("expansionGap must be from 0 mm to 100 mm, but was 12000.000001 mm");
    RollGoods roll = RollGoods.underlay("felt", Length.ofNanometres(1_000_000_001), mm("10000"));
    assertThatThrownBy(() -> read(replaced(bytes(roll), 1_000_000_001, 1))).hasMessageContaining("width of a roll must be from");
  }

  private static byte[] replaced(byte[] bytes, long number, long by) {
    byte[] sought = ByteBuffer.allocate(Long.BYTES).putLong(number).array();
    int found = -1;
    for (int i = 0; i + sought.length <= bytes.length; i++) {
      if (Arrays.equals(Arrays.copyOfRange(bytes, i, i + sought.length), sought)) {
        assertThat(found).as("stands once").isNegative();
        found = i;
      }
    }
    assertThat(found).as("stands once").isPositive();
    byte[] copy = bytes.clone();
    ByteBuffer.wrap(copy).putLong(found, by);
    return copy;
  }

  @SuppressWarnings("unchecked")
  private static <T> T roundTrip(T value) throws IOException, ClassNotFoundException {
    return (T) read(bytes(value));
  }

  private static byte[] bytes(Object value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }
}
