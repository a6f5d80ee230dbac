import { expect, type Page } from '@playwright/test';
import { evaluate, type Sum, type TermValues } from '../../shared/figure';

interface Read {
  readonly title: string;
  /** The number on the button. */
  readonly shown: number;
  /** The panel that it opened; null when none did. */
  readonly panel: { readonly value: number; readonly sum: string; readonly leaves: readonly { readonly leaf: string | undefined; readonly source: string | undefined; readonly known: string | undefined }[] } | null;
}

/**
 * Opens the working of every figure shown in the view: it has inputs, each input is a figure itself or names where it comes from,
 * a named table is one that we know, and the sum recomputed from the shown inputs gives the shown value. Answers how many were opened.
 */
export async function openEveryWorking(page: Page): Promise<number> {
  // Pressed by script in the page: no figure is missed for being under the panel, and hundreds take a second.
  const all = await page.evaluate(async (): Promise<Read[]> => {
    const read: Read[] = [];
    for (const button of document.querySelectorAll<HTMLElement>('main [data-figure-value]')) {
      button.click();
      if (document.querySelector('[data-working]') === null) await new Promise(requestAnimationFrame);
      const panel = document.querySelector<HTMLElement>('[data-working]');
      read.push({
        title: button.dataset['figureTitle'] ?? '', shown: Number(button.dataset['figureValue']),
        panel: panel === null ? null : {
          value: Number(panel.dataset['figureValue']), sum: panel.dataset['sum'] ?? '',
          leaves: [...panel.querySelectorAll<HTMLElement>('[data-term]')].map((li) => ({ leaf: li.dataset['leaf'], source: li.dataset['source'], known: li.dataset['known'] })),
        },
      });
      button.click();
      if (document.querySelector('[data-working]') !== null) await new Promise(requestAnimationFrame);
    }
    return read;
  });
  for (const { title, shown, panel } of all) {
    expect(panel, `${title} opens`).not.toBeNull();
    if (panel === null) continue;
    expect(panel.value, `${title}: panel and button agree`).toBeCloseTo(shown, 9);
    expect(panel.leaves.length, `${title} has inputs`).toBeGreaterThan(0);
    for (const { leaf, source, known } of panel.leaves) {
      if (leaf === undefined) continue;
      expect(leaf, `${title}: every input says where it comes from`).not.toBe('');
      if (leaf === 'table') expect(known, `${title}: the source ${source} is known`).toBe('true');
    }
    const { sum, values } = JSON.parse(panel.sum) as { sum: Sum; values: TermValues };
    const again = evaluate(sum, values);
    expect(Math.abs(again - shown), `${title}: ${again} recomputed, ${shown} shown`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(shown)));
  }
  return all.length;
}
