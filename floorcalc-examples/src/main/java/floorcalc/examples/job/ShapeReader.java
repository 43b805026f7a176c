package floorcalc.examples.job;

import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.working.Calculated;
import floorcalc.working.Severity;
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
    Optional<Survey> survey = room.optional("survey").flatMap(SurveyReader::read);
    List<Ring> voids = voids();
    return new Read(survey, purpose == Purpose.TO_LAY ? survey.flatMap(found -> fixed(found, voids)) : Optional.empty());
  }

  /** The shape that a survey fixes; if it fixes none or several, that is a mistake of the job. */
  private Optional<Shape> fixed(Survey survey, List<Ring> voids) {
    Calculated<SurveyReport> report;
    try {
      report = SurveyReport.of(survey);
    } catch (IllegalArgumentException fault) {
      room.mistake("survey", fault.getMessage());
      return Optional.empty();
    }
    Optional<SurveyedRoom> measured = report.value().room();
    if (measured.isEmpty()) {
      report.findings().stream().filter(finding -> finding.severity() != Severity.NOTE).forEach(finding ->
          room.mistakes().add(finding.code(), room.place().field("survey"),
              (finding.where().isEmpty() ? "" : finding.where() + ": ") + finding.message()));
      return Optional.empty();
    }
    List<String> faults = SurveyFaces.faultsOf(measured.get());
    if (!faults.isEmpty()) {
      faults.forEach(fault -> room.mistake("survey", fault));
      return Optional.empty();
    }
    return outline(measured.get().outline().shell(), voids).map(outline ->
        Shape.of(outline, NumberedWalls.of(outline.shell(), measured.get().corners(),
            survey.walls().stream().map(SurveyWall::length).toList())).measured(report));
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
      room.mistakes().add(fault.kind().code(), place, fault.message());
    }
    return faults.isEmpty() ? Optional.of(Outline.of(shell, voids)) : Optional.empty();
  }
}
