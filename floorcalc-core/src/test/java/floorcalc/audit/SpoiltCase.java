package floorcalc.audit;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One way to spoil a plan: what is done, to which plan, and what must be reported. */
record SpoiltCase(String what, String plan, Consumer<Draft> spoil, Set<String> codes) {

  static SpoiltCase spoil(String what, String plan, Consumer<Draft> spoil, Code... codes) {
    return new SpoiltCase(what, plan, spoil, Stream.of(codes).map(Code::text).collect(Collectors.toCollection(TreeSet::new)));
  }

  /** Order and ledger stay as they are spoilt. */
  static SpoiltCase spoilSums(String what, String plan, Consumer<Draft> spoil, Code... codes) {
    return spoil(what, plan, spoil.andThen(d -> d.sumsAreSpoilt = true), codes);
  }

  @Override
  public String toString() {
    return what + " (" + plan + "): " + codes;
  }
}
