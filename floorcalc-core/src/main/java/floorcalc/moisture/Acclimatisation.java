package floorcalc.moisture;

import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Whether the boards have come to terms with the room: packs closed in the room for three to four days (common practice,
 * no source), until boards and room agree within a stated difference.
 * <p>
 * What decides is the agreement: the mean of board readings against the moisture content that wood settles at in the air
 * of the room. Days passed are shown beside it and stand in for no reading. Immutable and thread-safe.
 * <pre>{@code
 * Acclimatisation.notStated().packsClosed().days(new BigDecimal("4")).air(air).boards(readings).judge();
 * }</pre>
 *
 * @since 0.1
 */
public final class Acclimatisation {
  /** The difference allowed if none is stated: 2 percentage points. Common practice, no source. */
  public static final Percent USUAL_DIFFERENCE = Percent.of("2");

  private static final BigDecimal LEAST_DAYS = BigDecimal.valueOf(3);
  private static final BigDecimal MOST_DAYS = BigDecimal.valueOf(3650);

  private enum Packs { CLOSED, OPENED, NOT_STATED }

  private final Packs packs;
  private final BigDecimal days;
  private final AirClimate air;
  private final List<Percent> boards;
  private final Percent allowed;
  private final Source allowedSource;

  private Acclimatisation(Packs packs, BigDecimal days, AirClimate air, List<Percent> boards, Percent allowed,
      Source allowedSource) {
    this.packs = packs;
    this.days = days;
    this.air = air;
    this.boards = boards;
    this.allowed = allowed;
    this.allowedSource = allowedSource;
  }

  /**
   * Returns an acclimatisation of which nothing is known yet; a difference of {@link #USUAL_DIFFERENCE} is allowed.
   *
   * @return nothing stated and nothing measured, not null
   */
  public static Acclimatisation notStated() {
    return new Acclimatisation(Packs.NOT_STATED, null, null, List.of(), USUAL_DIFFERENCE, Source.COMMON_PRACTICE);
  }

  /**
   * Returns a copy whose packs were kept closed.
   *
   * @return the copy, not null
   */
  public Acclimatisation packsClosed() {
    return new Acclimatisation(Packs.CLOSED, days, air, boards, allowed, allowedSource);
  }

  /**
   * Returns a copy whose packs were opened before laying.
   *
   * @return the copy, not null
   */
  public Acclimatisation packsOpened() {
    return new Acclimatisation(Packs.OPENED, days, air, boards, allowed, allowedSource);
  }

  /**
   * Returns a copy with the days that the packs have been in the room.
   *
   * @param inRoom the days, from 0 to 3650, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if the days are out of bounds
   */
  public Acclimatisation days(BigDecimal inRoom) {
    Objects.requireNonNull(inRoom, "inRoom");
    if (inRoom.signum() < 0 || inRoom.compareTo(MOST_DAYS) > 0 || inRoom.scale() > 1000) {
      throw new IllegalArgumentException("days in the room must be from 0 to 3650, but were " + inRoom);
    }
    return new Acclimatisation(packs, Decimals.plain(inRoom), air, boards, allowed, allowedSource);
  }

  /**
   * Returns a copy with the air of the room.
   *
   * @param measured the air as measured, from -20 °C to 100 °C, not null
   * @return the copy, not null
   */
  public Acclimatisation air(AirClimate measured) {
    return new Acclimatisation(packs, days, Objects.requireNonNull(measured, "measured"), boards, allowed, allowedSource);
  }

  /**
   * Returns a copy with readings of boards.
   *
   * @param readings moisture contents by a meter set to the species, each from 0 % to 30 %, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if a reading is out of bounds
   */
  public Acclimatisation boards(List<Percent> readings) {
    readings.forEach(BoardMoistureLimits::boardReading);
    return new Acclimatisation(packs, days, air, List.copyOf(readings), allowed, allowedSource);
  }

  /**
   * Returns a copy with another difference allowed, such as that of the boards' maker.
   *
   * @param points percentage points between boards and room, from 0 to 10, not null
   * @param source whose figure it is, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if the difference is out of bounds
   */
  public Acclimatisation within(Percent points, Source source) {
    if (points.compareTo(Percent.ZERO) < 0 || points.compareTo(Percent.of("10")) > 0) {
      throw new IllegalArgumentException("the difference between boards and room must be from 0 to 10 percentage points,"
          + " but was " + points);
    }
    return new Acclimatisation(packs, days, air, boards, points, Objects.requireNonNull(source, "source"));
  }

  /**
   * Returns the mean of readings of boards.
   *
   * @param readings moisture contents by a meter set to the species, each from 0 % to 30 %, at least one, not null
   * @return the mean, rounded half up to four decimals, with the step {@code mean-of-boards}; not null
   * @throws IllegalArgumentException if there is no reading, or one is out of bounds
   */
  public static Calculated<Percent> meanOfBoards(List<Percent> readings) {
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("there must be at least one reading of the boards, but there is none");
    }
    Spread spread = Spread.ofBoards(readings);
    return Calculated.of(spread.mean(), List.of(spread.step()));
  }

  /**
   * Judges what is known.
   *
   * @return the judgements {@code packs-closed}, {@code days-in-room} and {@code boards-room-agreement}, in this order,
   *     with the steps of the equilibrium moisture content, {@code mean-of-boards} and {@code board-room-difference};
   *     not null
   * @throws IllegalArgumentException if the temperature is beyond the equation, see {@link EquilibriumMoisture}
   */
  public Calculated<List<Judgement>> judge() {
    List<Step> steps = new ArrayList<>();
    List<Judgement> judgements = new ArrayList<>();
    judgements.add(new Judgement("packs-closed", "packs in the room", "", switch (packs) {
      case CLOSED -> "closed";
      case OPENED -> "opened";
      case NOT_STATED -> "";
    }, "closed until laying", switch (packs) {
      case CLOSED -> Outcome.MET;
      case OPENED -> Outcome.NOT_MET;
      case NOT_STATED -> Outcome.NOT_MEASURED;
    }, Source.COMMON_PRACTICE, packs == Packs.CLOSED ? ""
        : "leave packs closed and flat in the room until they are laid, unless the maker says otherwise"));
    if (air == null || boards.isEmpty()) {
      judgements.add(daysJudgement(Outcome.NOT_MEASURED));
      judgements.add(agreement(air != null ? "room " + EquilibriumMoisture.of(air).value()
          : boards.isEmpty() ? "" : "boards " + Spread.ofBoards(boards), Outcome.NOT_MEASURED, "measure "
          + (air == null ? boards.isEmpty() ? "the air of the room and the boards" : "the air of the room" : "the boards")
          + "; days in the room stand in for neither"));
      return Calculated.of(judgements, steps);
    }
    Calculated<Percent> balance = EquilibriumMoisture.of(air);
    Spread spread = Spread.ofBoards(boards);
    Percent difference = spread.mean().minus(balance.value());
    steps.addAll(balance.steps());
    steps.add(spread.step());
    steps.add(new Step("board-room-difference", "By how many percentage points are the boards damper than the room asks"
        + " for?", "d = m - M", List.of(Term.of("m", "mean moisture content of the boards", spread.mean()),
            Term.of("M", "equilibrium moisture content of the room", balance.value())), difference, Source.DEFINITION));
    boolean met = difference.abs().compareTo(allowed) <= 0;
    boolean damp = difference.compareTo(Percent.ZERO) > 0;
    judgements.add(daysJudgement(met ? Outcome.MET : Outcome.NOT_MET));
    judgements.add(agreement("boards " + spread.mean() + ", room " + balance.value() + ": "
        + difference.abs().number().toPlainString() + " percentage points apart", met ? Outcome.MET : Outcome.NOT_MET,
        met ? "" : "the boards are too " + (damp ? "damp" : "dry") + " for the room as it is by "
            + difference.abs().minus(allowed).number().toPlainString()
            + " percentage points: wait, or bring the room to what it will be in use, and measure again"));
    return Calculated.of(judgements, steps, balance.findings());
  }

  /** Enough days pass only together with readings that agree. */
  private Judgement daysJudgement(Outcome agreement) {
    boolean known = days != null;
    boolean enough = known && days.compareTo(LEAST_DAYS) >= 0;
    return new Judgement("days-in-room", "days of the packs in the room", "", known ? days.toPlainString() : "",
        "3 to 4 days, and until boards and room agree", !known ? Outcome.NOT_MEASURED : enough ? agreement : Outcome.NOT_MET,
        Source.COMMON_PRACTICE, !known ? "note when the packs came in"
            : !enough ? "wait " + LEAST_DAYS.subtract(days).toPlainString() + " more at least, then measure"
            : switch (agreement) {
              case MET -> "";
              case NOT_MET -> "wait until boards and room agree";
              case NOT_MEASURED -> "measure boards and room: days alone pass nothing";
            });
  }

  private Judgement agreement(String found, Outcome outcome, String advice) {
    return new Judgement("boards-room-agreement", "boards against the air of the room", "", found,
        "at most " + allowed.number().toPlainString() + " percentage points apart", outcome, allowedSource, advice);
  }
}
