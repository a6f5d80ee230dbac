/** Styles of the page as a whole: type, head, notes. Black first; the one grey is #595959 (7:1 on white). Sizes in points and millimetres, for paper. */
export const frameCss = `
.sheet { font-family: 'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', sans-serif; font-size: 14pt; line-height: 1.25; font-weight: 400;
  font-variant-numeric: tabular-nums; color: #000; background: #fff; text-align: left; width: auto; margin: 0; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.sheet *, .sheet *::before { box-sizing: border-box; }
.sheet h1, .sheet h2, .sheet h3, .sheet p, .sheet ul { margin: 0; padding: 0; font-size: inherit; }
.sheet p { orphans: 3; widows: 3; }
.sheet .head { display: flex; justify-content: space-between; align-items: flex-end; gap: 6mm; border-bottom: 1.5pt solid #000; padding-bottom: 2mm; margin-bottom: 3mm; break-inside: avoid; break-after: avoid; }
.sheet h1 { font-size: 20pt; font-weight: 700; line-height: 1.2; }
.sheet h2 { font-size: 20pt; font-weight: 700; margin: 5mm 0 1mm; break-after: avoid; break-inside: avoid; }
.sheet h3 { font-size: 14pt; font-weight: 700; }
.sheet .occasion { font-size: 14pt; }
.sheet .note { font-size: 11pt; color: #595959; }
.sheet .version { text-align: right; flex: none; display: flex; align-items: flex-end; gap: 3mm; }
.sheet .version .word { font-size: 14pt; }
.sheet .version strong { font-size: 40pt; font-weight: 700; line-height: 0.9; margin-bottom: 0.5mm; }
.sheet .was { font-size: 11pt; white-space: nowrap; color: #595959; }
.sheet .grey { color: #595959; }
.sheet .small { font-size: 11pt; }
.sheet .cautions { margin-top: 4mm; break-inside: avoid; break-before: avoid; font-size: 14pt; }
.sheet .cautions p + p { margin-top: 1mm; }
.sheet .short { border: 0.75pt solid #000; padding: 1.2mm 3mm; margin-bottom: 2.5mm; break-inside: avoid; }
.sheet .block { break-inside: avoid; }
.sheet .tick { width: 8mm; height: 8mm; display: block; overflow: visible; }
.sheet .tick-small { width: 5mm; height: 5mm; }
.sheet .tick rect { fill: none; stroke: #000; stroke-width: 0.3; }
.sheet .hatch { height: 5mm; flex: 1 1 0; min-width: 10mm; display: block; }
.sheet .hatch path { fill: none; stroke: #595959; stroke-width: 0.25; }
`;
