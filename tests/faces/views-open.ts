import type { Page } from '@playwright/test';

/** Opens a demo event from the start page. */
export async function openDemo(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: title }).first().click();
  await page.getByRole('navigation').getByRole('button', { name: 'Board', exact: true }).waitFor();
}

/** Goes to a view by the left rule. */
export async function goTo(page: Page, view: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name: view, exact: true }).click();
  await page.locator(`main[data-view="${view.toLowerCase()}"]`).waitFor();
}
