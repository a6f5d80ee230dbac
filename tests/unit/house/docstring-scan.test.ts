import { describe, expect, it } from 'vitest';
import { exportsWithoutDocstring } from '../../house/exports-without-docstring';
import { median, tooLong } from '../../house/file-sizes';

const missing = (source: string, tsx = false) => exportsWithoutDocstring(source, tsx).missing.map(({ name, line }) => `${name}@${line}`);

describe('the docstring check', () => {
  it('sees a docstring directly above', () => {
    expect(missing(`/** Says it. */\nexport const a = 1;\n/** Says\n * more. */\nexport function b() {}\n`)).toEqual([]);
  });

  it('finds each kind of export that has none, with its line', () => {
    const source = `// a comment is none\nexport const a = 1, b = 2;\n\nexport interface C { x: number }\nexport type D = string;\nexport class E {}\nexport function f() {}\nexport default 3;\n`;
    expect(missing(source)).toEqual(['a@2', 'b@2', 'C@4', 'D@5', 'E@6', 'f@7', 'default@8']);
  });

  it('lets a note to a tool stand in between', () => {
    expect(missing(`/** Says it. */\n// oxlint-disable-next-line no-console\nexport const a = 1;\n`)).toEqual([]);
  });

  it('does not count an ordinary comment, nor a docstring further up', () => {
    expect(missing(`/* plain */\nexport const a = 1;\n`)).toEqual(['a@2']);
    expect(missing(`/** For x. */\nconst x = 1;\nexport const a = x;\n`)).toEqual(['a@3']);
    expect(missing(`/** Head of the file. */\nimport y from './y';\nexport const a = y;\n`)).toEqual(['a@3']);
  });

  it('leaves names passed on and names kept inside alone', () => {
    expect(missing(`export * from './a';\nexport { b } from './b';\nconst c = 1;\ntype D = string;\nexport { c, type D };\n`)).toEqual([]);
  });

  it('asks for one docstring for a type and a value of the same name, and for overloads', () => {
    expect(missing(`/** Says it. */\nexport const a = 1;\nexport type a = number;\n`)).toEqual([]);
    expect(missing(`/** Says it. */\nexport function f(x: string): string;\nexport function f(x: number): number;\nexport function f(x: unknown): unknown { return x; }\n`)).toEqual([]);
  });

  it('keeps its place after signs of more than one byte, and in one file after another', () => {
    const source = `// ½ “quoted” 🥟\n/** Says it. */\nexport const half = '½ 🥟';\nexport const bare = 1;\n`;
    expect(missing(source)).toEqual(['bare@4']);
    expect(missing(source)).toEqual(['bare@4']);
  });

  it('reads a file that draws', () => {
    expect(missing(`/** Draws. */\nexport const A = () => <p>½</p>;\nexport const B = () => <b />;\n`, true)).toEqual(['B@3']);
  });
});

describe('file sizes', () => {
  it('allows 300 lines, and 400 where things are drawn', () => {
    const files = [{ path: 'shared/a.ts', lines: 300 }, { path: 'src-main/b.ts', lines: 301 }, { path: 'src-renderer/c.tsx', lines: 400 }, { path: 'src-renderer/d.tsx', lines: 401 }];
    expect(tooLong(files).map(({ path, limit }) => [path, limit])).toEqual([['src-main/b.ts', 300], ['src-renderer/d.tsx', 400]]);
  });
  it('finds the middle', () => {
    expect([median([3, 1, 2]), median([4, 1, 2, 3]), median([])]).toEqual([2, 2, 0]);
  });
});
