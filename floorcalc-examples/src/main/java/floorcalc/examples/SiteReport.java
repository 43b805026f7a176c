package floorcalc.examples;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.site.Readiness;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import java.util.List;
import java.util.stream.Collectors;

/** The report on the site of a room. */
final class SiteReport {
  private final ReportLines lines;

  SiteReport(Console console) {
    this.lines = new ReportLines(console);
  }

  void room(Readiness room) {
    List<Judgement> failed = room.judgements(Outcome.NOT_MET);
    List<Judgement> open = room.judgements(Outcome.NOT_MEASURED);
    List<Judgement> met = room.judgements(Outcome.MET);
    lines.say("");
    lines.say(room.room() + ": " + (room.isReady() ? "ready" : "not ready") + " (" + failed.size() + " fail, " + open.size()
        + " not measured, " + met.size() + " pass)");
    failed.forEach(one -> judgement("FAIL", one));
    room.findings().stream().filter(SiteReport::isWarning).forEach(one -> finding("DOUBT", one));
    open.forEach(one -> judgement("not measured", one));
    met.forEach(this::passed);
    room.findings().stream().filter(one -> !isWarning(one)).forEach(one -> finding("note", one));
  }

  private static boolean isWarning(Finding finding) {
    return finding.severity() != Severity.NOTE;
  }

  private void judgement(String verdict, Judgement one) {
    lines.head(verdict, one.check());
    lines.part("where", one.where());
    lines.part("found", one.found());
    lines.part("limit", one.limit());
    lines.part("whose", one.source().toString());
    lines.part("do", one.advice());
  }

  private void passed(Judgement one) {
    lines.head("pass", one.check());
    lines.part("where", one.where());
    lines.part("found", one.found() + "; limit " + one.limit() + " [" + one.source() + "]");
  }

  private void finding(String verdict, Finding one) {
    lines.head(verdict, one.where().isEmpty() ? one.message() : one.where() + ": " + one.message());
    lines.part("whose", one.source().toString());
  }

  /** A set with what it is for, its limits and who says so. */
  void set(ToleranceSet set) {
    lines.say(set.name());
    lines.part("for", set.floor());
    lines.part("limits", set.limits().stream().map(SpanLimit::toString).collect(Collectors.joining("; "))
        + (set.method() == EdgeMethod.CONTACT_DISTANCE ? "; between these on the straight line, to whole millimetres"
            : set.method() == EdgeMethod.EQUAL_OFFSETS ? "; up or down from an edge on two equal blocks" : ""));
    lines.part("whose", set.limits().get(0).source().toString());
  }
}
