import { parseSync } from '@swc/core';
import type { ModuleItem } from '@swc/core';

/** An exported name and the line it starts on. */
export interface ExportedName {
  readonly name: string;
  readonly line: number;
}

/**
 * The exported declarations of a file that have no docstring directly above, and how many there are in all.
 * Names passed on from another file (`export … from`) are documented there.
 */
export function exportsWithoutDocstring(source: string, tsx = false): { readonly missing: readonly ExportedName[]; readonly found: number } {
  const module = parseSync(source, { syntax: 'typescript', tsx, target: 'es2022' });
  // The parser counts on from file to file and in bytes; a first item that starts the text gives the offset back.
  const bytes = Buffer.from(source, 'utf8');
  const base = module.body.length === 0 ? 0 : module.span.start - firstCode(source, bytes);
  const documented = new Set<string>();
  const missing: ExportedName[] = [];
  let found = 0;
  for (const item of module.body) {
    for (const name of namesOf(item)) {
      const at = startOf(item) - base;
      const above = bytes.subarray(0, at).toString('utf8');
      // A note to a tool may stand between the docstring and the code.
      const has = /\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*(?:\/\/[^\n]*\s*)*$/.test(above);
      found += 1;
      // Overloads of a function and a type beside a value of the same name need one docstring.
      if (has) documented.add(name);
      else if (!documented.has(name)) missing.push({ name, line: above.split('\n').length });
    }
  }
  return { missing, found };
}

const startOf = (item: ModuleItem): number => item.span.start;

/** Byte at which the first code stands: the parser's module begins there, after leading comments and blanks. */
function firstCode(source: string, bytes: Buffer): number {
  let at = 0;
  for (;;) {
    const rest = source.slice(at);
    const skipped = /^(?:\s+|\/\/[^\n]*|\/\*[\s\S]*?\*\/|#![^\n]*)/.exec(rest)?.[0];
    if (!skipped) break;
    at += skipped.length;
  }
  return Math.min(bytes.length, Buffer.byteLength(source.slice(0, at), 'utf8'));
}

function namesOf(item: ModuleItem): string[] {
  if (item.type === 'ExportDefaultDeclaration' || item.type === 'ExportDefaultExpression') return ['default'];
  if (item.type !== 'ExportDeclaration') return [];
  const { declaration } = item;
  if (declaration.type === 'VariableDeclaration') return declaration.declarations.map(({ id }) => (id.type === 'Identifier' ? id.value : '(destructured)'));
  return ['identifier' in declaration ? declaration.identifier.value : declaration.id.value];
}
