package floorcalc.laying;

import java.util.List;

/**
 * A row in the frame of its bay.
 *
 * @param number its number in the bay, from 1
 * @param jobRow its number over the whole job, from 0
 * @param low its strip's low line: a whole board laid in the row has its low edge there
 * @param runs its runs from left to right
 */
record FrameRow(int number, int jobRow, long low, List<FrameRun> runs) {}
