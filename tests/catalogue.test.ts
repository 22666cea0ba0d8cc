import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildCatalogue } from '#catalogue';
import type { Catalogue } from '#model/catalogue.ts';
import { day } from '#model/dates.ts';
import { byText } from '#model/diagnostic.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { type SplitEntry, splitEntry } from '#read/front-matter.ts';
import { validateAll } from '#validate/entries.ts';

const HERE = import.meta.dirname;
const TODAY = day('2026-04-01');
type Texts = ReadonlyMap<string, string>;

const textsUnder = (folder: string) =>
  globSync('*/**/*.md', { cwd: folder })
    .filter((path) => /^(?:reels|editions|people|stocks|places|machines|shares|notes)\//.test(path))
    .sort()
    .map((path) => [path, readFileSync(join(folder, path), 'utf8')] as const);

/** The demo, and all the stories of the other tests in one. */
const COLLECTIONS: readonly Texts[] = [
  new Map(textsUnder(join(HERE, '..', 'collection'))),
  new Map(
    globSync('*/', { cwd: join(HERE, 'collections') })
      .sort()
      .flatMap((story) => textsUnder(join(HERE, 'collections', story))),
  ),
];
const IMAGES = globSync('reels/*/*.jpg', { cwd: join(HERE, '..', 'collection') }).sort();

/** One edit as an owner might make it; the figures choose which entries and lines it falls on. */
const EDIT = fc.record({
  does: fc.constantFrom(
    'takes a line of another',
    'takes a line of another',
    'loses a line',
    'goes',
    'is renamed',
    'is copied',
  ),
  entry: fc.nat(),
  other: fc.nat(),
  line: fc.nat(),
});
type Edit = typeof EDIT extends fc.Arbitrary<infer T> ? T : never;

function edited(texts: Texts, { does, entry, other, line }: Edit): Texts {
  const paths = [...texts.keys()].sort(byText);
  const path = paths[entry % paths.length] ?? '';
  const text = texts.get(path) ?? '';
  const lines = text.split('\n');
  const keyed = lines.flatMap((one, at) => (/^ *(?:- )?[a-z-]+: ./.test(one) ? [at] : []));
  const at = keyed[line % keyed.length] ?? 0;
  const after = new Map(texts);
  switch (does) {
    case 'goes':
      after.delete(path);
      break;
    case 'is renamed':
      after.delete(path);
      after.set(path.replace(/([^/]+?)(\/index)?\.md$/, '$1-anew$2.md'), text);
      break;
    case 'is copied':
      after.set(path.replace(/([^/]+?)(\/index)?\.md$/, '$1-again.md'), text);
      break;
    case 'loses a line':
      after.set(path, lines.toSpliced(at, 1).join('\n'));
      break;
    case 'takes a line of another': {
      const key = /^ *(?:- )?([a-z-]+):/.exec(lines[at] ?? '')?.[1];
      const all = [...texts.values()].flatMap((one) => one.split('\n').filter((each) => each.startsWith(`${key}:`)));
      const taken = all[other % all.length];
      if (taken !== undefined) after.set(path, lines.with(at, taken).join('\n'));
    }
  }
  return after;
}

function catalogueOf(entries: readonly SplitEntry[]): Catalogue {
  const sorted = entries.toSorted((a, b) => byText(a.path, b.path));
  const files: CollectionFiles = {
    entries: sorted,
    images: IMAGES,
    logs: [],
    problems: sorted.flatMap((one) => one.problems),
  };
  const validated = validateAll(files);
  return buildCatalogue({
    entries: validated.entries,
    problems: [...files.problems, ...validated.problems],
    photographs: new Map(),
    climate: new Map(),
    today: TODAY,
  });
}

/** All that is said, with what is only worked out when it is asked for. */
function told({ reels, lineage, problems, accepted, attention, entries, numbers }: Catalogue) {
  return {
    problems,
    accepted,
    attention,
    entries,
    numbers: numbers(),
    sheets: reels.map((sheet) => ({ ...sheet, lineage: undefined })),
    edges: lineage.edges,
    byEdition: lineage.byEdition,
    proposals: lineage.proposals,
    cycles: lineage.cycles,
    byReel: [...lineage.byReel].map(([id, one]) => ({
      id,
      parents: one.parents,
      children: one.children,
      ancestors: one.ancestors,
      descendants: one.descendants,
      generation: one.generation,
    })),
  };
}

describe('a collection that is edited again and again', () => {
  test('says after each edit what it would say if it were read for the first time', { timeout: 300_000 }, () => {
    fc.assert(
      fc.property(fc.nat(COLLECTIONS.length - 1), fc.array(EDIT, { minLength: 3, maxLength: 6 }), (which, edits) => {
        const remembered = new Map<string, SplitEntry>();
        const again = (texts: Texts) =>
          [...texts].map(([path, text]) => {
            const key = `${path}\n${text}`;
            const entry = remembered.get(key) ?? splitEntry({ path, text });
            remembered.set(key, entry);
            return entry;
          });
        let texts = COLLECTIONS[which] ?? new Map();
        catalogueOf(again(texts));
        for (const edit of edits) {
          texts = edited(texts, edit);
          const afresh = catalogueOf([...texts].map(([path, text]) => splitEntry({ path, text })));
          expect(told(catalogueOf(again(texts)))).toEqual(told(afresh));
        }
      }),
      // Smaller edits of a failing row seldom tell more, and each takes as long as the row did.
      { numRuns: 12, endOnFailure: true },
    );
  });
});
