package floorcalc.drawing;

/** Marks that the key explains where a drawing has them. */
enum Mark {
  /** A comb along what is sawn. */
  SAWN,
  /** A heavy line where boards meet end to end. */
  JOINT,
  /** Board numbers in the pieces. */
  BOARD_NUMBER,
  /** Numbers in rings at the walls. */
  WALL_NUMBER,
  /** The arrow from the starting wall. */
  START_ARROW,
  /** The arrow along the rows. */
  ROW_ARROW,
  /** A circle with a cross. */
  PIPE,
  /** A broken circle round a pipe. */
  PIPE_HOLE,
  /** A chain of lozenges along an expansion break or a profile. */
  BREAK,
  /** A framed letter and number at a T profile. */
  T_PROFILE,
  /** A framed letter and number at a reducer. */
  REDUCER,
  /** A triangle that points the way a reducer falls. */
  FALL,
  /** A framed letter and number at an end profile. */
  END_PROFILE,
  /** A framed letter and number at a nosing. */
  NOSING,
  /** A white triangle at the reading farthest from the plane of best fit. */
  FAR_FROM_PLANE,
  /** Black triangles at the highest and the lowest reading. */
  HIGHEST_AND_LOWEST,
  /** The height of a line of equal height, written on it. */
  HEIGHT_LINE,
  /** The heights of readings beside them. */
  READING_HEIGHT,
  /** Numbers in squares at the corners of a survey. */
  CORNER_NUMBER,
  /** A broken line between two corners, with what was read. */
  TIE,
  /** A heavy broken line between two corners: a tie to be measured. */
  PROPOSED_TIE,
  /** The walk along the walls as read. */
  WALK,
  /** Error ellipses at the corners. */
  ELLIPSE,
  /** Bars for what readings are off. */
  RESIDUAL_BAR,
  /** What a reading is off, beside it. */
  RESIDUAL,
  /** A framed reading that does not fit. */
  MISFIT,
  /** A small square in a corner that is square. */
  SQUARE,
  /** The angle of a corner, and how far it is out of square. */
  ANGLE
}
