package floorcalc.site;

import static floorcalc.site.Sites.READY;
import static floorcalc.site.Sites.air;
import static floorcalc.site.Sites.cm;
import static floorcalc.site.Sites.judge;
import static floorcalc.site.Sites.mm;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.flatness.GapReading;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Substrate;
import floorcalc.movement.Pinning;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What must hold for any readings of any room. */
class ReadinessPropertyTest {
  /** Takes away all that was read of one subject. */
  private static final Map<String, UnaryOperator<SiteReadings>> REMOVED = new LinkedHashMap<>();

  static {
    REMOVED.put("subfloor", site -> site.withSubfloorMoisture(List.of()));
    REMOVED.put("boards", site -> site.withBoardMoisture(List.of()));
    REMOVED.put("heating", site -> site.withHeating(Heating.NOT_STATED));
    REMOVED.put("flatness", site -> site.withLines(List.of()).withHeights(List.of()).withStraightedge(List.of()));
    REMOVED.put("pinning", site -> site.withPinning(Pinning.notLookedAt()));
  }

  /** Readings of all kinds, each there or not, good or bad. */
  private static SiteReadings any(Random random) {
    SiteReadings site = SiteReadings.NONE;
    if (random.nextInt(4) > 0) {
      site = site.withAir(air(random.nextInt(30) + " °C", Integer.toString(random.nextInt(101))));
    }
    if (random.nextInt(4) > 0) {
      site = site.withSeasons(air("20 °C", Integer.toString(random.nextInt(101))),
          air("20 °C", Integer.toString(random.nextInt(101))));
    }
    List<MoistureReading> subfloor = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      MoistureMethod method = MoistureMethod.values()[random.nextInt(5)];
      subfloor.add(MoistureReading.of(method, Integer.toString(5 + random.nextInt(15))).named("place " + random.nextInt(3)));
    }
    List<Percent> boards = IntStream.range(0, random.nextInt(4)).mapToObj(i -> Percent.of(Integer.toString(random.nextInt(31))))
        .toList();
    site = site.withSubfloorMoisture(subfloor).withBoardMoisture(boards);
    site = random.nextBoolean() ? site.withDaysInRoom(BigDecimal.valueOf(random.nextInt(10))) : site;
    site = random.nextBoolean() ? site.withPacksClosed() : random.nextBoolean() ? site.withPacksOpened() : site;
    site = site.withHeating(Heating.values()[random.nextInt(3)]);
    site = random.nextBoolean() ? site.withTrimCover(mm(Integer.toString(random.nextInt(30)))) : site;
    site = random.nextBoolean() ? site.withPinning(Pinning.found(List.of())) : site;
    List<HeightLine> lines = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      Length spacing = mm(Integer.toString(50 + random.nextInt(400)));
      lines.add(HeightLine.ofEqualSpacing("L" + i, spacing, heights(random, 1 + random.nextInt(30))));
    }
    List<SpotLevel> spots = new ArrayList<>();
    int columns = random.nextInt(6);
    for (int i = 0; i < columns * 4; i++) {
      spots.add(SpotLevel.of(mm(Integer.toString(i % Math.max(1, columns) * 500)), mm(Integer.toString(i / Math.max(1, columns) * 600)),
          heights(random, 1).get(0)));
    }
    List<GapReading> gaps = IntStream.range(0, random.nextInt(4)).mapToObj(i -> new GapReading(
        random.nextBoolean() ? Length.parse("8 ft") : Length.parse("2 m"), mm(Integer.toString(random.nextInt(5))), "")).toList();
    return site.withLines(lines).withHeights(spots).withStraightedge(gaps);
  }

  private static List<Length> heights(Random random, int count) {
    int uneven = 1 + random.nextInt(3);
    return IntStream.range(0, count).mapToObj(i -> mm(Integer.toString(random.nextInt(uneven)))).toList();
  }

  private static SiteFloor floor(Random random) {
    return Sites.FLOOR.withSubfloor(Substrate.values()[random.nextInt(Substrate.values().length)]);
  }

  @Property(tries = 300)
  void nothingIsReadyWithoutEverySubject(@ForAll long seed) {
    Random random = new Random(seed);
    SiteReadings site = any(random);
    SiteFloor floor = floor(random);
    for (String kind : REMOVED.keySet()) {
      Readiness less = Readiness.of(floor, REMOVED.get(kind).apply(site)).value();
      if (!kind.equals("heating")) {
        assertThat(less.isReady()).as(kind).isFalse();
      }
    }
  }

  @Property(tries = 300)
  void takingAReadingOfOneSubjectAwayNeverMakesAnotherFailingSiteReady(@ForAll long seed) {
    Random random = new Random(seed);
    SiteReadings site = any(random);
    SiteFloor floor = floor(random);
    Set<String> failing = codes(Readiness.of(floor, site).value(), Outcome.NOT_MET);
    REMOVED.forEach((kind, remove) -> {
      Readiness less = Readiness.of(floor, remove.apply(site)).value();
      if (!failing.isEmpty()) {
        assertThat(less.isReady()).as(kind).isFalse();
      }
    });
  }

  private static Set<String> codes(Readiness readiness, Outcome outcome) {
    return readiness.judgements(outcome).stream().map(Judgement::code).collect(Collectors.toSet());
  }

  /** A further reading of the subfloor, or a further gap or line, can only show more that is wrong. */
  @Property(tries = 200)
  void aFurtherReadingNeverHealsAFloor(@ForAll long seed) {
    Random random = new Random(seed);
    SiteReadings damp = READY.withSubfloorMoisture(List.of(cm("1.9")));
    List<MoistureReading> more = new ArrayList<>(damp.subfloorMoisture());
    more.add(cm(BigDecimal.valueOf(random.nextInt(200), 1).toPlainString()));
    assertThat(judge(damp.withSubfloorMoisture(more)).outcome()).isEqualTo(Outcome.NOT_MET);
    SiteReadings uneven = READY.withStraightedge(List.of(new GapReading(Length.parse("8 ft"), mm("3.1"), "")));
    assertThat(judge(uneven.withLines(any(random).lines()).withHeights(any(random).heights())).outcome())
        .isEqualTo(Outcome.NOT_MET);
  }

  @Property(tries = 200)
  void theOrderOfReadingsDoesNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    SiteReadings site = any(random);
    SiteFloor floor = floor(random);
    SiteReadings shuffled = site.withSubfloorMoisture(shuffled(site.subfloorMoisture(), random))
        .withBoardMoisture(shuffled(site.boardMoisture(), random)).withLines(shuffled(site.lines(), random))
        .withHeights(shuffled(site.heights(), random)).withStraightedge(shuffled(site.straightedge(), random));
    List<Judgement> one = Readiness.of(floor, site).value().judgements();
    List<Judgement> other = Readiness.of(floor, shuffled).value().judgements();
    // Of equally deep places on a grid any may be named, and faults count readings in the order given; all else is the same.
    assertThat(other).usingRecursiveFieldByFieldElementComparatorIgnoringFields("where", "advice").isEqualTo(one);
  }

  private static <T> List<T> shuffled(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }

  @Property(tries = 300)
  void everyReadingThatIsThereShows(@ForAll long seed) {
    Random random = new Random(seed);
    SiteReadings site = any(random);
    Readiness readiness = Readiness.of(floor(random), site).value();
    String all = readiness.judgements().toString();
    site.air().ifPresent(air -> assertThat(all).contains(air.relativeHumidity().toString()));
    for (MoistureMethod method : MoistureMethod.values()) {
      if (site.subfloorMoisture().stream().anyMatch(reading -> reading.method() == method)) {
        assertThat(readiness.judgements()).anyMatch(one -> one.code().equals("subfloor-moisture")
            && one.check().contains("by " + method.words()) && !one.found().isEmpty());
      }
    }
    if (!site.boardMoisture().isEmpty()) {
      assertThat(readiness.judgements()).anyMatch(one -> one.code().equals("boards-room-agreement")
          && one.found().startsWith("boards "));
    }
    List<Judgement> flat = Sites.flatness(readiness);
    String places = flat.stream().map(one -> one.check() + " " + one.where()).collect(Collectors.joining(" | "));
    site.lines().forEach(line -> assertThat(places).contains("line " + line.name()));
    if (!site.heights().isEmpty()) {
      assertThat(places).contains("heights");
    }
    if (!site.straightedge().isEmpty()) {
      assertThat(places).contains("gaps read by hand");
    }
  }

  @Property(tries = 300)
  void whatIsNotMeasuredSaysWhatToDo(@ForAll long seed) {
    Random random = new Random(seed);
    Readiness readiness = Readiness.of(floor(random), any(random)).value();
    assertThat(readiness.judgements()).allMatch(one -> one.isMet() || !one.advice().isEmpty());
    assertThat(readiness.judgements()).allMatch(one -> one.outcome() == Outcome.NOT_MEASURED || !one.found().isEmpty());
  }
}
