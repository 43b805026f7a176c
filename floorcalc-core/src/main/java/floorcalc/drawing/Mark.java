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
  PIPE
}
