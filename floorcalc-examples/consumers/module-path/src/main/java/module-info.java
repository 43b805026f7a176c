/** A program of yours as a module. The library is an automatic module: its name will stay when it becomes one of its own. */
module example.floor {
  requires floorcalc.core;
}
