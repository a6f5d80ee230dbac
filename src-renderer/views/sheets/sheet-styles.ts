import { sheetCss, sheetPageCss, type Sheet } from '../../../shared/sheets';

/** A style sheet made by script: the content policy allows these, where it forbids style elements. */
function adopt(css: string): CSSStyleSheet {
  const styles = new CSSStyleSheet();
  styles.replaceSync(css);
  document.adoptedStyleSheets.push(styles);
  return styles;
}

let shared: CSSStyleSheet | null = null;

/** Puts the sheets' own styles into this page, once. They touch nothing outside `.sheet`. */
export function useSheetStyles(): void {
  shared ??= adopt(sheetCss);
}

/** Page rules of the sheets about to be printed from this page; answers how to take them away again. */
export function adoptPageRules(sheets: readonly Sheet[]): () => void {
  const rules = adopt(sheetPageCss(sheets));
  return () => { document.adoptedStyleSheets = document.adoptedStyleSheets.filter((s) => s !== rules); };
}
