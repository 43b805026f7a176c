package floorcalc.examples.planfile;

import com.fasterxml.jackson.core.JsonGenerator;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.io.IOException;

/** Writes lengths as numbers of millimetres, exact to the nanometre, and what is made of them. */
final class JsonLengths {
  private JsonLengths() {
  }

  static void field(JsonGenerator json, String name, Length length) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(length.toMillimetreString());
  }

  static void pair(JsonGenerator json, Length from, Length to) throws IOException {
    json.writeStartArray();
    json.writeNumber(from.toMillimetreString());
    json.writeNumber(to.toMillimetreString());
    json.writeEndArray();
  }

  static void point(JsonGenerator json, Point point) throws IOException {
    pair(json, point.x(), point.y());
  }

  static void ring(JsonGenerator json, Ring ring) throws IOException {
    json.writeStartArray();
    for (Point corner : ring.corners()) {
      point(json, corner);
    }
    json.writeEndArray();
  }

  static void rings(JsonGenerator json, Iterable<Ring> rings) throws IOException {
    json.writeStartArray();
    for (Ring ring : rings) {
      ring(json, ring);
    }
    json.writeEndArray();
  }
}
