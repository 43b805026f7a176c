package floorcalc.recheck;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A report as JSON, format {@code floorcalc-recheck/1}, described in {@code docs/second-check.md}. */
final class ReportText {
  private static final ObjectMapper JSON = new ObjectMapper();

  private ReportText() {}

  /**
   * Writes a report.
   *
   * @param report the report
   * @param bytesCompared how many times the plan was made, once or twice: whether rule 7 was looked at
   */
  static String json(RecheckReport report, boolean bytesCompared) {
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
    ((ObjectNode) root.get("checked")).put("bytesCompared", bytesCompared);
    ArrayNode leftOut = root.putArray("leftOut");
    for (LeftOut one : report.leftOut()) {
      leftOut.addObject().put("what", one.what()).put("because", one.because());
    }
    if (!bytesCompared) {
      leftOut.addObject().put("what", "rule 7, the same bytes").put("because", "give the plan made a second time as well");
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\r\n", "\n");
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
