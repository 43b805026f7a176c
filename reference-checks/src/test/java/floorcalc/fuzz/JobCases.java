package floorcalc.fuzz;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.Mistake;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.examples.sheet.CsvFiles;
import floorcalc.examples.sheet.CutCard;
import floorcalc.examples.sheet.JobSheet;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.JobFault;
import floorcalc.plan.UnsoundJobException;
import floorcalc.recheck.PlanRecheck;
import floorcalc.recheck.RecheckReport;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** Job documents, read and planned. */
final class JobCases {
  private static final Pattern PLACE = Pattern.compile("\\(the whole file\\)|(/[^/]*)+|line [1-9][0-9]*, column [1-9][0-9]*|\\(and more\\)", Pattern.DOTALL);

  private JobCases() {}

  /** A job, or a list of mistakes each with a place and a message on one line. */
  static Ending readOnly(byte[] input, Chance chance) {
    try {
      JobReader.read(input);
    } catch (BadJobException bad) {
      checkMistakes(bad.mistakes());
      return Ending.REFUSED;
    }
    return Ending.DONE;
  }

  static void checkMistakes(List<Mistake> mistakes) {
    Claim.that(!mistakes.isEmpty(), "a refusal without a mistake");
    for (Mistake mistake : mistakes) {
      Claim.that(PLACE.matcher(mistake.place()).matches(), "no place: " + mistake);
      checkLine(mistake.message());
    }
  }

  static void checkLine(String message) {
    Claim.that(message.strip().length() > 10 && message.length() < 2000, "no message: [" + message + "]");
    Claim.that(message.chars().noneMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c) && !isPaired(message)),
        "not one plain line: [" + message + "]");
  }

  private static boolean isPaired(String text) {
    return StandardCharsets.UTF_8.newEncoder().canEncode(text);
  }

  /** A plan with something laid in it, written, now and then printed and checked a second time; or a refusal. */
  static Ending planned(byte[] input, Chance chance) {
    JobFile file;
    try {
      file = JobReader.read(input);
    } catch (BadJobException bad) {
      checkMistakes(bad.mistakes());
      return Ending.REFUSED;
    }
    FloorPlan plan;
    try {
      plan = FloorPlanner.plan(file.job());
    } catch (UnsoundJobException unsound) {
      checkFaults(unsound);
      return Ending.REFUSED;
    }
    checkLaid(plan);
    byte[] written = PlanWriter.write(plan);
    Claim.that(written.length > 100, "no plan written");
    if (chance.oneIn(8)) {
      checkPapers(file, plan);
    }
    if (chance.oneIn(4)) {
      checkAgain(input, written);
    }
    return Ending.DONE;
  }

  static void checkFaults(UnsoundJobException unsound) {
    Claim.that(!unsound.faults().isEmpty(), "a refusal without a fault");
    for (JobFault fault : unsound.faults()) {
      checkLine(fault.message());
    }
  }

  static void checkLaid(FloorPlan plan) {
    Claim.that(!plan.bays().isEmpty(), "an empty floor");
    for (Bay bay : plan.bays()) {
      Claim.that(!bay.rows().isEmpty() && bay.rows().stream().noneMatch(row -> row.pieces().isEmpty()), "an empty bay: " + bay.bay());
    }
    Claim.that(plan.order().boardsUsed() > 0 && plan.order().boardsUsed() >= plan.order().boardsAtLeast(), "boards: " + plan.order());
  }

  private static void checkPapers(JobFile file, FloorPlan plan) {
    String sheet = new String(JobSheet.of(file, plan), StandardCharsets.UTF_8);
    Claim.that(sheet.endsWith("</html>\n") && !sheet.contains("NaN") && !sheet.contains("Infinity"), "a sheet that is not whole");
    Claim.that(CsvFiles.cutCard(CutCard.of(file.job(), plan)).length > 20 && CsvFiles.order(plan).length > 20, "no cut card or order");
  }

  private static void checkAgain(byte[] input, byte[] written) {
    RecheckReport report = PlanRecheck.of(new String(input, StandardCharsets.UTF_8), new String(written, StandardCharsets.UTF_8));
    Claim.that(report.faults().isEmpty(), "the second check: " + report.faults());
  }
}
