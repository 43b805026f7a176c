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

/** The report on the site of a room, as text of at most {@value #WIDTH} columns. */
final class SiteReport {
  private static final int WIDTH = 110;
  private static final String MARGIN = " ".repeat(16);

  private final Console console;

  SiteReport(Console console) {
    this.console = console;
  }

  void room(Readiness room) {
    List<Judgement> failed = room.judgements(Outcome.NOT_MET);
    List<Judgement> open = room.judgements(Outcome.NOT_MEASURED);
    List<Judgement> met = room.judgements(Outcome.MET);
    console.say("");
    console.say(room.room() + ": " + (room.isReady() ? "ready" : "not ready") + " (" + failed.size() + " fail, " + open.size()
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
    head(verdict, one.check());
    part("where", one.where());
    part("found", one.found());
    part("limit", one.limit());
    part("whose", one.source().toString());
    part("do", one.advice());
  }

  private void passed(Judgement one) {
    head("pass", one.check());
    part("where", one.where());
    part("found", one.found() + "; limit " + one.limit() + " [" + one.source() + "]");
  }

  private void finding(String verdict, Finding one) {
    head(verdict, one.where().isEmpty() ? one.message() : one.where() + ": " + one.message());
    part("whose", one.source().toString());
  }

  /** A set with what it is for, its limits and who says so. */
  void set(ToleranceSet set) {
    console.say(set.name());
    part("for", set.floor());
    part("limits", set.limits().stream().map(SpanLimit::toString).collect(Collectors.joining("; "))
        + (set.method() == EdgeMethod.CONTACT_DISTANCE ? "; between these on the straight line, to whole millimetres"
            : set.method() == EdgeMethod.EQUAL_OFFSETS ? "; up or down from an edge on two equal blocks" : ""));
    part("whose", set.limits().get(0).source().toString());
  }

  private void head(String verdict, String text) {
    wrapped("  " + verdict + " ".repeat(Math.max(1, MARGIN.length() - 2 - verdict.length())), MARGIN, text);
  }

  private void part(String label, String text) {
    if (!text.isEmpty()) {
      wrapped(MARGIN + label + " ".repeat(Math.max(1, 7 - label.length())), MARGIN + " ".repeat(7), text);
    }
  }

  /** Words that do not fit begin a new line under the first. */
  private void wrapped(String first, String next, String text) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        console.say(line.toString());
        line = new StringBuilder(next);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    console.say(line.toString());
  }
}
