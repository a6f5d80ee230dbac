import { expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { sheetDocument, sheetsOf } from '../../../shared/sheets';
import { demo } from '../demo/demo';

it('the drinks sheet pours what was made ahead: no raw barley in a round', () => {
  const event = demo('lantern-evening');
  const sheets = sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'a4', printedAt: '9:05', only: ['drinks'] });
  const text = sheetDocument(sheets, { lang: 'en-GB' }).replace(/<style>[\s\S]*?<\/style>/, '').replaceAll(/<[^>]+>/g, ' ');
  expect(text).toMatch(/Pour \d[\d.]*\sL from what was made ahead: Barley-lemon water\./);
  expect(text.toLowerCase()).not.toContain('pearl barley');
  expect(text.toLowerCase()).toContain('loose black tea');
});
