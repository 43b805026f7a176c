package floorcalc.examples.sheet;

/**
 * How the job sheet looks: on paper black on white, readable from arm's length, the same on A4 and Letter; on a screen white on black
 * where the reader asks for dark, larger and with thicker lines where they ask for contrast.
 */
final class SheetStyle {
  static final String CSS = """
      @page { margin: 11mm 12mm 10mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8.5pt Helvetica, Arial, sans-serif; } }
      @page lying { size: landscape; margin: 10mm 12mm 9mm; }
      html { --ink: #000; --paper: #fff; --thin: #767676; --fine: .2mm; --bold: .4mm; color-scheme: light;
        font: 11pt/1.35 Helvetica, Arial, "Liberation Sans", sans-serif; color: var(--ink); background: var(--paper); }
      body { margin: 0; }
      main { max-width: 186mm; margin: 0 auto; padding: 4mm; }
      h1 { font-size: 19pt; line-height: 1.15; margin: 0 0 2mm; border-top: 3mm solid; padding-top: 2mm; }
      h1 span { display: block; font-size: 10pt; font-weight: normal; letter-spacing: .08em; }
      h1, h2, h3, caption, li { overflow-wrap: anywhere; }
      h2 { font-size: 13pt; margin: 7mm 0 2mm; padding-left: 3mm; border-left: 3mm solid; break-after: avoid; }
      h2 span { font-size: 10pt; font-weight: normal; }
      h3 { font-size: 10.5pt; margin: 4mm 0 1mm; break-after: avoid; }
      p { margin: 0 0 2mm; orphans: 3; widows: 3; }
      h2 + p, h3 + p { break-after: avoid; break-inside: avoid; }
      small { font-size: 8.5pt; }
      em { font-style: normal; font-size: 9pt; }
      code { font: inherit; font-variant-numeric: tabular-nums; }
      .lead { font-size: 9.5pt; }
      a { color: inherit; }
      .skip { position: absolute; left: 4mm; top: -20mm; padding: 3mm; background: var(--paper); border: .7mm solid; }
      .skip:focus { top: 2mm; }
      :focus-visible { outline: .7mm solid; outline-offset: .5mm; }
      .contents { margin: 0 0 2mm; font-size: 9.5pt; }
      .contents ul { list-style: none; margin: 0; padding: 0; columns: 3 40mm; column-gap: 6mm; }
      .contents li { break-inside: avoid; }
      .contents a { display: block; padding: 1.6mm 0; min-height: 5mm; }
      .bring { display: grid; grid-template-columns: repeat(4, 1fr); gap: 0 4mm; margin-bottom: 3mm; }
      .bring div { border-top: .5mm solid; padding-top: 1mm; }
      .bring strong { display: block; font-size: 20pt; line-height: 1.1; }
      .bring b, .bring small { display: block; }
      table { table-layout: fixed; border-collapse: collapse; width: 100%; margin: 0 0 4mm; font-variant-numeric: tabular-nums; }
      caption { text-align: left; font-weight: bold; font-size: 10pt; padding: 0 0 1mm; break-after: avoid; }
      th, td { text-align: left; vertical-align: top; padding: .8mm 2mm .8mm 0; font-size: 10pt;
        border-bottom: var(--fine) solid var(--thin); overflow-wrap: anywhere; }
      thead th { font-size: 8.5pt; border-bottom: var(--bold) solid; vertical-align: bottom; overflow-wrap: break-word; }
      tfoot th, tfoot td { border-top: var(--bold) solid; border-bottom: 0; font-weight: bold; }
      tbody th { font-weight: normal; }
      tr, .step, figure, .stop { break-inside: avoid; }
      table:not(.cut) tr:is(:first-child, :nth-last-child(2)) { break-after: avoid; }
      thead { display: table-header-group; break-inside: avoid; break-after: avoid; }
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
      .stop { border: .7mm solid; padding: 2mm 3mm; }
      .arrow { width: 5mm; height: 5mm; vertical-align: -1mm; }
      .bay { break-before: page; }
      .bay h2 { margin-top: 0; }
      .lying { page: lying; break-before: page; break-after: page; }
      .lying h2 { font-size: 11pt; line-height: 1; margin-bottom: 1mm; }
      figure { margin: 0 0 4mm; }
      figure svg { display: block; max-width: 100%; height: auto; max-height: 250mm; margin: 0 auto; }
      .lying figure { margin: 0; }
      .lying svg { max-height: 182mm; }
      .cut tbody { border-bottom: var(--bold) solid; break-inside: avoid; }
      .cut tbody:first-of-type { break-before: avoid; }
      .cut tbody tr td { border-bottom: var(--fine) solid var(--thin); padding-top: .4mm; padding-bottom: .4mm; line-height: 1.2; }
      .cut tbody tr:last-child td { border-bottom: var(--bold) solid; }
      .cut small { font-size: 10pt; font-weight: bold; }
      .cut .drawn svg { display: block; max-width: 100%; height: auto; margin: 1mm 0; }
      .cut .drawn ul { margin: 0 0 1.5mm; padding-left: 4mm; font-size: 9.5pt; }
      .keep { break-inside: avoid; }
      .cut th[scope=rowgroup] { font-size: 15pt; line-height: 1; font-weight: bold; border-bottom: 0; white-space: nowrap; }
      .cut .key { font-size: 12pt; font-weight: bold; overflow-wrap: normal; }
      input { appearance: none; flex: none; box-sizing: border-box; width: 4.2mm; height: 4.2mm; margin: 0 1mm 0 0; border: .5mm solid; border-radius: 0;
        color: inherit; background: none; vertical-align: -.4mm; }
      input:checked { border-width: 2.1mm; }
      .steps { columns: 2; column-gap: 6mm; }
      .step { font-size: 8pt; line-height: 1.2; padding: 0 0 0 2mm; border-left: var(--bold) solid var(--thin); margin-bottom: 1.5mm; overflow-wrap: anywhere; }
      .step p { margin: 0; }
      .step small { font-size: 8pt; }
      .step ul { margin: 0; padding-left: 6mm; }
      summary { cursor: pointer; padding: 2mm 0; font-weight: bold; }
      .sign { break-inside: avoid; }
      .sign td { width: 22%; height: 11mm; border-left: var(--fine) solid var(--thin); }
      .record, .working { break-before: page; }
      .record h2, .working h2 { margin-top: 0; }
      .fill td, .fill th { border-right: var(--fine) solid var(--thin); padding-left: 1mm; }
      .fill tr > :last-child { border-right: 0; }
      .fill .blank { height: 6mm; }
      .fill .of { font-weight: bold; padding-top: 2mm; }
      .day .blank { height: 11mm; }
      .day small { display: block; font-size: 8pt; }
      .read td, .read th { font-size: 8.5pt; padding-top: .4mm; padding-bottom: .4mm; }
      .read small { display: inline; font-size: 8pt; }
      .ticks { list-style: none; margin: 0 0 3mm; padding: 0; break-inside: avoid; }
      .ticks li { break-inside: avoid; font-size: 10pt; line-height: 1.3; }
      .ticks label { display: flex; gap: 1.5mm; padding: .7mm 0; }
      .ticks input { margin: .3mm 0 0; }
      .ticks span { min-width: 0; overflow-wrap: anywhere; }
      .line { display: block; height: 5mm; border-bottom: var(--fine) solid; }
      .record ul:not(.ticks) { margin: 0 0 3mm; padding-left: 5mm; font-size: 10pt; }
      @media print {
        main { max-width: none; padding: 0; }
        .skip, .contents { display: none; }
        .working:not(:has(details[open])) { display: none; }
        .apart { break-before: page; }
      }
      @media screen {
        .cut thead th { position: sticky; top: 0; background: var(--paper); }
      }
      @media screen and (max-width: 600px) {
        .bring { grid-template-columns: 1fr 1fr; }
        .open ul, .steps { columns: 1; }
        /* A dark edge where a table goes on beyond the window. */
        section { overflow-x: auto; background: linear-gradient(to right, var(--paper) 50%, transparent) 0 0 / 8mm 100% no-repeat local,
          linear-gradient(to left, var(--paper) 50%, transparent) 100% 0 / 8mm 100% no-repeat local,
          linear-gradient(to right, var(--ink), transparent) 0 0 / 2mm 100% no-repeat scroll,
          linear-gradient(to left, var(--ink), transparent) 100% 0 / 2mm 100% no-repeat scroll; }
        table { table-layout: auto; }
        col { width: auto !important; }
        th, td { font-size: 8.5pt; padding-right: 1.1mm; overflow-wrap: break-word; }
        tbody th { overflow-wrap: anywhere; min-width: 13mm; }
        .site tbody th { min-width: 20mm; }
        .cut, .cut caption, .cut tbody { display: block; }
        .cut thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
        .cut tbody { position: relative; padding: 0 0 1mm 17mm; min-height: 12mm; }
        .cut tbody:first-of-type { border-top: var(--bold) solid; }
        .cut th[scope=rowgroup] { position: absolute; left: 0; top: 0; font-size: 13pt; }
        .cut tr { display: grid; grid-template-columns: 25mm 1.7fr 1fr; padding: 1mm 0; }
        .cut tr + tr { border-top: var(--fine) solid var(--thin); }
        .cut tbody tr td, .cut tbody tr:last-child td { border: 0; font-size: 10pt; }
        .cut td:nth-of-type(1), .cut td:nth-of-type(n+5) { grid-column: 1 / -1; }
        .cut tbody tr td.key, .cut tbody tr td.no { font-size: 13pt; }
        .cut td:nth-of-type(5):not([colspan], :empty)::before { content: "saw: "; }
        .cut td:nth-of-type(6)::before { content: "left: "; }
        .cut td br { display: none; }
        .cut em { margin-left: 2mm; }
        .num, .ledger td, td.no { white-space: nowrap; }
        figure { overflow-x: auto; }
        figure svg { min-width: 160mm; }
      }
      @media screen and (pointer: coarse) {
        .ticks label, .cut label { min-height: 11mm; box-sizing: border-box; align-items: center; }
        .cut label { display: flex; }
        input { width: 6.5mm; height: 6.5mm; border-width: .7mm; }
        input:checked { border-width: 3.25mm; }
        .contents a { padding: 3mm 0; }
        summary { padding: 3.5mm 0; }
      }
      @media screen and (prefers-color-scheme: dark) {
        html { --ink: #f4f4f4; --paper: #000; --thin: #8c8c8c; color-scheme: dark; }
        figure svg, .notch { filter: invert(1); }
      }
      @media (prefers-contrast: more) {
        html { --thin: var(--ink); --fine: .35mm; --bold: .7mm; }
        th, td, .lead, .open, .kept, .contents, .ticks li, .record ul:not(.ticks) { font-size: 11pt; }
        thead th, small, .site small, .kept small, .step, .step small { font-size: 10pt; }
        .cut .key { font-size: 14pt; }
        .cut small, .cut .no { font-size: 12pt; }
      }
      @media (forced-colors: active) {
        figure svg, .notch { filter: none; background: #fff; forced-color-adjust: none; }
      }
      """;

  private SheetStyle() {
  }
}
