package floorcalc.examples.job;

import floorcalc.outline.Outline;

/**
 * A room as it stands.
 *
 * @param outline its outline
 * @param walls where points lie by its walls
 * @param numbered its walls as they are numbered in the job
 */
record Shape(Outline outline, Walls walls, NumberedWalls numbered) {
  static Shape of(Outline outline, NumberedWalls numbered) {
    return new Shape(outline, new Walls(outline), numbered);
  }
}
