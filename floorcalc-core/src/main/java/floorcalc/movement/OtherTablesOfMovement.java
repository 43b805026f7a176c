package floorcalc.movement;

/**
 * Other lists of movement: name and other names; radial; tangential; start of shrinkage;
 * a note.
 */
final class OtherTablesOfMovement {
  /** DIN 68100, per cent of width for 1 % moisture content; a range where the source gives one. */
  static final String EUROPEAN = """
      Norway spruce|Fichte;0.19;0.39;;
      Scots pine|Kiefer;0.19;0.36;;
      European larch|Lärche;0.14;0.30;;
      Douglas-fir|Douglasie;0.15;0.27;;
      silver fir|Tanne;0.14;0.28;;
      afrormosia;0.18;0.32;;
      afzelia (doussie)|afzelia|doussie;0.11;0.22;;
      European birch|Birke;0.29;0.41;;
      azobe|Bongossi;0.31;0.40;;
      European beech|Buche;0.20;0.41;;
      European oak|Eiche;0.16;0.36;;
      European ash|Esche;0.21;0.38;;
      iroko;0.19;0.28;;
      khaya;0.12;0.22;;
      makore;0.22;0.27;;
      yellow meranti|Meranti, gelb;0.12;0.43;;
      red meranti|Meranti, rot;0.11;0.25;;
      muhuhu;0.25;0.40;;
      niangon;0.18;0.33;;
      European walnut|Nussbaum;0.18;0.29;;
      European poplar|Pappel;0.13;0.31;;
      sapele|sapelli;0.24;0.32;;
      sipo (utile)|sipo|utile;0.20;0.25;;
      teak;0.16;0.26;;
      European elm|Rüster (Ulme)|Rüster|Ulme;0.20;0.23;;
      wenge;0.22;0.34;;doubtful: does not follow from the shrinkage printed beside it
      European cherry|Kirschbaum;0.16-0.18;0.26-0.30;;
      sycamore maple|Bergahorn;0.10-0.20;0.22-0.30;;
      robinia|Robinie;0.20-0.26;0.32-0.38;;
      sweet chestnut|Edelkastanie;0.14;0.21-0.26;;
      """;

  /** Trade list A200, tangential alone, per 1 % moisture content. */
  static final String TRADE_LIST = """
      American beech;;0.00431;;
      True hickory;;0.00411;;
      Jarrah;;0.00396;;
      Red oak;;0.00369;;
      White oak;;0.00365;;
      Hard maple;;0.00353;;
      Yellow birch;;0.00338;;
      Pecan;;0.00315;;
      Brazilian cherry (jatoba)|Brazilian cherry|jatoba;;0.00300;;moves more in practice, as the list says
      Black walnut;;0.00274;;
      White ash;;0.00274;;
      Douglas fir;;0.00267;;
      Southern yellow pine;;0.00265;;
      Heart pine;;0.00263;;
      Black cherry;;0.00248;;
      Santos mahogany;;0.00238;;
      Purpleheart;;0.00212;;
      Wenge;;0.00201;;moves more in practice, as the list says
      Teak;;0.00186;;
      Padauk;;0.00180;;
      Australian cypress;;0.00162;;moves more in practice, as the list says
      Merbau;;0.00158;;moves more in practice, as the list says
      Mesquite;;0.00129;;
      """;

  private OtherTablesOfMovement() {
  }
}
