package floorcalc.boards;

/** What the search goes by: the worth of offcuts on hand, and what the runs still to lay cost at least. */
interface Guide {
  /** The worth in boards of an offcut with a factory end on the right. */
  double startOffcut(long length);

  /** The worth in boards of an offcut with a factory end on the left. */
  double endOffcut(long length);

  /** What the runs after one cost at least, in boards, up to a constant; by the place of that run's first joint. */
  double toFinish(int run, long joint);

  /** Offcuts are worth their length and a kerf, as parts of a board and a kerf; the rest costs the same whatever was laid. */
  static Guide byLength(Stock stock) {
    double whole = (double) stock.longest() + stock.kerf;
    return new Guide() {
      @Override
      public double startOffcut(long length) {
        return (length + stock.kerf) / whole;
      }

      @Override
      public double endOffcut(long length) {
        return (length + stock.kerf) / whole;
      }

      @Override
      public double toFinish(int run, long joint) {
        return 0;
      }
    };
  }

  /** Offcuts are worth what the piece would cost that uses them whole; the rest costs what the cheapest way through it costs. */
  static Guide byPrices(PriceGame game) {
    PriceList prices = game.prices();
    PhaseCosts costs = game.costsAtBest();
    double[][] rest = game.path().toFinish();
    return new Guide() {
      @Override
      public double startOffcut(long length) {
        return prices.startPiece(length);
      }

      @Override
      public double endOffcut(long length) {
        return prices.endPiece(length);
      }

      @Override
      public double toFinish(int run, long joint) {
        return rest[run + 1][costs.cellOf(joint)];
      }
    };
  }
}
