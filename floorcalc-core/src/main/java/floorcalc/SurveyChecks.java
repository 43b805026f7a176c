package floorcalc;

import floorcalc.measure.PlainNumber;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Says of each surveyed room of a job how far its measurements can be trusted. */
final class SurveyChecks {
  private SurveyChecks() {}

  /** The plan with the surveys' judgements among its checks, what was noticed among its findings, and their working. */
  static FloorPlan added(FloorJob job, FloorPlan plan) {
    List<Check> checks = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<Worked> working = new ArrayList<>();
    for (Room room : job.rooms()) {
      room.survey().ifPresent(survey -> {
        survey.value().room().ifPresent(measured -> checks.addAll(checks(room.name(), survey.value(), measured)));
        working.add(new Worked(room.name() + ": survey", survey.steps()));
        for (Finding finding : survey.findings()) {
          String where = finding.where().isEmpty() ? room.name() : room.name() + ", " + finding.where();
          findings.add(new Finding(finding.code(), finding.severity(), where, finding.message(), finding.source()));
        }
      });
    }
    return checks.isEmpty() && findings.isEmpty() && working.isEmpty() ? plan : plan.with(checks, findings, working);
  }

  private static List<Check> checks(String name, SurveyReport report, SurveyedRoom room) {
    long alone = room.measurements().stream().filter(one -> !one.result().isControlled()).count();
    String again = report.toMeasure().stream().map(measure -> measure.text()).collect(Collectors.joining("; "));
    Check checked = new Check(name, new Judgement("survey-checked", "each measurement checked by others", "",
        alone + " of " + room.measurements().size() + " checked by nothing", "none", alone == 0 ? Outcome.MET : Outcome.NOT_MET,
        Source.COMMON_PRACTICE, alone == 0 ? "" : again));
    if (room.redundancy() == 0) {
      return List.of(checked);
    }
    Measured worst = room.measurements().stream().max(Comparator.comparingDouble(SurveyChecks::normalised)).orElseThrow();
    boolean fits = normalised(worst) <= Misfit.LIMIT;
    return List.of(checked, new Check(name, new Judgement("survey-fits", "measurements fit each other", worst.name(),
        "greatest normalised residual " + PlainNumber.text(normalised(worst), 2), "at most " + Misfit.LIMIT,
        fits ? Outcome.MET : Outcome.NOT_MET, Misfit.SOURCE, fits ? "" : again)));
  }

  private static double normalised(Measured measured) {
    return StrictMath.abs(measured.result().normalisedResidual().orElse(0));
  }
}
