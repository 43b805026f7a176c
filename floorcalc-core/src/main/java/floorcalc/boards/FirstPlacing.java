package floorcalc.boards;

/** How runs are placed before they are moved. */
enum FirstPlacing {
  /** Each where it weighs least beside those placed. */
  LIGHTEST,
  /** Each with the offcut of the one before, or a plain part of a board. */
  HABIT,
  /** Each at any of the places worth trying. */
  RANDOM,
  /** Each near where the cheapest way at some prices lays it. */
  PATH
}
