package floorcalc.recheck;

import floorcalc.recheck.Meetings.Contact;
import floorcalc.recheck.Meetings.Joint;
import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Compromise;
import floorcalc.recheck.ToldPlan.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rule 5: each row, end piece and joint keeps its minimum, or a compromise says where it does not and by how much; and each compromise
 * on a minimum says what was measured there. A piece that is a run of its own counts as an end piece, a whole board does not.
 */
final class MinimumCheck {
  private static final String ROW_WIDTH = "minimumRowWidth";
  private static final String END_PIECE = "minimumEndPiece";
  private static final String JOINT_OFFSET = "minimumJointOffset";
  private static final Pattern PLACE = Pattern.compile("(.+?) row ([0-9]+)(?: run ([0-9]+))?(?:[^0-9].*)?", Pattern.DOTALL);

  private final Map<String, Long> required = new LinkedHashMap<>();
  private final Faults faults;
  /** By rule and place: what was measured there. */
  private final Map<String, List<Double>> sure = new LinkedHashMap<>();
  /** The same with joints of which rounding decides whether they count. */
  private final Map<String, List<Double>> all = new LinkedHashMap<>();

  MinimumCheck(AskedJob job, Faults faults) {
    required.put(ROW_WIDTH, job.leastRow());
    required.put(END_PIECE, job.leastPiece());
    required.put(JOINT_OFFSET, job.leastOffset());
    this.faults = faults;
  }

  /** Measures a bay. */
  void measure(Bay bay, List<List<SeenPiece>> rows, Meetings meetings) {
    List<List<Contact>> lines = rows.stream().map(row -> (List<Contact>) new ArrayList<Contact>()).toList();
    meetings.contacts.forEach(contact -> lines.get(contact.above().row).add(contact));
    List<List<Joint>> joints = rows.stream().map(row -> (List<Joint>) new ArrayList<Joint>()).toList();
    meetings.joints.forEach(joint -> joints.get(joint.left().row).add(joint));
    for (int k = 0; k < rows.size(); k++) {
      String place = bay.name() + " row " + (k + 1);
      row(bay.rows().get(k), place, rows.get(k));
      rows.get(k).forEach(piece -> piece(piece, place));
      if (k > 0) {
        joints(place, lines.get(k), joints.get(k), joints.get(k - 1));
      }
    }
  }

  private void row(Row row, String place, List<SeenPiece> pieces) {
    double widest = pieces.stream().mapToDouble(piece -> piece.box.getHeight()).max().orElse(0);
    if (Math.abs(row.coverWidth() / Lengths.PER_MILLIMETRE - widest) > PlanRecheck.ROUNDING) {
      faults.add(Rule.FORMAT, place, "a coverWidth of " + Faults.mm(row.coverWidth()), "the widest that the row shows is " + Faults.mm(widest));
    }
    note(ROW_WIDTH, place, widest, true);
  }

  private void piece(SeenPiece piece, String place) {
    if (!piece.isWhole()) {
      note(END_PIECE, place + " run " + piece.piece.run(), piece.box.getWidth(), true);
    }
    String kind = piece.isWhole() || piece.meetsLow && piece.meetsHigh ? "full"
        : piece.meetsHigh ? "start" : piece.meetsLow ? "end" : "single";
    if (!piece.piece.kind().equals(kind)) {
      faults.add(Rule.MINIMUMS, piece.name(), "that it is called " + piece.piece.kind(), "by its ends it is of kind " + kind);
    }
  }

  /** Compares each joint of a row with each joint of the row below it, where the two rows touch. */
  private void joints(String place, List<Contact> line, List<Joint> above, List<Joint> below) {
    List<Joint> nearAbove = above.stream().filter(joint -> isNear(line, joint)).toList();
    List<Joint> nearBelow = below.stream().filter(joint -> isNear(line, joint)).toList();
    for (Joint joint : nearAbove) {
      boolean on = isOn(line, joint);
      for (Joint other : nearBelow) {
        boolean counts = on && isOn(line, other);
        faults.tally.offsets += counts ? 1 : 0;
        note(JOINT_OFFSET, place, Math.abs(joint.x() - other.x()), counts);
      }
    }
  }

  private static boolean isNear(List<Contact> line, Joint joint) {
    return line.stream().anyMatch(contact -> contact.from() - PlanRecheck.ROUNDING <= joint.x()
        && joint.x() <= contact.to() + PlanRecheck.ROUNDING);
  }

  private static boolean isOn(List<Contact> line, Joint joint) {
    return line.stream().anyMatch(contact -> contact.from() + PlanRecheck.ROUNDING <= joint.x()
        && joint.x() <= contact.to() - PlanRecheck.ROUNDING || touchesEnd(line, contact, joint));
  }

  /** A joint where one contact ends and the next begins stands on the line as well. */
  private static boolean touchesEnd(List<Contact> line, Contact contact, Joint joint) {
    return Math.abs(contact.to() - joint.x()) <= PlanRecheck.ROUNDING
        && line.stream().anyMatch(next -> Math.abs(next.from() - joint.x()) <= PlanRecheck.ROUNDING);
  }

  /** Keeps what is measured below a minimum, or so near to it that rounding decides. */
  private void note(String rule, String place, double found, boolean counts) {
    double least = required.get(rule) / Lengths.PER_MILLIMETRE;
    String key = rule + "|" + place;
    if (found <= least + PlanRecheck.ROUNDING) {
      all.computeIfAbsent(key, none -> new ArrayList<>()).add(found);
    }
    if (counts && found < least - PlanRecheck.ROUNDING) {
      sure.computeIfAbsent(key, none -> new ArrayList<>()).add(found);
    }
  }

  /** Holds what was measured in all bays against the compromises of the plan. */
  void compare(List<Compromise> listed) {
    faults.tally.compromises += listed.size();
    Map<String, List<Compromise>> byPlace = new LinkedHashMap<>();
    for (Compromise one : listed) {
      if (required.containsKey(one.rule())) {
        byPlace.computeIfAbsent(key(one), none -> new ArrayList<>()).add(one);
        truth(one);
      }
    }
    sure.forEach((key, found) -> {
      double least = found.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
      boolean named = byPlace.getOrDefault(key, List.of()).stream().anyMatch(one -> isFound(one, least));
      if (!named) {
        String rule = key.substring(0, key.indexOf('|'));
        faults.add(Rule.MINIMUMS, key.substring(key.indexOf('|') + 1), Faults.mm(least) + ", and no compromise that says so",
            rule + " asks for " + Faults.mm(required.get(rule)));
      }
    });
  }

  private void truth(Compromise one) {
    if (one.required() != required.get(one.rule())) {
      one.at().get("required").fault(Rule.MINIMUMS, Faults.mm(one.required()),
          one.rule() + " asks for " + Faults.mm(required.get(one.rule())));
    }
    List<Double> found = all.getOrDefault(key(one), List.of());
    if (found.stream().noneMatch(measured -> isFound(one, measured))) {
      one.at().fault(Rule.MINIMUMS, "a compromise on " + one.rule() + " at " + one.where() + " of " + Faults.mm(one.found()),
          found.isEmpty() ? "the minimum is kept there" : "measured there is "
              + Faults.mm(found.stream().mapToDouble(Double::doubleValue).min().orElseThrow()));
    }
  }

  private static boolean isFound(Compromise one, double measured) {
    return Math.abs(one.found() / Lengths.PER_MILLIMETRE - measured) <= PlanRecheck.ROUNDING;
  }

  /** Rule and place: a row, or for end pieces a run of it. More words may follow. */
  private static String key(Compromise one) {
    Matcher place = PLACE.matcher(one.where());
    if (!place.matches()) {
      return one.rule() + "|" + one.where();
    }
    String run = one.rule().equals(END_PIECE) && place.group(3) != null ? " run " + place.group(3) : "";
    return one.rule() + "|" + place.group(1) + " row " + place.group(2) + run;
  }
}
