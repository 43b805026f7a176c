package floorcalc.examples.sheet;

/** How the job sheet looks: black on white, readable from arm's length, the same on A4 and Letter. */
final class SheetStyle {
  static final String CSS = """
      @page { margin: 10mm 12mm; }
      @page lying { size: landscape; margin: 9mm 12mm; }
      html { font: 11pt/1.35 Helvetica, Arial, "Liberation Sans", sans-serif; color: #000; background: #fff; }
      body { margin: 0; }
      main { max-width: 186mm; margin: 0 auto; padding: 4mm; }
      @media print { main { max-width: none; padding: 0; } }
      h1 { font-size: 19pt; line-height: 1.15; margin: 0 0 2mm; border-top: 3mm solid #000; padding-top: 2mm; }
      h1 span { display: block; font-size: 10pt; font-weight: normal; letter-spacing: .08em; }
      h2 { font-size: 13pt; margin: 7mm 0 2mm; padding-left: 3mm; border-left: 3mm solid #000; break-after: avoid; }
      h2 span { font-size: 10pt; font-weight: normal; }
      h3 { font-size: 10.5pt; margin: 4mm 0 1mm; break-after: avoid; }
      p { margin: 0 0 2mm; }
      h2 + p, h3 + p { break-after: avoid; }
      small { font-size: 8.5pt; }
      em { font-style: normal; font-size: 9pt; }
      code { font: inherit; font-variant-numeric: tabular-nums; }
      .lead { font-size: 9.5pt; }
      a { color: inherit; }
      .bring { display: grid; grid-template-columns: repeat(4, 1fr); gap: 0 4mm; margin-bottom: 3mm; }
      .bring div { border-top: .5mm solid #000; padding-top: 1mm; }
      .bring strong { display: block; font-size: 20pt; line-height: 1.1; }
      .bring b, .bring small { display: block; }
      table { table-layout: fixed; border-collapse: collapse; width: 100%; margin: 0 0 4mm; font-variant-numeric: tabular-nums; }
      caption { text-align: left; font-weight: bold; font-size: 10pt; padding: 0 0 1mm; }
      th, td { text-align: left; vertical-align: top; padding: .8mm 2mm .8mm 0; font-size: 10pt;
        border-bottom: .15mm solid #777; overflow-wrap: break-word; }
      thead th { font-size: 8.5pt; border-bottom: .4mm solid #000; vertical-align: bottom; }
      tfoot th, tfoot td { border-top: .4mm solid #000; border-bottom: 0; font-weight: bold; }
      tbody th { font-weight: normal; }
      tr, .step, figure, .stop { break-inside: avoid; }
      thead { display: table-header-group; }
      .source { font-size: 8.5pt; }
      .site td, .site th { font-size: 9pt; }
      .site thead th { font-size: 8.5pt; }
      .edges td, .edges th { font-size: 9pt; }
      .edges small { display: block; font-size: 8pt; }
      .open { font-size: 10pt; margin: 0 0 3mm; }
      .kept { font-size: 9pt; }
      .kept p { margin: 0; }
      .kept li { break-inside: avoid; }
      .site small { display: block; }
      .site small, .kept small { font-size: 8pt; }
      .open ul { margin: 0; padding-left: 5mm; columns: 2; column-gap: 6mm; }
      .open li { break-inside: avoid; }
      .num, .ledger thead th:not(:first-child) { text-align: right; }
      td.no { font-weight: bold; }
      .stop { border: .7mm solid #000; padding: 2mm 3mm; }
      .arrow { width: 5mm; height: 5mm; vertical-align: -1mm; }
      .bay { break-before: page; }
      .bay h2 { margin-top: 0; }
      .lying { page: lying; break-before: page; break-after: page; }
      .lying h2 { font-size: 11pt; line-height: 1; margin-bottom: 1mm; }
      figure { margin: 0 0 4mm; }
      figure svg { display: block; max-width: 100%; height: auto; max-height: 250mm; margin: 0 auto; }
      .lying figure { margin: 0; }
      .lying svg { max-height: 184mm; }
      .cut tbody { border-bottom: .4mm solid #000; break-inside: avoid; }
      .cut tbody tr td { border-bottom: .1mm solid #aaa; padding-top: .4mm; padding-bottom: .4mm; line-height: 1.2; }
      .cut tbody tr:last-child td { border-bottom: .4mm solid #000; }
      .cut .drawn svg { display: block; max-width: 100%; height: auto; margin: 1mm 0; }
      .cut .drawn ul { margin: 0 0 1.5mm; padding-left: 4mm; font-size: 9.5pt; }
      .keep { break-inside: avoid; }
      .cut th[scope=rowgroup] { font-size: 15pt; line-height: 1; font-weight: bold; border-bottom: 0; white-space: nowrap; }
      .cut .key { font-size: 12pt; font-weight: bold; }
      .tick { display: inline-block; width: 3.5mm; height: 3.5mm; border: .4mm solid #000; margin-right: 1mm; }
      .steps { columns: 2; column-gap: 6mm; }
      .step { font-size: 8pt; line-height: 1.2; padding: 0 0 0 2mm; border-left: .4mm solid #777; margin-bottom: 1.5mm; }
      .step p { margin: 0; }
      .step ul { margin: 0; padding-left: 6mm; }
      .sign { break-inside: avoid; }
      .sign td { width: 22%; height: 11mm; border-left: .15mm solid #777; }
      .record, .working { break-before: page; }
      .record h2 { margin-top: 0; }
      .fill td, .fill th { border-right: .15mm solid #777; padding-left: 1mm; }
      .fill tr > :last-child { border-right: 0; }
      .fill .blank { height: 6mm; }
      .fill .of { font-weight: bold; padding-top: 2mm; }
      .day .blank { height: 11mm; }
      .day small { display: block; font-size: 7.5pt; }
      .read td, .read th { font-size: 8.5pt; padding-top: .4mm; padding-bottom: .4mm; }
      .read small { display: inline; font-size: 7.5pt; }
      .ticks { list-style: none; margin: 0 0 3mm; padding: 0; break-inside: avoid; }
      .ticks li { display: flex; gap: 1.5mm; break-inside: avoid; font-size: 10pt; line-height: 1.3; padding: .7mm 0; }
      .ticks .tick { flex: none; margin: .4mm 0 0; }
      .ticks span { min-width: 0; overflow-wrap: anywhere; }
      .line { display: block; height: 5mm; border-bottom: .2mm solid #000; }
      .record ul:not(.ticks) { margin: 0 0 3mm; padding-left: 5mm; font-size: 10pt; }
      @media screen and (max-width: 600px) {
        .bring { grid-template-columns: 1fr 1fr; }
        .open ul, .steps { columns: 1; }
        section { overflow-x: auto; }
        table { table-layout: auto; }
        col { width: auto !important; }
        th, td { font-size: 8.5pt; padding-right: 1.5mm; overflow-wrap: normal; }
        .cut .key { font-size: 10pt; white-space: nowrap; }
        .cut th[scope=rowgroup] { font-size: 12pt; }
        .num, .ledger td, td.no { white-space: nowrap; }
        figure { overflow-x: auto; }
        figure svg { min-width: 160mm; }
      }
      """;

  private SheetStyle() {
  }
}
