package floorcalc.movement;

/**
 * Wood Handbook, tables 4-3 and 4-4: name and other names; shrinkage from green to oven-dry in per cent, radial;
 * tangential; by volume; the moisture content that it starts at; whether the row is from memory.
 */
final class TablesOfShrinkage {
  /** Table 4-3, woods of the United States. */
  static final String DOMESTIC = """
      Alder, red;4.4;7.3;12.6;30;
      Ash, black;5.0;7.8;15.2;30;
      Ash, blue;3.9;6.5;11.7;30;
      Ash, green;4.6;7.1;12.5;30;
      Ash, Oregon;4.1;8.1;13.2;30;
      Ash, pumpkin;3.7;6.3;12.0;30;
      Ash, white;4.9;7.8;13.3;30;
      Aspen, bigtooth;3.3;7.9;11.8;30;
      Aspen, quaking;3.5;6.7;11.5;30;
      Basswood, American;6.6;9.3;15.8;30;
      Beech, American;5.5;11.9;17.2;30;
      Birch, Alaska paper;6.5;9.9;16.7;30;
      Birch, gray;5.2;;14.7;30;
      Birch, paper;6.3;8.6;16.2;30;
      Birch, river;4.7;9.2;13.5;30;
      Birch, sweet;6.5;9.0;15.6;30;
      Birch, yellow;7.3;9.5;16.8;30;
      Buckeye, yellow;3.6;8.1;12.5;30;
      Butternut;3.4;6.4;10.6;30;
      Cherry, black;3.7;7.1;11.5;30;
      Chestnut, American;3.4;6.7;11.6;30;
      Cottonwood, balsam poplar|balsam poplar;3.0;7.1;10.5;30;
      Cottonwood, black;3.6;8.6;12.4;30;
      Cottonwood, eastern;3.9;9.2;13.9;30;
      Elm, American;4.2;9.5;14.6;30;
      Elm, cedar;4.7;10.2;15.4;30;
      Elm, rock;4.8;8.1;14.9;30;
      Elm, slippery;4.9;8.9;13.8;30;
      Elm, winged;5.3;11.6;17.7;30;
      Hackberry;4.8;8.9;13.8;30;
      Hickory, pecan;4.9;8.9;13.6;30;
      Hickory, true, mockernut|mockernut hickory;7.7;11.0;17.8;30;
      Hickory, true, pignut|pignut hickory;7.2;11.5;17.9;30;
      Hickory, true, shagbark|shagbark hickory;7.0;10.5;16.7;30;memory
      Hickory, true, shellbark|shellbark hickory;7.6;12.6;19.2;30;memory
      Holly, American;4.8;9.9;16.9;30;memory
      Honeylocust;4.2;6.6;10.8;30;memory
      Locust, black;4.6;7.2;10.2;30;memory
      Madrone, Pacific;5.6;12.4;18.1;30;memory
      Magnolia, cucumbertree;5.2;8.8;13.6;30;memory
      Magnolia, southern;5.4;6.6;12.3;30;memory
      Magnolia, sweetbay;4.7;8.3;12.9;30;memory
      Maple, bigleaf;3.7;7.1;11.6;30;memory
      Maple, black;4.8;9.3;14.0;30;memory
      Maple, red;4.0;8.2;12.6;30;memory
      Maple, silver;3.0;7.2;12.0;30;memory
      Maple, striped;3.2;8.6;12.3;30;memory
      Maple, sugar|hard maple;4.8;9.9;14.7;30;
      Oak, red, black|black oak;4.4;11.1;15.1;30;memory
      Oak, red, laurel|laurel oak;4.0;9.9;19.0;30;memory
      Oak, red, northern red|northern red oak;4.0;8.6;13.7;30;
      Oak, red, pin|pin oak;4.3;9.5;14.5;30;memory
      Oak, red, scarlet|scarlet oak;4.4;10.8;14.7;30;memory
      Oak, red, southern red|southern red oak;4.7;11.3;16.1;30;memory
      Oak, red, water|water oak;4.4;9.8;16.1;30;memory
      Oak, red, willow|willow oak;5.0;9.6;18.9;30;memory
      Oak, white, bur|bur oak;4.4;8.8;12.7;30;memory
      Oak, white, chestnut|chestnut oak;5.3;10.8;16.4;30;
      Oak, white, live|live oak;6.6;9.5;14.7;30;
      Oak, white, overcup|overcup oak;5.3;12.7;16.0;30;
      Oak, white, post|post oak;5.4;9.8;16.2;30;
      Oak, white, swamp chestnut|swamp chestnut oak;5.2;10.8;16.4;30;
      Oak, white, white|white oak;5.6;10.5;16.3;30;
      Persimmon, common;7.9;11.2;19.1;30;
      Sassafras;4.0;6.2;10.3;30;
      Sweetgum;5.3;10.2;15.8;30;
      Sycamore, American;5.0;8.4;14.1;30;
      Tanoak;4.9;11.7;17.3;30;
      Tupelo, black;5.1;8.7;14.4;30;
      Tupelo, water;4.2;7.6;12.5;30;
      Walnut, black;5.5;7.8;12.8;30;
      Willow, black;3.3;8.7;13.9;30;
      Yellow-poplar;4.6;8.2;12.7;30;
      Cedar, yellow;2.8;6.0;9.2;30;
      Cedar, Atlantic white;2.9;5.4;8.8;30;
      Cedar, eastern redcedar;3.1;4.7;7.8;30;
      Cedar, incense;3.3;5.2;7.7;30;
      Cedar, northern white;2.2;4.9;7.2;22;
      Cedar, Port-Orford;4.6;6.9;10.1;30;
      Cedar, western redcedar;2.4;5.0;6.8;22;
      Douglas-fir, coast;4.8;7.6;12.4;30;
      Douglas-fir, interior north;3.8;6.9;10.7;30;
      Douglas-fir, interior west;4.8;7.5;11.8;30;
      Fir, balsam;2.9;6.9;11.2;30;
      Fir, California red;4.5;7.9;11.4;30;
      Fir, grand;3.4;7.5;11.0;30;
      Fir, noble;4.3;8.3;12.4;30;
      Fir, Pacific silver;4.4;9.2;13.0;30;
      Fir, subalpine;2.6;7.4;9.4;30;
      Fir, white;3.3;7.0;9.8;30;
      Hemlock, eastern;3.0;6.8;9.7;30;
      Hemlock, mountain;4.4;7.1;11.1;30;
      Hemlock, western;4.2;7.8;12.4;30;
      Larch, western;4.5;9.1;14.0;30;
      Pine, eastern white;2.1;6.1;8.2;30;memory
      Pine, jack;3.7;6.6;10.3;30;
      Pine, loblolly;4.8;7.4;12.3;30;
      Pine, lodgepole;4.3;6.7;11.1;30;
      Pine, longleaf;5.1;7.5;12.2;30;
      Pine, pitch;4.0;7.1;10.9;30;memory
      Pine, pond;5.1;7.1;11.2;30;memory
      Pine, ponderosa;3.9;6.2;9.7;30;memory
      Pine, red;3.8;7.2;11.3;30;
      Pine, shortleaf;4.6;7.7;12.3;30;
      Pine, slash;5.4;7.6;12.1;30;
      Pine, sugar;2.9;5.6;7.9;30;memory
      Pine, Virginia;4.2;7.2;11.9;30;memory
      Pine, western white;4.1;7.4;11.8;30;memory
      Redwood, old growth;2.6;4.4;6.8;22;memory
      Redwood, young growth;2.2;4.9;7.0;22;memory
      Spruce, black;4.1;6.8;11.3;30;memory
      Spruce, Engelmann;3.8;7.1;11.0;30;
      Spruce, red;3.8;7.8;11.8;30;memory
      Spruce, Sitka;4.3;7.5;11.5;30;memory
      Tamarack;3.7;7.4;13.6;30;memory
      """;

  /** Table 4-4, woods imported into the United States. */
  static final String IMPORTED = """
      Afrormosia|Pericopsis elata;3.0;6.4;10.7;30;
      Albarco;2.8;5.4;9.0;30;
      Andiroba|Carapa guianensis;3.1;7.6;10.4;30;
      Angelin|Andira inermis;4.6;9.8;12.5;30;
      Angelique|Dicorynia guianensis;5.2;8.8;14.0;30;
      Apitong, keruing|apitong|keruing;5.2;10.9;16.1;30;
      Avodire|Turreanthus africanus;4.6;6.7;12.0;30;
      Azobe|Lophira alata;8.4;11.0;17.0;30;
      Balata|Manilkara bidentata;6.3;9.4;16.9;30;
      Balsa|Ochroma pyramidale;3.0;7.6;10.8;30;
      Cativo|Prioria copaifera;2.4;5.3;8.9;30;
      Ceiba|Ceiba pentandra;2.1;4.1;10.4;30;
      Courbaril (jatoba)|Courbaril|jatoba|Hymenaea courbaril;4.5;8.5;12.7;30;
      Degame|Calycophyllum candidissimum;4.8;8.6;13.2;30;
      Determa|Ocotea rubra;3.7;7.6;10.4;30;
      Ekop|Tetraberlinia tubmaniana;5.6;10.2;15.8;30;
      Goncalo alves|Astronium graveolens;4.0;7.6;10.0;30;
      Greenheart|Chlorocardium rodiei;8.8;9.6;17.1;30;
      Hura|Hura crepitans;2.7;4.5;7.3;30;
      Ilomba|Pycnanthus angolensis;4.6;8.4;12.8;30;
      Ipe (lapacho)|Ipe|lapacho|Tabebuia serratifolia;6.6;8.0;13.2;30;
      Iroko|Milicia excelsa;2.8;3.8;8.8;30;
      Jarrah|Eucalyptus marginata;7.7;11.0;18.7;30;
      Jelutong|Dyera costulata;2.3;5.5;7.8;30;
      Kapur|Dryobalanops aromatica;4.6;10.2;14.8;30;
      Karri|Eucalyptus diversicolor;7.8;12.4;20.2;30;
      Kempas|Koompassia malaccensis;6.0;7.4;14.5;30;
      Lauan, white|Pentacme contorta;4.0;7.7;11.7;30;
      Limba|Terminalia superba;4.5;6.2;10.8;30;
      Macawood;2.7;3.5;6.5;30;
      Mahogany, African;2.5;4.5;8.8;30;
      Mahogany, true|Swietenia macrophylla;3.0;4.1;7.8;30;
      Manbarklak;5.8;10.3;15.9;30;
      Manni|Symphonia globulifera;5.7;9.7;15.6;30;
      Marishballi;7.5;11.7;17.2;30;
      Meranti, white;3.0;6.6;7.7;30;
      Meranti, yellow;3.4;8.0;10.4;30;
      Merbau;2.7;4.6;7.8;30;
      Mersawa;4.0;9.0;14.6;30;
      Mora;6.9;9.8;18.8;30;
      Obeche|Triplochiton scleroxylon;3.0;5.4;9.2;30;
      Ocote pine|Pinus oocarpa;4.6;7.5;12.3;30;
      Okoume|Aucoumea klaineana;4.1;6.1;11.3;30;
      Opepe;4.5;8.4;12.6;30;
      Para-angelim|Hymenolobium excelsum;4.4;7.1;10.2;30;
      Parana pine|Araucaria angustifolia;4.0;7.9;11.6;30;
      Pau marfim|Balfourodendron riedelianum;4.6;8.8;13.4;30;
      Peroba de campos|Paratecoma peroba;3.8;6.6;10.5;30;
      Peroba rosa|Aspidosperma polyneuron;3.8;6.4;11.6;30;
      Pilon|Hyeronima alchorneoides;5.4;11.7;17.0;30;
      Pine, Caribbean|Pinus caribaea;6.3;7.8;12.9;30;
      Piquia|Caryocar villosum;5.0;8.0;13.0;30;
      Primavera|Tabebuia donnell-smithii;3.1;5.1;9.1;30;
      Purpleheart;3.2;6.1;9.9;30;
      Ramin|Gonystylus bancanus;4.3;8.7;13.4;30;
      Rosewood, Brazilian|Dalbergia nigra;2.9;4.6;8.5;30;
      Rosewood, Indian|Dalbergia latifolia;2.7;5.8;8.5;30;
      Sande|Brosimum utile;4.6;8.0;13.6;30;
      Sapele|Entandrophragma cylindricum;4.6;7.4;14.0;30;
      Sepetir|Pseudosindora palustris;3.7;7.0;10.5;30;
      Spanish-cedar;4.2;6.3;10.3;30;
      Sucupira|Diplotropis purpurea;4.6;7.0;11.8;30;
      Teak|Tectona grandis;2.5;5.8;7.0;30;
      Wallaba;3.6;6.9;10.0;30;
      """;

  private TablesOfShrinkage() {
  }
}
