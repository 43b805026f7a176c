package floorcalc.examples.planfile;

import com.fasterxml.jackson.core.JsonGenerator;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import java.io.IOException;
import java.util.Locale;

/** Writes the bays of a plan with their rows and pieces, each piece on one line. */
final class BayWriter {
  private final JsonGenerator json;
  private final Layout layout;

  BayWriter(JsonGenerator json, Layout layout) {
    this.json = json;
    this.layout = layout;
  }

  void bay(Bay bay) throws IOException {
    json.writeStartObject();
    json.writeStringField("bay", bay.bay());
    json.writeStringField("room", bay.room());
    json.writeFieldName("directionDegrees");
    json.writeNumber(bay.direction().toDecimal());
    json.writeFieldName("laid");
    json.writeStartObject();
    layout.fold();
    json.writeFieldName("shell");
    JsonLengths.ring(json, bay.laid().shell());
    json.writeFieldName("holes");
    JsonLengths.rings(json, bay.laid().voids());
    json.writeEndObject();
    layout.unfold();
    json.writeArrayFieldStart("rows");
    for (Row row : bay.rows()) {
      row(row);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void row(Row row) throws IOException {
    json.writeStartObject();
    json.writeNumberField("row", row.row());
    JsonLengths.field(json, "coverWidth", row.coverWidth());
    json.writeArrayFieldStart("pieces");
    for (LaidPiece piece : row.pieces()) {
      piece(piece);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void piece(LaidPiece piece) throws IOException {
    json.writeStartObject();
    layout.fold();
    json.writeStringField("piece", piece.piece());
    json.writeNumberField("run", piece.run());
    json.writeStringField("kind", piece.kind().name().toLowerCase(Locale.ROOT));
    json.writeFieldName("outline");
    JsonLengths.ring(json, piece.outline());
    json.writeFieldName("holes");
    JsonLengths.rings(json, piece.holes());
    json.writeFieldName("from");
    from(piece.from());
    json.writeEndObject();
    layout.unfold();
  }

  private void from(Cut cut) throws IOException {
    json.writeStartObject();
    json.writeNumberField("board", cut.board());
    json.writeFieldName("along");
    JsonLengths.pair(json, cut.alongFrom(), cut.alongTo());
    json.writeFieldName("across");
    JsonLengths.pair(json, cut.acrossFrom(), cut.acrossTo());
    json.writeEndObject();
  }
}
