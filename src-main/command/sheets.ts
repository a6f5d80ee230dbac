import { join, resolve } from 'node:path';
import { formatsFor } from '../../shared/event';
import { plan } from '../../shared/plan';
import { sheetDocument, sheetKinds, sheetsOf } from '../../shared/sheets';
import type { Paper, Sheet, SheetKind } from '../../shared/sheets';
import { today } from '../answer';
import { findBrowser } from '../browser';
import { openPrinter } from '../print';
import { problemLine } from '../problem';
import { makeFolder, writeExport } from '../store';
import { exitOf } from './findings';
import { readOptions } from './options';
import { formatsOf, readEventFile } from './read-event';
import { sheetFonts } from './sheet-fonts';
import { BadInput, exits } from './terminal';
import type { Command, Terminal } from './terminal';
import { tell } from './words';

/** `brimful sheets FILE --out DIR [--paper a4|letter] [--only fry,drinks]` */
export const sheetsCommand: Command = {
  usage: tell('command.usage.sheets'),
  run: async (args, terminal) => {
    const given = readOptions(args, { out: 'string', paper: 'string', only: 'string' }, 1);
    const out = given.text('out');
    if (out === undefined || out === '') throw new BadInput(tell('command.needs-out'));
    const paper = paperOption(given.text('paper'));
    const only = onlyOption(given.text('only'));
    const event = await readEventFile(given.files[0], terminal);
    const planned = plan(event);
    const sheets = sheetsOf(planned, formatsOf(event), { paper: paper ?? event.preferences.paper, printedAt: printedAt(event.preferences), ...(only ? { only } : {}) });
    if (sheets.length === 0) terminal.err(tell('command.no-sheets'));
    const written = await writeSheets(sheets, resolve(out), event.preferences.locale, terminal);
    return written === exits.ok ? exitOf(planned) : written;
  },
};

async function writeSheets(sheets: readonly Sheet[], folder: string, lang: string, terminal: Terminal): Promise<number> {
  await makeFolder(folder);
  const css = await sheetFonts();
  const documents = sheets.map((sheet) => ({ path: join(folder, sheet.fileName), html: sheetDocument(sheet, { css, lang }) }));
  for (const { path, html } of documents) await write(`${path}.html`, html, terminal);
  const printer = openPrinter(findBrowser());
  try {
    for (const { path, html } of documents) await write(`${path}.pdf`, await printer.pdf(html), terminal);
    return exits.ok;
  } catch (error) {
    terminal.err(problemLine(error));
    return exits.toolMissing;
  } finally {
    await printer.close();
  }
}

async function write(path: string, content: string | Uint8Array, terminal: Terminal): Promise<void> {
  await writeExport(path, content);
  terminal.out(tell('command.wrote', { path }));
}

function paperOption(given: string | undefined): Paper | undefined {
  if (given === undefined || given === 'a4' || given === 'letter') return given;
  throw new BadInput(tell('command.paper', { given }));
}

function onlyOption(given: string | undefined): SheetKind[] | undefined {
  return given?.split(',').map((part) => part.trim()).filter((part) => part !== '').map((part) => {
    const kind = sheetKinds.find((known) => known === part);
    if (kind === undefined) throw new BadInput(tell('command.only', { given: part, known: sheetKinds.join(', ') }));
    return kind;
  });
}

/** Date and time of printing, in the event's own way of writing. */
function printedAt(preferences: Parameters<typeof formatsFor>[0]): string {
  const at = today(new Date());
  const formats = formatsFor(preferences, at.today);
  return `${formats.date(at.today)} ${formats.clock(at.now)}`;
}
