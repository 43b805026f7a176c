package floorcalc.recheck;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A report as JSON, format {@code floorcalc-recheck/1}, described in {@code docs/second-check.md}. */
final class ReportText {
  private static final ObjectMapper JSON = new ObjectMapper();

  private ReportText() {}

  static String json(RecheckReport report) {
    ObjectNode root = JSON.createObjectNode();
    root.put("format", "floorcalc-recheck/1");
    root.put("sound", report.isSound());
    ArrayNode faults = root.putArray("faults");
    for (Fault fault : report.faults()) {
      faults.addObject().put("rule", fault.rule().number()).put("about", fault.rule().word()).put("place", fault.place())
          .put("found", fault.found()).put("allowed", fault.allowed());
    }
    root.put("moreFaults", report.more());
    root.set("checked", JSON.valueToTree(report.checked()));
    ArrayNode leftOut = root.putArray("leftOut");
    for (LeftOut one : report.leftOut()) {
      leftOut.addObject().put("what", one.what()).put("because", one.because());
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\r\n", "\n");
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
