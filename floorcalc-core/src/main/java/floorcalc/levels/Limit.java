package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.working.Source;

/**
 * What a floor may be out of flat: the greatest gap allowed between two points that an edge rests on.
 */
interface Limit {
  /** The longest distance between two points of contact, in nanometres. */
  double reach();

  /** The gap allowed where the contacts are so far apart, in nanometres; never less for a longer distance. */
  double at(double distance);

  /** The least gap that it allows anywhere. */
  Length least();

  /** Whether an edge is as long as the reach and its ends may be contacts too; if not, only readings are. */
  boolean isEdge();

  Source source();

  /** One gap for an edge of one length. */
  record Edge(Length span, Length gap, Source source) implements Limit {
    @Override
    public double reach() {
      return span.toNanometres();
    }

    @Override
    public double at(double distance) {
      return gap.toNanometres();
    }

    @Override
    public Length least() {
      return gap;
    }

    @Override
    public boolean isEdge() {
      return true;
    }
  }
}
