/** Styles of the first-batch, oil and emergency cards: lines to write on, steps to read from two paces. */
export const cardsCss = `
.sheet .blank { display: flex; align-items: flex-end; gap: 2mm; min-height: 10mm; }
.sheet .blank .dotted { flex: 1 1 0; min-width: 30mm; border-bottom: 1pt solid #000; font-size: 20pt; font-weight: 700; line-height: 1.2; }
.sheet .blank .unit { flex: none; width: 9mm; font-size: 14pt; }
.sheet .fillin { margin-top: 3mm; }
.sheet .fillin th:last-child { width: 50mm; }
.sheet .fillin th:nth-child(2) { width: 38mm; }
.sheet .fillin { table-layout: fixed; }
.sheet .fillin td:first-child { line-height: 1.15; }
.sheet .fillin td.n { padding-right: 5mm; }
.sheet .fillin td { padding-top: 1.5mm; padding-bottom: 1.5mm; }
.sheet .known { display: grid; grid-template-columns: 44mm 1fr; align-items: end; gap: 3mm; margin-bottom: 1mm; break-inside: avoid; }
.sheet ol.steps { margin: 0; padding: 0 0 0 9mm; }
.sheet ol.steps li, .sheet ul.plain li { margin-top: 0.8mm; }
.sheet ul.plain { list-style: none; }
.sheet-emergency h2 { margin-top: 2mm; border-top: 1.5pt solid #000; padding-top: 0.5mm; font-size: 14pt; }
.sheet-emergency li { line-height: 1.18; }
.sheet-emergency ol.steps li { margin-top: 0.4mm; }
.sheet-emergency ul.plain li { margin-top: 1.2mm; }
.sheet-emergency .blank { min-height: 8mm; }
.sheet-emergency .known { margin-bottom: 0; }
.sheet-emergency ol.steps li:first-child { font-weight: 700; }
.sheet-emergency > .small { margin-top: 1.5mm; }
.sheet-oil h2 { margin-top: 2mm; }
.sheet-oil .cautions { font-size: 11pt; margin-top: 2mm; }
.sheet-oil ul.plain li { margin-top: 0; padding: 0.7mm 0; line-height: 1.18; border-bottom: 0.5pt solid #bfbfbf; }
`;
