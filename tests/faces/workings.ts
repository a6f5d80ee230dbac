import { expect, type Page } from '@playwright/test';
import { evaluate, type Sum, type TermValues } from '../../shared/figure';

/**
 * Opens the working of every figure shown in the view: it has inputs, each input is a figure itself or names where it comes from,
 * and the sum recomputed from the shown inputs gives the shown value. Answers how many were opened.
 */
export async function openEveryWorking(page: Page): Promise<number> {
  const figures = page.locator('main [data-figure-value]');
  const count = await figures.count();
  for (let at = 0; at < count; at += 1) {
    const button = figures.nth(at);
    const title = await button.getAttribute('data-figure-title');
    const value = Number(await button.getAttribute('data-figure-value'));
    // The panel narrows the view; pressed by script, no figure is missed for being under something.
    await button.evaluate((b: HTMLElement) => { b.click(); });
    const panel = page.locator('[data-working]');
    await expect(panel, `${title} opens`).toBeVisible();
    const read = await panel.evaluate((p: HTMLElement) => ({
      value: Number(p.dataset['figureValue']), sum: p.dataset['sum'] ?? '',
      leaves: [...p.querySelectorAll<HTMLElement>('[data-term]')].map((li) => ({ leaf: li.dataset['leaf'], source: li.dataset['source'] })),
    }));
    expect(read.value, `${title}: panel and button agree`).toBeCloseTo(value, 9);
    expect(read.leaves.length, `${title} has inputs`).toBeGreaterThan(0);
    for (const { leaf, source } of read.leaves) if (leaf !== undefined) expect(leaf === 'table' ? source : leaf, `${title}: every input says where it comes from`).toBeTruthy();
    const { sum, values } = JSON.parse(read.sum) as { sum: Sum; values: TermValues };
    const again = evaluate(sum, values);
    expect(Math.abs(again - value), `${title}: ${again} recomputed, ${value} shown`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
    await button.evaluate((b: HTMLElement) => { b.click(); });
  }
  return count;
}
