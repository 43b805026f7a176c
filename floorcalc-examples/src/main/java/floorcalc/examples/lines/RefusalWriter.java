package floorcalc.examples.lines;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import floorcalc.examples.job.Mistake;
import floorcalc.plan.JobFault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes on one line what is wrong with a job, in the format {@code floorcalc-refusal/1}. */
final class RefusalWriter {
  static final String FORMAT = "floorcalc-refusal/1";

  private static final JsonFactory JSON = JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
  private static final Pattern COLUMN = Pattern.compile("line 1, column ([0-9]+)");

  private RefusalWriter() {
  }

  /**
   * One mistake as it is written.
   *
   * @param pointer where, as a JSON Pointer; empty for the whole job and where its text is not JSON
   * @param column where its text is not JSON, in characters from 1; empty elsewhere
   * @param code what is wrong, for programs
   * @param message what is wrong, for people
   */
  private record Entry(String pointer, String column, String code, String message) {
    static Entry of(Mistake mistake) {
      Matcher column = COLUMN.matcher(mistake.place());
      boolean inText = column.matches();
      return new Entry(mistake.place().startsWith("/") ? mistake.place() : "", inText ? column.group(1) : "",
          mistake.code(), mistake.message());
    }

    static Entry of(JobFault fault) {
      return new Entry(fault.room() < 0 ? "/rooms" : "/rooms/" + fault.room(), "", fault.code(), fault.message());
    }
  }

  static byte[] mistakes(long line, List<Mistake> mistakes) {
    return write(line, "refused", mistakes.stream().map(Entry::of).toList());
  }

  static byte[] faultsOfJob(long line, List<JobFault> faults) {
    return write(line, "refused", faults.stream().map(Entry::of).toList());
  }

  static byte[] faultOfProgram(long line, Throwable fault) {
    return write(line, "fault", List.of(new Entry("", "", ProgramFault.CODE, ProgramFault.message(fault))));
  }

  private static byte[] write(long line, String outcome, List<Entry> entries) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = JSON.createGenerator(bytes)) {
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      json.writeNumberField("line", line);
      json.writeStringField("outcome", outcome);
      json.writeArrayFieldStart("mistakes");
      for (Entry entry : entries) {
        json.writeStartObject();
        json.writeStringField("pointer", entry.pointer);
        if (!entry.column.isEmpty()) {
          json.writeFieldName("column");
          json.writeNumber(entry.column);
        }
        json.writeStringField("code", entry.code);
        json.writeStringField("message", entry.message);
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
