package floorcalc.examples.job;

import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the shape of a room: its corners, or the survey that gives them, and its voids. */
final class ShapeReader {
  private final Fields room;
  private final Purpose purpose;

  private ShapeReader(Fields room, Purpose purpose) {
    this.room = room;
    this.purpose = purpose;
  }

  /** The survey and the shape, as far as they are given and could be read. */
  record Read(Optional<Survey> survey, Optional<Shape> shape) {
  }

  static Read read(Fields room, Purpose purpose) {
    return new ShapeReader(room, purpose).read();
  }

  private Read read() {
    if (room.has("survey") && room.has("outline")) {
      room.mistake("survey", "stands beside outline; give one of the two");
      return new Read(Optional.empty(), Optional.empty());
    }
    return room.has("survey") ? measured() : new Read(Optional.empty(), drawn());
  }

  private Read measured() {
    List<Ring> voids = voids();
    Optional<Survey> survey = room.optional("survey").flatMap(SurveyReader::read);
    if (survey.isPresent() && purpose == Purpose.TO_LAY) {
      room.mistake("survey", "found a survey; this version does not work out surveys, give the corners of the room as outline");
    }
    return new Read(survey, Optional.empty());
  }

  private Optional<Shape> drawn() {
    long before = room.mistakes().count();
    Optional<Ring> shell = room.required("outline", "an array of at least 3 corners [x, y], or a survey in its place")
        .flatMap(RingReader::ring);
    List<Ring> voids = voids();
    if (room.mistakes().count() > before) {
      return Optional.empty();
    }
    return outline(shell.orElseThrow(), voids)
        .map(outline -> Shape.of(outline, NumberedWalls.of(shell.get())));
  }

  private List<Ring> voids() {
    List<Ring> voids = new ArrayList<>();
    room.optional("voids").ifPresent(list -> {
      for (Value ring : list.items("rings of corners", 0, JobLimits.VOIDS)) {
        RingReader.ring(ring).ifPresent(voids::add);
      }
    });
    return voids;
  }

  private Optional<Outline> outline(Ring shell, List<Ring> voids) {
    List<OutlineFault> faults = OutlineCheck.faultsOf(shell, voids);
    for (OutlineFault fault : faults) {
      Place place = fault.ring() == 0 ? room.place().field("outline")
          : room.place().field("voids").item(fault.ring() - 1);
      room.mistakes().add(place, fault.message());
    }
    return faults.isEmpty() ? Optional.of(Outline.of(shell, voids)) : Optional.empty();
  }
}
