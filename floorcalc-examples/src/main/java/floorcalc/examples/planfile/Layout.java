package floorcalc.examples.planfile;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/** Lays JSON out over lines of two blanks' indent, with what the writer marks as flat on one line. */
final class Layout implements PrettyPrinter {
  private int depth;
  private int flat;

  /** From here up to {@link #unfold()} everything stands on one line; calls may nest. */
  void fold() {
    flat++;
  }

  void unfold() {
    flat--;
  }

  private void newLine(JsonGenerator json) throws IOException {
    if (flat > 0) {
      return;
    }
    json.writeRaw('\n');
    for (int i = 0; i < depth; i++) {
      json.writeRaw("  ");
    }
  }

  private void end(JsonGenerator json, int parts, char bracket) throws IOException {
    depth--;
    if (parts > 0) {
      newLine(json);
    }
    json.writeRaw(bracket);
  }

  private void separate(JsonGenerator json) throws IOException {
    json.writeRaw(flat > 0 ? ", " : ",");
    newLine(json);
  }

  @Override
  public void writeRootValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator json) throws IOException {
    json.writeRaw('{');
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) throws IOException {
    newLine(json);
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw(": ");
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
    separate(json);
  }

  @Override
  public void writeEndObject(JsonGenerator json, int entries) throws IOException {
    end(json, entries, '}');
  }

  @Override
  public void writeStartArray(JsonGenerator json) throws IOException {
    json.writeRaw('[');
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator json) throws IOException {
    newLine(json);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
    separate(json);
  }

  @Override
  public void writeEndArray(JsonGenerator json, int values) throws IOException {
    end(json, values, ']');
  }
}
