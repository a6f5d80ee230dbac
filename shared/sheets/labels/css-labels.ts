/** Styles of cards and labels to cut out: a grid of boxes with thin dashed edges, a row as high as its fullest label; no card is split between pages. Four rows of cards fit on Letter, the shorter paper. */
export const labelsCss = `
.sheet .dishcards { display: grid; grid-template-columns: 1fr 1fr; padding: 0 1pt 1pt 0; }
.sheet .dishcard { height: 60mm; padding: 4mm 5mm 3.5mm; border: 0.5pt dashed #595959; margin: 0 -0.5pt -0.5pt 0; break-inside: avoid; overflow: hidden; display: flex; flex-direction: column; gap: 1.2mm; }
.sheet .dishcard .name { font-size: 20pt; font-weight: 700; line-height: 1.1; }
.sheet .dishcard .marks { font-size: 11pt; line-height: 1.25; }
.sheet .dishcard .marks b { font-weight: 400; white-space: nowrap; }
.sheet .dishcard .marks b:not(:last-child)::after { content: ' ·'; }
.sheet .dishcard .has { font-size: 14pt; line-height: 1.2; }
.sheet .dishcard .has strong { font-weight: 700; }
.sheet .dishcard .oil { font-size: 11pt; line-height: 1.2; border-left: 1.5mm solid #000; padding-left: 2mm; }
.sheet .dishcard .foot { margin-top: auto; font-size: 9pt; line-height: 1.2; color: #595959; }
.sheet .boxlabels { display: grid; grid-template-columns: 1fr 1fr; padding: 0 1pt 1pt 0; }
.sheet .boxlabel { min-height: 41.5mm; padding: 2.5mm 4mm 2.5mm; border: 0.5pt dashed #595959; margin: 0 -0.5pt -0.5pt 0; break-inside: avoid; display: flex; flex-direction: column; font-size: 11pt; line-height: 1.16; }
.sheet .boxlabel .what { font-size: 14pt; font-weight: 700; line-height: 1.12; display: flex; justify-content: space-between; gap: 3mm; }
.sheet .boxlabel .what span { font-weight: 400; font-size: 11pt; white-space: nowrap; }
.sheet .boxlabel .forwhat { color: #595959; }
.sheet .boxlabel dl { margin: 0.5mm 0 0; display: grid; grid-template-columns: 15mm 1fr; gap: 0 2mm; }
.sheet .boxlabel dt { color: #595959; }
.sheet .boxlabel dd { margin: 0; }
.sheet .boxlabel dd.by { font-weight: 700; }
.sheet .boxlabel .blank { border-bottom: 0.5pt solid #595959; }
.sheet .boxlabel .has { margin-top: auto; padding-top: 1mm; }
.sheet .boxhead { break-after: avoid; }
.sheet .boxlead { font-size: 11pt; margin-bottom: 2mm; break-after: avoid; }
.sheet .kept td { padding-top: 0.6mm; padding-bottom: 0.6mm; }
`;
