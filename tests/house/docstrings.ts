import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, resolve } from 'node:path';
import { exportsWithoutDocstring } from './exports-without-docstring';
import { median, tooLong } from './file-sizes';
import type { CountedFile } from './file-sizes';

// `npm run lint:docs`: every exported symbol of shared/ says what it means, and no file grows too long to be held in the head.
const root = resolve(import.meta.dirname, '../..');

function filesOf(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && ['.ts', '.tsx', '.mjs', '.css'].includes(extname(entry.name)))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

const complaints: string[] = [];
let symbols = 0;
for (const path of filesOf('shared').filter((file) => /\.tsx?$/.test(file))) {
  const { missing, found } = exportsWithoutDocstring(readFileSync(join(root, path), 'utf8'), path.endsWith('.tsx'));
  symbols += found;
  for (const { line, name } of missing) complaints.push(`${path}:${line}: ${name} is exported without a docstring`);
}

const counted = ['shared', 'src-main', 'src-renderer'].flatMap(filesOf)
  .map((path): CountedFile => ({ path, lines: readFileSync(join(root, path), 'utf8').split('\n').length - 1 }));
for (const { path, lines, limit } of tooLong(counted)) complaints.push(`${path}: ${lines} lines, at most ${limit}`);

process.stdout.write(complaints.map((line) => `${line}\n`).join(''));
process.stdout.write(`${symbols} exported symbols of shared/, ${counted.length} files, median ${median(counted.map((file) => file.lines))} lines; ${complaints.length} complaints\n`);
process.exitCode = complaints.length === 0 ? 0 : 1;
