/** Styles of the tables: heads repeat on every page, rows never split, 14 mm rows to tick, 28 pt for what is read from a metre away. */
export const tableCss = `
.sheet table { width: 100%; border-collapse: collapse; }
.sheet thead { display: table-header-group; break-inside: avoid; }
.sheet tbody { break-inside: auto; }
.sheet tr { break-inside: avoid; }
.sheet .keep { break-inside: avoid; }
.sheet th { font-size: 11pt; font-weight: 400; color: #595959; text-align: left; vertical-align: bottom; padding: 1mm 3mm 1mm 0; border-bottom: 0.75pt solid #000; }
.sheet td { padding: 1.2mm 3mm 1.2mm 0; vertical-align: middle; border-bottom: 0.5pt solid #bfbfbf; }
.sheet th:last-child, .sheet td:last-child { padding-right: 0; }
.sheet td.top { vertical-align: top; }
.sheet .n { text-align: right; }
.sheet .clock, .sheet .nowrap { white-space: nowrap; }
.sheet .tickcell { width: 11mm; padding-right: 3mm; }
.sheet .big { font-size: 28pt; font-weight: 700; line-height: 1; white-space: nowrap; }
.sheet .mid { font-size: 20pt; line-height: 1.1; }
.sheet .strong { font-weight: 700; }
.sheet tr.tall > td { height: 14mm; padding-top: 0; padding-bottom: 0; }
.sheet tr.hour > td { border-top: 1.5pt solid #000; }
.sheet .tasks .t0, .sheet .tasks .tickcell { padding-left: 3mm; position: relative; }
.sheet tr.noslip > td.start > .nowrap { display: inline-block; border: 1.5pt solid #000; padding: 0.3mm 0.8mm; margin-left: -1.3mm; }
.sheet tr.changed > td:first-child { position: relative; padding-left: 3mm; padding-right: 2mm; }
.sheet tr.changed > td:first-child::before { content: ''; position: absolute; left: 0; top: 0; bottom: 0; border-left: 1.5mm solid #000; }
.sheet .before { font-size: 11pt; font-weight: 400; color: #595959; white-space: nowrap; }
.sheet .before.wrap { white-space: normal; }
.sheet td.start .before, .sheet td.until .before, .sheet td.makes .before { display: block; line-height: 1.1; }
.sheet .since { border: 0.75pt solid #000; border-left: 1.5mm solid #000; padding: 1.2mm 3mm; margin-bottom: 3mm; break-inside: avoid; font-size: 11pt; }
.sheet .since ul { list-style: none; }
.sheet .bowl td { border-bottom: 0.75pt solid #000; padding: 1.5mm 0; }
.sheet .line { display: flex; align-items: center; gap: 3mm; }
.sheet .line > .tick { flex: none; }
.sheet .bowl .detail { font-size: 11pt; padding-left: 8mm; }
.sheet .fry .for { width: 46mm; }
.sheet .fry.snug tr.tall > td { height: 11.3mm; }
.sheet .sectionrow th { font-size: 14pt; font-weight: 700; color: #000; padding-top: 4mm; border-bottom: 1.5pt solid #000; }
.sheet .detailrow td { padding: 0.8mm 0 0.8mm 11mm; border-bottom-color: transparent; }
.sheet .shopping td, .sheet .shopping th { padding-right: 2mm; }
.sheet .shopping td.n:not(:last-child), .sheet .shopping th.n:not(:last-child) { padding-right: 4mm; }
.sheet .shopping { table-layout: fixed; }
.sheet .shopping .w1 { width: 8mm; }
.sheet .shopping .w2 { width: 43mm; }
.sheet .shopping .w3 { width: 24mm; }
.sheet .shopping .w4 { width: 37mm; }
.sheet .shopping .w5 { width: 17mm; }
.sheet-shopping .cautions { margin-top: 2mm; }
.sheet .shopping .tickcell { width: 8mm; padding-right: 2mm; }
.sheet .shopping td { padding-top: 0.5mm; padding-bottom: 0.5mm; line-height: 1.15; }
.sheet .shopping .sectionrow th { padding: 0.8mm 0 0.3mm; border-bottom-width: 1pt; }
.sheet .shopping td { overflow-wrap: break-word; }
.sheet .borrow { margin-top: 3mm; }
.sheet .borrow td { padding-top: 1mm; padding-bottom: 1mm; }
.sheet .tasks { table-layout: fixed; }
.sheet .tasks .t0 { width: 15mm; }
.sheet .tasks .t1 { width: 26mm; }
.sheet .tasks .t2 { width: 20mm; }
.sheet .tasks .t3 { width: 28mm; }
.sheet .tasks .t4 { width: 31mm; }
.sheet .tasks.close td { font-size: 11pt; padding-top: 0.3mm; padding-bottom: 0.3mm; }
.sheet .tasks.close tr.noslip > td.start > .nowrap { padding-top: 0; padding-bottom: 0; }
.sheet .tasks.close td.mid { font-size: 14pt; }
.sheet .tasks.close .t0 { width: 13mm; }
.sheet .tasks.close p { line-height: 1.2; }
.sheet .tasks.close .t1, .sheet .tasks.close .t2 { width: 19mm; }
.sheet .tasks.clock12 .t1 { width: 37mm; }
.sheet .tasks.clock12 .t2 { width: 26mm; }
.sheet .tasks.clock12 .t4 { width: 27mm; }
.sheet .tasks.close.clock12 .t1 { width: 27mm; }
.sheet .tasks.close.clock12 .t2 { width: 22mm; }
.sheet .oil { display: grid; grid-template-columns: 4fr 5fr 4fr; gap: 2mm 5mm; margin-bottom: 3mm; break-inside: avoid; }
.sheet .oil strong { display: block; font-size: 14pt; line-height: 1.2; }
.sheet .oil span { font-size: 11pt; color: #595959; display: block; line-height: 1.25; }
.sheet .after { border-top: 1.5pt solid #000; padding-top: 2mm; margin-top: 4mm; break-inside: avoid; }
.sheet .cards { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm; margin-top: 2mm; }
.sheet .card { border: 0.75pt dashed #000; padding: 1.5mm 3mm; break-inside: avoid; }
.sheet .card .cardhead { display: flex; align-items: baseline; justify-content: space-between; gap: 3mm; }
.sheet .card .cardhead span { font-size: 11pt; text-align: right; }
.sheet .card .cardtimes { display: flex; justify-content: space-between; gap: 3mm; font-size: 14pt; line-height: 1.2; margin-top: 0.5mm; }
.sheet .card .part { display: flex; align-items: center; gap: 2mm; margin-top: 1mm; font-size: 11pt; }
.sheet .card ul { list-style: none; padding-left: 6mm; font-size: 11pt; line-height: 1.16; }
.sheet .lines { columns: 2; column-gap: 8mm; list-style: none; }
.sheet .lines li { break-inside: avoid; padding: 0.6mm 0; border-bottom: 0.5pt solid #bfbfbf; display: flex; justify-content: space-between; gap: 3mm; }
.sheet .lines li.changed { border-left: 1.5mm solid #000; padding-left: 2mm; }
.sheet .dish { break-inside: avoid; margin-top: 3mm; }
.sheet .allergies { border: 0.75pt solid #000; padding: 2mm 3mm; margin-top: 4mm; break-inside: avoid; }
`;
