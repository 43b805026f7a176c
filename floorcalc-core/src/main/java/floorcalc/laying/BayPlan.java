package floorcalc.laying;

import floorcalc.rows.StartLine;
import floorcalc.working.Calculated;

/** A bay cut into rows, with the start line that was chosen for it. */
record BayPlan(FrameBay bay, Calculated<StartLine> startLine) {}
