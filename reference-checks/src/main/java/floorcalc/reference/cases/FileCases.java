package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The cases of one file while they are gathered, and which of its rows are used or left out, so that none is forgotten. */
final class FileCases {
  private final String file;
  private final List<DataRow> rows;
  private final List<ReferenceCase> cases = new ArrayList<>();
  private final Set<String> used = new LinkedHashSet<>();
  private final Set<String> leftOut = new LinkedHashSet<>();
  private final Map<String, List<String>> reasons = new LinkedHashMap<>();

  FileCases(String file) {
    this.file = file;
    this.rows = DataFile.read(file).rows();
  }

  String file() {
    return file;
  }

  List<DataRow> rows() {
    return rows;
  }

  /** Adds a case that rests on a row. */
  void add(DataRow row, String id, Kind kind, Question question, Expected... figures) {
    cases.add(new ReferenceCase(id, file, kind, question, List.of(figures)));
    used.add(row.place());
  }

  /** Adds a case that rests on all rows together. */
  void addForAll(String id, Kind kind, Question question, Expected... figures) {
    cases.add(new ReferenceCase(id, file, kind, question, List.of(figures)));
  }

  /** Names a row that no case rests on, and why. */
  void leaveOut(DataRow row, String name, String why) {
    leftOut.add(row.place());
    reasons.computeIfAbsent(why, reason -> new ArrayList<>()).add(name);
  }

  List<ReferenceCase> cases() {
    return List.copyOf(cases);
  }

  /** One remark for each reason, with the names of all rows that are left out for it. */
  List<Remark> leftOut() {
    List<Remark> remarks = new ArrayList<>();
    reasons.forEach((why, names) -> remarks.add(new Remark(Remark.Sort.LEFT_OUT, file, String.join("; ", names) + ": " + why)));
    return remarks;
  }

  /** Where the rows stand that cases rest on. */
  Set<String> placesUsed() {
    return used;
  }

  /** Where the rows stand that are left out. */
  Set<String> placesLeftOut() {
    return leftOut;
  }

  /** How sure the source is that the answer names: the words for it, the same as those of the row's kind. */
  static Expected standing(Kind kind) {
    return Expected.text("standing", switch (kind) {
      case READ -> "read in the source";
      case QUOTED -> "quoted by another";
      case COMMON_PRACTICE -> "common practice, no source";
      case FROM_MEMORY -> "from memory";
      default -> throw new IllegalArgumentException("a source is never " + kind);
    });
  }
}
