import { expect, test } from './fixture';

test('the face is drawn on the local host and its code is used up', async ({ app, browser }) => {
  await expect(app.page).toHaveTitle(/Brimful/);
  expect(new URL(app.page.url()).search).toBe('');
  const stranger = await browser.newContext();
  const answer = await stranger.request.get(app.host.address, { maxRedirects: 0 });
  expect(answer.status()).toBe(403);
  await stranger.close();
});
