import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** What is shown now stands out enough from its ground. Of all rules only this one depends on the colours of day and night. */
export async function expectReadable(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withRules(['color-contrast']).analyze();
  expect(violations.flatMap((v) => v.nodes.slice(0, 3).map((n) => n.target.join(' ')))).toEqual([]);
}

/** No rule of the accessibility checker is broken by what is shown now. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((v) => `${v.id}: ${v.nodes.slice(0, 3).map((n) => n.target.join(' ')).join('; ')}`)).toEqual([]);
}
