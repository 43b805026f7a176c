package floorcalc.examples.planfile;

import com.fasterxml.jackson.core.JsonGenerator;
import floorcalc.materials.OrderLine;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Writes the order list with its working. The working of the plan as a whole stands with the first line, the boards. */
final class MaterialWriter {
  private final JsonGenerator json;
  private final Layout layout;

  MaterialWriter(JsonGenerator json, Layout layout) {
    this.json = json;
    this.layout = layout;
  }

  void materials(FloorPlan plan) throws IOException {
    json.writeArrayFieldStart("materials");
    boolean first = true;
    for (OrderLine line : plan.materials()) {
      List<Step> working = new ArrayList<>(line.working());
      if (first) {
        plan.working().stream().flatMap(worked -> worked.steps().stream())
            .filter(step -> !line.working().contains(step)).forEach(working::add);
      }
      line(line, working);
      first = false;
    }
    json.writeEndArray();
  }

  private void line(OrderLine line, List<Step> working) throws IOException {
    json.writeStartObject();
    json.writeStringField("item", line.item());
    json.writeStringField("net", line.net());
    json.writeFieldName("quantity");
    BigDecimal quantity = line.quantity().stripTrailingZeros();
    json.writeNumber(quantity.scale() < 0 ? quantity.setScale(0) : quantity);
    json.writeStringField("unit", line.unit());
    json.writeArrayFieldStart("working");
    for (Step step : working) {
      step(step);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void step(Step step) throws IOException {
    json.writeStartObject();
    json.writeStringField("step", step.id());
    json.writeStringField("question", step.question());
    json.writeStringField("formula", step.formula());
    json.writeArrayFieldStart("terms");
    for (Term term : step.terms()) {
      json.writeStartObject();
      layout.fold();
      json.writeStringField("symbol", term.symbol());
      json.writeStringField("meaning", term.meaning());
      json.writeStringField("value", text(term.value()));
      json.writeStringField("source", term.source().toString());
      json.writeEndObject();
      layout.unfold();
    }
    json.writeEndArray();
    json.writeStringField("result", text(step.result()));
    json.writeStringField("source", step.source().toString());
    json.writeEndObject();
  }

  private static String text(Object value) {
    return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
  }
}
