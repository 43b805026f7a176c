package floorcalc.survey;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.Suspect;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * A room measured with normal errors, and the same room with a slip in one of its lengths: what the report makes of it.
 *
 * @param kind what was done to the reading
 * @param deviations the slip as a multiple of the standard deviation of the difference between the reading and what the others
 *     say, {@code s / sqrt(r)}; 0 if nothing controls the reading
 * @param plainDeviations the slip as a multiple of the standard deviation of the reading
 * @param share the share of the reading that the others control
 * @param outcome what the report says
 * @param named whether it says rightly what happened, of a reading that it names
 */
record PlantedSlip(Kind kind, double deviations, double plainDeviations, double share, Outcome outcome, boolean named) {

  /** What can be done to a reading. */
  enum Kind {
    /** An inch more or less. */
    INCH,
    /** A foot more or less. */
    FOOT,
    /** 10 mm more or less. */
    CENTIMETRE,
    /** 100 mm more or less. */
    DECIMETRE,
    /** Two neighbouring digits exchanged. */
    DIGITS,
    /** Taken to the corner beside the right one. */
    WRONG_CORNER,
    /** Five standard deviations of the difference more or less: no usual slip, the least that is to be found. */
    JUST_FIVE
  }

  /** What the report says. */
  enum Outcome {
    /** It names the reading first of those under suspicion. */
    FIRST,
    /** It names it among others. */
    AMONG,
    /** It names others alone. */
    OTHERS,
    /** It says nothing against any reading. */
    NONE,
    /** It finds no room, several, or one that is not fixed. */
    NO_ROOM
  }

  /** Returns a case, or nothing if the room cannot be measured with two readings too many or the slip would not change the reading. */
  static Optional<PlantedSlip> of(SplittableRandom random, RandomRoom.Kind roomKind, Kind kind) {
    RandomRoom room = RandomRoom.of(random, roomKind);
    Length unit = kind == Kind.INCH || kind == Kind.FOOT ? Length.ofInches(0, 1, 16) : Length.ofMillimetres(1);
    List<int[]> sights = new ArrayList<>(room.sights());
    Collections.shuffle(sights, new Random(random.nextLong()));
    int n = room.size();
    int least = roomKind == RandomRoom.Kind.SQUARE ? 0 : n - 1;
    if (sights.size() < least) {
      return Optional.empty();
    }
    List<int[]> ends = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      ends.add(new int[] {i, (i + 1) % n});
    }
    ends.addAll(sights.subList(0, Math.min(sights.size(), least + random.nextInt(n))));
    List<Length> readings = new ArrayList<>();
    for (int[] pair : ends) {
      readings.add(read(room.distance(pair[0], pair[1]), unit, random));
    }
    Survey sound = survey(room, roomKind, ends, readings);
    Optional<SurveyedRoom> soundRoom = SurveyReport.of(sound).value().room();
    if (soundRoom.isEmpty() || soundRoom.get().redundancy() < 2) {
      return Optional.empty();
    }
    int which = random.nextInt(ends.size());
    Measured measured = soundRoom.get().measurements().get(which);
    double deviation = measured.result().observation().deviation();
    double share = measured.result().redundancy();
    Optional<Length> wrong = wrong(kind, room, ends, which, readings.get(which), deviation / Math.sqrt(share), unit, random);
    if (wrong.isEmpty() || !wrong.get().isPositive() || wrong.get().equals(readings.get(which))) {
      return Optional.empty();
    }
    double slip = wrong.get().minus(readings.get(which)).abs().toMillimetres();
    double deviations = measured.result().isControlled() ? slip * Math.sqrt(share) / deviation : 0;
    List<Length> spoilt = new ArrayList<>(readings);
    spoilt.set(which, wrong.get());
    Length right = readings.get(which);
    Survey survey;
    try {
      survey = survey(room, roomKind, ends, spoilt);
    } catch (IllegalArgumentException impossible) {
      return Optional.of(new PlantedSlip(kind, deviations, slip / deviation, share, Outcome.NO_ROOM, false));
    }
    SurveyReport report = SurveyReport.of(survey).value();
    Outcome outcome = report.room().isEmpty() && report.misfits().isEmpty() ? Outcome.NO_ROOM
        : report.misfits().isEmpty() ? Outcome.NONE : Outcome.OTHERS;
    boolean named = false;
    for (Misfit misfit : report.misfits()) {
      for (Suspect suspect : misfit.oneOf()) {
        if (suspect.measured().from() == measured.from() && suspect.measured().to() == measured.to()
            && suspect.measured().kind() == measured.kind()) {
          outcome = suspect == report.misfits().get(0).first() ? Outcome.FIRST : outcome == Outcome.FIRST ? outcome : Outcome.AMONG;
          named = saysIt(kind, suspect.slip(), right);
        }
      }
    }
    return Optional.of(new PlantedSlip(kind, deviations, slip / deviation, share, outcome, named));
  }

  private static boolean saysIt(Kind kind, String slip, Length right) {
    return kind == Kind.WRONG_CORNER ? slip.contains("between the wrong corners") : slip.endsWith("meant " + right);
  }

  private static Length read(double exact, Length unit, SplittableRandom random) {
    double deviation = Math.hypot(2, 0.2 * exact / 1000); // SurveyUncertainty.TAPE
    return unit.multipliedBy(Math.round((exact + deviation * random.nextGaussian()) / unit.toMillimetres()));
  }

  private static Survey survey(RandomRoom room, RandomRoom.Kind kind, List<int[]> ends, List<Length> readings) {
    List<SurveyWall> walls = new ArrayList<>();
    List<Tie> ties = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      if (i < room.size()) {
        walls.add(SurveyWall.of(readings.get(i)).then(room.turn(i + 1) > 0 ? Turn.LEFT : Turn.RIGHT));
      } else {
        ties.add(new Tie(ends.get(i)[0] + 1, ends.get(i)[1] + 1, readings.get(i)));
      }
    }
    return Survey.of(walls).withTies(ties)
        .withCorners(kind == RandomRoom.Kind.SQUARE ? Survey.Corners.RIGHT_ANGLES : Survey.Corners.AS_MEASURED);
  }

  private static Optional<Length> wrong(Kind kind, RandomRoom room, List<int[]> ends, int which, Length right, double five, Length unit,
      SplittableRandom random) {
    int sign = random.nextBoolean() ? 1 : -1;
    return switch (kind) {
      case INCH -> Optional.of(right.plus(Length.ofInches(sign, 0, 1)));
      case FOOT -> Optional.of(right.plus(Length.ofInches(12L * sign, 0, 1)));
      case CENTIMETRE -> Optional.of(right.plus(Length.ofMillimetres(10L * sign)));
      case DECIMETRE -> Optional.of(right.plus(Length.ofMillimetres(100L * sign)));
      case DIGITS -> exchanged(right, random);
      case WRONG_CORNER -> {
        int[] pair = ends.get(which);
        int other = Math.floorMod(pair[1] + sign, room.size());
        yield other == pair[0] ? Optional.empty() : Optional.of(read(room.distance(pair[0], other), unit, random));
      }
      case JUST_FIVE -> five < 2000
          ? Optional.of(right.plus(Length.fromMillimetres(5 * five * sign, RoundingMode.HALF_UP))) : Optional.empty();
    };
  }

  private static Optional<Length> exchanged(Length right, SplittableRandom random) {
    char[] digits = Long.toString(Math.round(right.toMillimetres())).toCharArray();
    int at = random.nextInt(digits.length - 1);
    char one = digits[at];
    digits[at] = digits[at + 1];
    digits[at + 1] = one;
    return digits[0] == '0' ? Optional.empty() : Optional.of(Length.ofMillimetres(Long.parseLong(new String(digits))));
  }
}
