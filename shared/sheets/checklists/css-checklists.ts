/** Styles of the checklists and of the cooling sheet: a box to tick, one act, one line to sign. */
export const checklistsCss = `
.sheet .pause { break-inside: avoid; margin-bottom: 4mm; }
.sheet .pause h2 { margin: 0; border-top: 1.5pt solid #000; padding-top: 1.5mm; }
.sheet .pause ul.points { list-style: none; margin: 1.5mm 0 0; padding: 0; }
.sheet .pause ul.points li { display: grid; grid-template-columns: 10mm 1fr auto; gap: 3mm; align-items: center; min-height: 10mm; border-bottom: 0.5pt solid #bfbfbf; font-size: 14pt; line-height: 1.15; }
.sheet .pause .kind { font-size: 11pt; color: #595959; }
.sheet .pause .signed { display: flex; align-items: flex-end; gap: 3mm; margin-top: 2mm; height: 10mm; }
.sheet .pause .signed .line { flex: 1; border-bottom: 1pt solid #000; }
.sheet .pause .signed .line.when { flex: 0 0 36mm; }
.sheet table.cooling th.t0, .sheet table.cooling td.tickcell { width: 11mm; }
.sheet table.cooling { table-layout: fixed; }
.sheet table.cooling th.what { width: 54mm; }
.sheet table.cooling th.t2 { width: 19mm; }
.sheet table.cooling td.when { font-size: 14pt; font-weight: 700; white-space: nowrap; }
.sheet table.cooling td { padding-top: 1.2mm; padding-bottom: 1.2mm; vertical-align: top; }
.sheet-cooling ul.plain { padding-left: 0; margin-top: 3mm; }
.sheet-cooling ul.plain li { padding: 0.8mm 0; border-bottom: 0.5pt solid #bfbfbf; }
`;
