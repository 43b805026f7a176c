package floorcalc.movement;

/**
 * Wood Handbook, table 13-5: name and other names; coefficient radial; tangential, both per 1 % moisture content;
 * the moisture content in per cent that shrinkage starts at; a note.
 */
final class TableOfDimensionalChange {
  /** Hardwoods of the United States. */
  static final String HARDWOODS = """
      Alder, red;0.00151;0.00256;30;
      Apple;0.00205;0.00376;30;
      Ash, black;0.00172;0.00274;30;
      Ash, Oregon;0.00141;0.00285;30;
      Ash, pumpkin;0.00126;0.00219;30;
      Ash, white;0.00169;0.00274;30;
      Ash, green;0.00169;0.00274;30;
      Aspen, quaking;0.00119;0.00234;30;
      Basswood, American;0.00230;0.00330;30;
      Beech, American;0.00190;0.00431;30;
      Birch, paper;0.00219;0.00304;30;
      Birch, river;0.00162;0.00327;30;
      Birch, yellow;0.00256;0.00338;30;
      Birch, sweet;0.00256;0.00338;30;
      Buckeye, yellow;0.00123;0.00285;30;
      Butternut;0.00116;0.00223;30;
      Catalpa, northern;0.00085;0.00169;30;
      Cherry, black;0.00126;0.00248;30;
      Chestnut, American;0.00116;0.00234;30;
      Cottonwood, black;0.00123;0.00304;30;
      Cottonwood, eastern;0.00133;0.00327;30;
      Elm, American;0.00144;0.00338;30;
      Elm, rock;0.00165;0.00285;30;
      Elm, slippery;0.00169;0.00315;30;
      Elm, winged;0.00183;0.00419;30;
      Elm, cedar;0.00183;0.00419;30;
      Hackberry;0.00165;0.00315;30;
      Hickory, pecan|pecan;0.00169;0.00315;30;
      Honeylocust;0.00144;0.00230;30;
      Locust, black;0.00158;0.00252;30;
      Madrone, Pacific;0.00194;0.00451;30;
      Magnolia, cucumbertree;0.00180;0.00312;30;
      Magnolia, southern;0.00187;0.00230;30;
      Magnolia, sweetbay;0.00162;0.00293;30;
      Maple, bigleaf;0.00126;0.00248;30;
      Maple, red;0.00137;0.00289;30;
      Maple, silver;0.00102;0.00252;30;
      Maple, black;0.00165;0.00353;30;
      Maple, sugar|hard maple;0.00165;0.00353;30;
      Oak, black;0.00123;0.00230;30;
      Red oak, commercial|red oak;0.00158;0.00369;30;
      Red oak, California;0.00123;0.00230;30;
      Red oak: water, laurel, willow;0.00151;0.00350;30;
      White oak, commercial|white oak;0.00180;0.00365;30;
      White oak, live;0.00230;0.00338;30;
      White oak, Oregon white;0.00144;0.00327;30;
      White oak, overcup;0.00183;0.00462;30;
      Persimmon, common;0.00278;0.00403;30;
      Sassafras;0.00137;0.00216;30;
      Sweetgum;0.00183;0.00365;30;
      Sycamore, American;0.00172;0.00296;30;
      Tanoak;0.00169;0.00423;30;
      Tupelo, black;0.00176;0.00308;30;
      Tupelo, water;0.00144;0.00267;30;
      Walnut, black;0.00190;0.00274;30;
      Hickory, true|hickory;0.00259;0.00411;30;
      Holly, American;0.00165;0.00353;30;
      Willow, black;0.00112;0.00308;30;
      Willow, Pacific;0.00099;0.00319;30;
      Yellow-poplar;0.00158;0.00289;30;
      """;

  /** Softwoods of the United States. */
  static final String SOFTWOODS = """
      Baldcypress;0.00130;0.00216;30;
      Cedar, yellow;0.00095;0.00208;30;
      Cedar, Atlantic white;0.00099;0.00187;30;
      Cedar, eastern red;0.00106;0.00162;30;
      Cedar, incense;0.00112;0.00180;30;
      Cedar, northern white;0.00101;0.00229;22;
      Cedar, Port-Orford;0.00158;0.00241;30;
      Cedar, western red;0.00111;0.00234;22;
      Douglas-fir, coast;0.00165;0.00267;30;
      Douglas-fir, interior north;0.00130;0.00241;30;
      Douglas-fir, interior west;0.00165;0.00263;30;
      Fir, balsam;0.00099;0.00241;30;
      Fir, California red;0.00155;0.00278;30;
      Fir, grand;0.00112;0.00245;30;doubtful: the same figures as white fir, in one text alone
      Fir, noble;0.00148;0.00293;30;
      Fir, Pacific silver;0.00151;0.00327;30;
      Fir, subalpine;0.00088;0.00259;30;
      Fir, white;0.00112;0.00245;30;
      Hemlock, eastern;0.00102;0.00237;30;
      Hemlock, western;0.00144;0.00274;30;
      Larch, western;0.00155;0.00323;30;
      Pine, eastern white;0.00071;0.00212;30;
      Pine, jack;0.00126;0.00230;30;
      Pine, Jeffrey;0.00148;0.00234;30;
      Pine, loblolly;0.00165;0.00259;30;
      Pine, lodgepole;0.00148;0.00234;30;
      Pine, longleaf|longleaf pine;0.00176;0.00263;30;
      Pine, pond;0.00165;0.00259;30;
      Pine, ponderosa;0.00133;0.00216;30;
      Pine, red;0.00130;0.00252;30;
      Pine, shortleaf;0.00158;0.00271;30;
      Pine, slash;0.00187;0.00267;30;
      Pine, sugar;0.00099;0.00194;30;
      Pine, Virginia;0.00144;0.00252;30;
      Pine, western white;0.00141;0.00259;30;
      Redwood, old growth;0.00120;0.00205;22;
      Redwood, second growth;0.00101;0.00229;22;
      Spruce, black;0.00141;0.00237;30;
      Spruce, Engelmann;0.00130;0.00248;30;
      Spruce, red;0.00130;0.00274;30;
      Spruce, Sitka;0.00148;0.00263;30;
      Spruce, white;0.00130;0.00274;30;
      Tamarack;0.00126;0.00259;30;
      """;

  /** Woods imported into the United States. */
  static final String IMPORTED = """
      Andiroba (crabwood)|andiroba|crabwood;0.00137;0.00274;30;
      Angelique;0.00180;0.00312;30;
      Apitong, keruing|apitong|keruing;0.00243;0.00527;22;
      Avodire;0.00126;0.00226;30;
      Balsa;0.00102;0.00267;30;
      Banak;0.00158;0.00312;30;
      Cativo;0.00078;0.00183;30;
      Cuangare;0.00183;0.00342;30;
      Greenheart;0.00390;0.00430;22;
      Iroko;0.00153;0.00205;22;
      Khaya (African mahogany)|khaya|African mahogany;0.00141;0.00201;30;
      Lauan, dark red;0.00133;0.00267;30;
      Lauan, light red;0.00126;0.00241;30;
      Limba;0.00151;0.00187;30;
      Mahogany (American)|mahogany|American mahogany;0.00172;0.00238;22;
      Meranti;0.00126;0.00289;30;
      Obeche;0.00106;0.00183;30;
      Okoume;0.00194;0.00212;30;
      Parana pine;0.00137;0.00278;30;
      Paumarfim;0.00158;0.00312;30;
      Primavera;0.00106;0.00180;30;
      Ramin;0.00133;0.00308;30;
      Santa Maria;0.00187;0.00278;30;
      Spanish-cedar;0.00141;0.00219;30;
      Teak;0.00101;0.00186;22;
      """;

  private TableOfDimensionalChange() {
  }
}
