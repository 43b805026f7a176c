package floorcalc.reference.answers;

import static floorcalc.reference.answers.RowAnswers.findings;
import static floorcalc.reference.answers.RowAnswers.length;
import static floorcalc.reference.answers.WallRowAnswers.line;
import static floorcalc.reference.answers.WallRowAnswers.point;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rows.FloorPart;
import floorcalc.rows.FloorStops;
import floorcalc.rows.LayingOrder;
import floorcalc.rows.Stop;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Floors through several rooms with one start line. */
final class WholeFloorAnswers {
  void addTo(Answers answers) {
    answers.add("stops-of-a-floor", WholeFloorAnswers::stops, FloorStops.class);
    answers.add("order-of-laying", WholeFloorAnswers::order, LayingOrder.class);
  }

  private static FloorPart part(String text) {
    String[] name = text.split(": ");
    List<Ring> rings = Arrays.stream(name[1].split(" without ")).map(WholeFloorAnswers::ring).toList();
    return new FloorPart(name[0], Outline.of(rings.get(0), rings.subList(1, rings.size())));
  }

  private static Ring ring(String text) {
    return Ring.of(Arrays.stream(text.split(", ")).map(corner -> point(List.of(corner.split(" ")), 0)).toList());
  }

  private static List<FloorPart> parts(Question question) {
    return question.list("parts").stream().map(WholeFloorAnswers::part).toList();
  }

  private static String inMillimetres(Length... lengths) {
    return Stream.of(lengths).map(Length::toMillimetreString).collect(Collectors.joining(" "));
  }

  private static Answer stops(Question question) {
    FloorStops floor = FloorStops.of(parts(question), line(question));
    return Answer.of("count", BigDecimal.valueOf(floor.stops().size()))
        .with("stops", floor.stops().stream().sorted(Comparator.comparing(Stop::name)).map(WholeFloorAnswers::stop).collect(Collectors.joining("; ")))
        .with("lowMillimetres", floor.low().toMillimetreString()).with("highMillimetres", floor.high().toMillimetreString());
  }

  private static String stop(Stop stop) {
    return stop.name() + ": " + (stop.side() == Stop.Side.FLOOR_ABOVE ? "above " : "below ") + inMillimetres(stop.low(), stop.high());
  }

  private static Answer order(Question question) {
    Calculated<LayingOrder> result = LayingOrder.of(parts(question), line(question), length(question, "pitch"), length(question, "firstRow"));
    LayingOrder order = result.value();
    String turns = order.turns().stream().sorted(Comparator.comparing(LayingOrder.Turn::from))
        .map(turn -> inMillimetres(turn.level(), turn.from(), turn.to(), turn.farthest()) + " to " + String.join(", ", turn.walls()))
        .collect(Collectors.joining("; "));
    String meetings = order.meetings().stream().map(meeting -> inMillimetres(meeting.level(), meeting.from(), meeting.to()) + " " + meeting.how())
        .collect(Collectors.joining("; "));
    return Answer.of("tongueAtLineMillimetres", order.tongueAtLine().toMillimetreString()).with("turns", turns.isEmpty() ? "none" : turns)
        .with("meetings", meetings.isEmpty() ? "none" : meetings).with("findings", findings(result));
  }
}
