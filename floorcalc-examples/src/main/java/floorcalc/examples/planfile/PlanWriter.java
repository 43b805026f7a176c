package floorcalc.examples.planfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import floorcalc.plan.Bay;
import floorcalc.plan.Check;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.Profile;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Writes plans in the format {@code floorcalc-plan/1}, described in {@code docs/json-files.md}. The same plan gives the
 * same bytes everywhere: UTF-8, lines ended by a line feed, fields in a fixed order, millimetres with at most six
 * decimals and never an exponent.
 */
public final class PlanWriter {
  /** The first field of each plan file. */
  public static final String FORMAT = "floorcalc-plan/1";

  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
  private static final JsonFactory ASCII = JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
      .enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private final JsonGenerator json;
  private final Layout layout;

  private PlanWriter(JsonGenerator json, Layout layout) {
    this.json = json;
    this.layout = layout;
  }

  /**
   * Returns a plan as a JSON file.
   *
   * @param plan the plan, not null
   * @return the bytes of the file, not null
   */
  public static byte[] write(FloorPlan plan) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    Layout layout = new Layout();
    try (JsonGenerator json = JSON.createGenerator(bytes)) {
      json.setPrettyPrinter(layout);
      new PlanWriter(json, layout).plan(plan);
      json.writeRaw('\n');
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /**
   * Returns a plan as one line: the same JSON document as {@link #write}, without blanks, and in ASCII alone, so that no program
   * that reads it from a pipe has to know its encoding.
   *
   * @param plan the plan, not null
   * @return the bytes of the line with the line feed at its end, not null
   */
  public static byte[] writeOnOneLine(FloorPlan plan) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (JsonGenerator json = ASCII.createGenerator(bytes)) {
      new PlanWriter(json, new Layout()).plan(plan);
      json.writeRaw('\n');
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  private void plan(FloorPlan plan) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeStringField("title", plan.title());
    json.writeArrayFieldStart("bays");
    for (Bay bay : plan.bays()) {
      new BayWriter(json, layout).bay(bay);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("boards");
    for (OpenedBoard board : plan.boards()) {
      board(board);
    }
    json.writeEndArray();
    order(plan.order());
    new MaterialWriter(json, layout).materials(plan);
    json.writeArrayFieldStart("profiles");
    for (Profile profile : plan.profiles()) {
      profile(profile);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("checks");
    for (Check check : plan.checks()) {
      check(check);
    }
    for (Finding finding : plan.findings()) {
      finding(finding);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("compromises");
    for (Compromise compromise : plan.compromises()) {
      compromise(compromise);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : plan.cautions()) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void board(OpenedBoard board) throws IOException {
    json.writeStartObject();
    layout.fold();
    json.writeNumberField("board", board.board());
    JsonLengths.field(json, "length", board.length());
    json.writeStringField("openedInRow", board.openedInRow());
    json.writeEndObject();
    layout.unfold();
  }

  private void order(Order order) throws IOException {
    json.writeFieldName("order");
    json.writeStartObject();
    layout.fold();
    json.writeNumberField("boardsUsed", order.boardsUsed());
    json.writeNumberField("boardsAtLeast", order.boardsAtLeast());
    json.writeBooleanField("provenFewest", order.provenFewest());
    json.writeNumberField("spare", order.spare());
    json.writeNumberField("packs", order.packs());
    json.writeNumberField("boardsInPacks", order.boardsInPacks());
    json.writeEndObject();
    layout.unfold();
  }

  private void profile(Profile profile) throws IOException {
    json.writeStartObject();
    layout.fold();
    json.writeStringField("kind", profile.kind());
    json.writeFieldName("from");
    JsonLengths.point(json, profile.from());
    json.writeFieldName("to");
    JsonLengths.point(json, profile.to());
    JsonLengths.field(json, "length", profile.length());
    json.writeStringField("because", profile.because());
    json.writeEndObject();
    layout.unfold();
  }

  /** The room stands in front of what is checked, the place behind it, and what to do behind the limit. */
  private void check(Check check) throws IOException {
    Judgement judgement = check.judgement();
    String where = judgement.where();
    json.writeStartObject();
    json.writeStringField("check", (check.room().isEmpty() ? "" : check.room() + ": ") + judgement.check()
        + (where.isEmpty() ? "" : where.startsWith("(") ? " " + where : " (" + where + ")"));
    json.writeStringField("found", judgement.found());
    json.writeStringField("limit", judgement.limit()
        + (judgement.advice().isEmpty() ? "" : "; to do: " + judgement.advice()));
    if (judgement.outcome() == Outcome.NOT_MEASURED) {
      json.writeNullField("met");
    } else {
      json.writeBooleanField("met", judgement.isMet());
    }
    json.writeStringField("source", check.source().toString());
    json.writeEndObject();
  }

  /** A finding is a check that looked at something: met if there is nothing to do about it. */
  private void finding(Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("check", finding.where().isEmpty() ? finding.code() : finding.code() + ", " + finding.where());
    json.writeStringField("found", finding.message());
    json.writeStringField("limit", "");
    json.writeBooleanField("met", finding.severity() == Severity.NOTE);
    json.writeStringField("source", finding.source().toString());
    json.writeEndObject();
  }

  private void compromise(Compromise compromise) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", compromise.rule());
    json.writeStringField("where", compromise.where());
    JsonLengths.field(json, "required", compromise.required());
    JsonLengths.field(json, "found", compromise.found());
    json.writeStringField("because", compromise.because());
    json.writeEndObject();
  }
}
