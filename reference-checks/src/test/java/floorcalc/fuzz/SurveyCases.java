package floorcalc.fuzz;

import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.MeasuredRoom;
import floorcalc.examples.job.SurveyFile;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.working.Calculated;

/** Jobs of one surveyed room: read with what does not fit, and laid if a shape follows. */
final class SurveyCases {
  private SurveyCases() {}

  static String make(Chance chance) {
    JobGrammar job = new JobGrammar(chance, chance.any(JobGrammar.TAME, 30, 200));
    return "{\"format\": \"floorcalc-job/1\", \"title\": \"Invented\", \"board\": {\"length\": 2200, \"coverWidth\": 185, \"thickness\": 14,"
        + " \"perPack\": 6, \"construction\": \"engineered\"},\n\"rooms\": [{\"name\": \"Study\", \"survey\": " + new SurveyGrammar(job).text() + "}]}";
  }

  static Ending reported(byte[] input, Chance chance) {
    try {
      SurveyFile file = JobReader.surveys(input);
      for (MeasuredRoom room : file.rooms()) {
        report(room);
      }
    } catch (BadJobException bad) {
      JobCases.checkMistakes(bad.mistakes());
      return Ending.REFUSED;
    }
    return JobCases.planned(input, chance);
  }

  private static void report(MeasuredRoom room) {
    Calculated<SurveyReport> report;
    try {
      report = SurveyReport.of(room.survey());
    } catch (IllegalArgumentException tooOpen) {
      Claim.that(tooOpen.getMessage().contains("at most 16 can be tried"), "another refusal: " + tooOpen);
      return;
    }
    Claim.that(report.value().room().isPresent() || !report.findings().isEmpty(), "no shape and not a word why");
  }
}
