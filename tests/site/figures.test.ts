import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import type { Worked } from '#model/worked.ts';
import { test } from './harness.ts';

interface Sheet {
  readonly id: string;
  readonly worked: readonly (Omit<Worked, 'inputs'> & {
    readonly inputs: readonly { readonly written: string; readonly file?: string; readonly line?: number }[];
  })[];
}

const ENTITIES: readonly (readonly [string, string])[] = [
  ['&lt;', '<'],
  ['&gt;', '>'],
  ['&quot;', '"'],
  ['&#34;', '"'],
  ['&#39;', "'"],
  ['&amp;', '&'],
];

const textOf = (html: string) =>
  ENTITIES.reduce((text, [entity, sign]) => text.replaceAll(entity, sign), html.replaceAll(/<[^>]*>/g, ' '))
    .replaceAll(/\s+/g, ' ')
    .trim();

const blocksOf = (html: string) =>
  [...html.matchAll(/<details class="wk"[^>]*>(.*?)<\/details>/gs)].map(([, inside = '']) => textOf(inside));

describe('the worked figures of the reels’ pages', () => {
  test('each opens to its inputs with file and line, its formula and its source', ({ demo }) => {
    const catalogue = JSON.parse(readFileSync(join(demo.folder, 'catalogue.json'), 'utf8')) as {
      readonly reels: readonly Sheet[];
    };
    const closed: string[] = [];
    let looked = 0;
    for (const { id, worked } of catalogue.reels) {
      const blocks = blocksOf(readFileSync(join(demo.folder, 'reels', id, 'index.html'), 'utf8'));
      for (const { name, inputs, formula, source } of worked) {
        looked += 1;
        const parts = inputs.flatMap(({ written, file, line }) =>
          file === undefined ? [written] : [written, `${file}, line ${line}`],
        );
        const wanted = [...parts, `Formula ${formula}`, `Source ${source}`].map((part) => part.replaceAll(/\s+/g, ' '));
        if (inputs.length === 0 || !blocks.some((block) => wanted.every((part) => block.includes(part))))
          closed.push(`${id}: ${name}`);
      }
    }
    expect(looked).toBeGreaterThan(50);
    expect(closed).toEqual([]);
  });
});
