package floorcalc.reference.cases;

import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import java.util.ArrayList;
import java.util.List;

/** A topic that keeps account of its rows: each is used by a case or named in a remark. */
abstract class GatheredTopic implements Topic {
  /** The cases of each file, in the order of the report. */
  abstract List<FileCases> gather();

  /** Remarks beside those on rows left out. */
  abstract List<Remark> moreRemarks();

  @Override
  public List<ReferenceCase> cases() {
    return gather().stream().flatMap(file -> file.cases().stream()).toList();
  }

  @Override
  public List<Remark> remarks() {
    List<Remark> all = new ArrayList<>(moreRemarks());
    gather().forEach(file -> all.addAll(file.leftOut()));
    return List.copyOf(all);
  }
}
