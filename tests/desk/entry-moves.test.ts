import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import { readCollection } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { Desk } from '../../src/desk/desk.ts';

const DEMO = resolve(import.meta.dirname, '../../collection');

let root: string;
let desk: Desk;
const entry = (facts: string, body = '') => `---\n${facts}\n---\n${body}`;
const textOf = (path: string) => readFile(join(root, path), 'utf8');
const put = async (path: string, text: string) => {
  await mkdir(join(root, path, '..'), { recursive: true });
  await writeFile(join(root, path), text);
};
const problems = () => validateAll(readCollection(root)).problems.map(({ code, message }) => `${code} ${message}`);

beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'moves-'));
  desk = new Desk({ root, check: async () => ({ problems: [], accepted: [] }), now: () => Date.UTC(2026, 2, 20, 10) });
});
afterEach(() => rm(root, { recursive: true }));

const rename = async (kind: EntryKind, id: string, to: string) => {
  const plan = await desk.moves.showRenaming(kind, id, to);
  await desk.moves.rename(kind, id, to, plan.hash);
  return plan;
};

describe('an entry gets another id', () => {
  test('what refers to it follows, a line each, and each file before is kept', async () => {
    const other = entry(
      'title: Other # mine\nstatus: held\ncopied-from: [old-name, elsewhere]\nclient: old-name',
      'See [it](old-name.md#cuts).\n',
    );
    await put('reels/old-name.md', entry('title: Old\nstatus: held'));
    await put('reels/other.md', other);
    await put('shares/friend.md', entry('title: F\nfor: friend\nreels:\n  - old-name # the one'));
    await put(
      'notes/told.md',
      entry(
        'title: Told',
        '[One](../reels/old-name.md), [two][2] and old-name in words.\n\n[2]: ../reels/old-name.md\n',
      ),
    );
    const plan = await rename('reels', 'old-name', 'new-name');
    expect(plan.path).toEqual({ from: 'reels/old-name.md', to: 'reels/new-name.md' });
    expect(plan.inWords).toEqual(['notes/told.md']);
    expect(plan.files).toEqual([
      {
        file: 'notes/told.md',
        lines: [
          '− [One](../reels/old-name.md), [two][2] and old-name in words.',
          '+ [One](../reels/new-name.md), [two][2] and old-name in words.',
          '− [2]: ../reels/old-name.md',
          '+ [2]: ../reels/new-name.md',
        ],
      },
      {
        file: 'reels/other.md',
        lines: [
          '− copied-from: [old-name, elsewhere]',
          '+ copied-from: [new-name, elsewhere]',
          '− See [it](old-name.md#cuts).',
          '+ See [it](new-name.md#cuts).',
        ],
      },
      { file: 'shares/friend.md', lines: ['−   - old-name # the one', '+   - new-name # the one'] },
    ]);
    // A person of the same id is another entry.
    expect(await textOf('reels/other.md')).toBe(
      other.replace('[old-name,', '[new-name,').replace('(old-name', '(new-name'),
    );
    expect(await textOf('reels/new-name.md')).toBe(entry('title: Old\nstatus: held'));
    expect(await textOf('.before/reels/other/2026-03-20T10-00-00-000Z.md')).toBe(other);
    expect(await readdir(join(root, 'reels'))).toEqual(['new-name.md', 'other.md']);
  });

  test('its own files go with it, in a folder or beside a single file', async () => {
    await put(
      'reels/boxed/index.md',
      entry('title: B\nstatus: held\nphotos: [front.jpg]', '![x](front.jpg) [self](index.md)\n'),
    );
    await put('reels/boxed/front.jpg', 'x');
    await put(
      'reels/flat.md',
      entry(
        'title: F\nstatus: held\nphotos:\n  - { file: flat/a.jpg }\nreadings:\n  - { of: set, photo: flat/a.jpg, written: A }',
      ),
    );
    await put('reels/flat/a.jpg', 'x');
    await put('notes/n.md', entry('title: N', '![x](../reels/boxed/front.jpg)\n'));
    await rename('reels', 'boxed', 'unboxed');
    await rename('reels', 'flat', 'level');
    expect(await textOf('reels/unboxed/front.jpg')).toBe('x');
    expect(await textOf('reels/unboxed/index.md')).toContain('![x](front.jpg) [self](index.md)');
    expect(await textOf('notes/n.md')).toContain('![x](../reels/unboxed/front.jpg)');
    expect(await textOf('reels/level.md')).toContain('{ of: set, photo: level/a.jpg, written: A }');
    expect(problems()).toEqual([]);
  });

  test('what it was before goes with it too', async () => {
    await put('stocks/a.md', entry('title: A'));
    const { hash } = await desk.open('stocks', 'a');
    await desk.save({ kind: 'stocks', id: 'a', hash, changes: [{ path: ['title'], to: 'B' }] });
    await rename('stocks', 'a', 'b');
    expect(await desk.moves.versions('stocks', 'b')).toHaveLength(1);
    expect(await desk.moves.away()).toEqual([]);
  });

  test('nothing is renamed once something changed since it was shown', async () => {
    await put('stocks/a.md', entry('title: A'));
    await put('reels/r.md', entry('title: R\nstatus: held'));
    const plan = await desk.moves.showRenaming('stocks', 'a', 'b');
    await put('reels/r.md', entry('title: R\nstatus: held\nstock: a'));
    await expect(desk.moves.rename('stocks', 'a', 'b', plan.hash)).rejects.toThrow(/look again/);
    expect(await textOf('stocks/a.md')).toBe(entry('title: A'));
  });

  test('nothing is renamed while a file that names it can’t be read', async () => {
    await put('stocks/a-stock.md', entry('title: A'));
    await put('reels/r.md', '---\ntitle: [open\nstock: a-stock\n---\n');
    const plan = await desk.moves.showRenaming('stocks', 'a-stock', 'b');
    expect(plan.cannot.map(({ file }) => file)).toEqual(['reels/r.md']);
    await expect(desk.moves.rename('stocks', 'a-stock', 'b', plan.hash)).rejects.toThrow('reels/r.md');
    expect(await textOf('stocks/a-stock.md')).toBe(entry('title: A'));
  });

  test.each(['b', 'c', 'none', 'A B', ''])('an id that is taken or none is refused: %s', async (to) => {
    await put('stocks/a.md', entry('title: A'));
    await put('stocks/b.md', entry('title: B'));
    await put('stocks/c/pictures.txt', 'someone’s');
    await expect(desk.moves.showRenaming('stocks', 'a', to)).rejects.toThrow();
  });

  test('no entry of the demo is missed by anything, whichever is renamed', async () => {
    await cp(DEMO, root, { recursive: true });
    const before = problems();
    const renamed = (words: string[], kind: string, id: string) =>
      words.map((line) => line.replaceAll(`${kind}/${id}`, `${kind}/x-${id}`)).sort();
    for (const kind of ENTRY_KINDS) {
      const [first] = desk.entries().filter((one) => one.kind === kind);
      if (first === undefined) continue;
      await rename(kind, first.id, `x-${first.id}`);
      expect(problems().sort()).toEqual(renamed(before, kind, first.id));
    }
    for (const { kind, id } of desk.entries().filter((one) => one.kind === 'people' || one.kind === 'places')) {
      const { referring } = await desk.moves.showDeleting(kind, id);
      expect(referring.length, id).toBeGreaterThan(0);
    }
  });
});

describe('an entry goes, and comes back', () => {
  test('it moves away with its files, and what refers to it is listed first', async () => {
    await put('places/loft/index.md', entry('title: Loft'));
    await put('places/loft/log.csv', 'x');
    await put('reels/r.md', entry('title: R\nstatus: held\nplace: loft', 'In [the loft](../places/loft/index.md).\n'));
    const plan = await desk.moves.showDeleting('places', 'loft');
    expect(plan).toMatchObject({
      files: ['places/loft'],
      referring: ['reels/r.md: place', 'reels/r.md: a link in its account'],
    });
    await desk.moves.delete('places', 'loft', plan.hash);
    expect(await readdir(join(root, 'places'))).toEqual([]);
    expect(await desk.moves.away()).toMatchObject([{ kind: 'places', id: 'loft', title: 'Loft' }]);
    await desk.moves.bringBack('places', 'loft');
    expect(await textOf('places/loft/log.csv')).toBe('x');
    expect(await textOf('places/loft/index.md')).toBe(entry('title: Loft'));
    expect(await desk.moves.away()).toEqual([]);
  });

  test('a single file comes back with the folder beside it', async () => {
    await put('reels/flat.md', entry('title: F\nstatus: held'));
    await put('reels/flat/a.jpg', 'x');
    await desk.moves.delete('reels', 'flat', (await desk.moves.showDeleting('reels', 'flat')).hash);
    expect(await readdir(join(root, 'reels'))).toEqual([]);
    await desk.moves.bringBack('reels', 'flat');
    expect(await textOf('reels/flat/a.jpg')).toBe('x');
    expect(await textOf('reels/flat.md')).toContain('title: F');
  });

  test('it doesn’t come back over another of its id', async () => {
    await put('stocks/a.md', entry('title: A'));
    await desk.moves.delete('stocks', 'a', (await desk.moves.showDeleting('stocks', 'a')).hash);
    await put('stocks/a.md', entry('title: Another'));
    await expect(desk.moves.bringBack('stocks', 'a')).rejects.toThrow(/already/);
    expect(await textOf('stocks/a.md')).toContain('Another');
    expect((await desk.moves.versions('stocks', 'a')).map(({ deleted }) => deleted)).toEqual([true]);
  });

  test('nothing is deleted once something changed since it was shown', async () => {
    await put('stocks/a.md', entry('title: A'));
    const { hash } = await desk.moves.showDeleting('stocks', 'a');
    await put('stocks/a.md', entry('title: B'));
    await expect(desk.moves.delete('stocks', 'a', hash)).rejects.toThrow(/look again/);
    expect(await textOf('stocks/a.md')).toContain('B');
  });

  test('a folder that is a link out of the collection stays', async () => {
    const out = await mkdtemp(join(tmpdir(), 'outside-'));
    await writeFile(join(out, 'index.md'), entry('title: Out'));
    await mkdir(join(root, 'stocks'));
    await symlink(out, join(root, 'stocks', 'a'));
    await expect(desk.moves.showDeleting('stocks', 'a')).rejects.toThrow();
    expect(await readdir(out)).toEqual(['index.md']);
    await rm(out, { recursive: true });
  });
});

describe('an entry becomes again what it was', () => {
  test('each version is kept, shown and restored byte for byte, and what it was until then is kept too', async () => {
    const texts = ['A', 'B', 'C'].map((title) => `\ufeff---\r\ntitle: ${title} # mine\r\n---\r\nText.\r\n`);
    await put('stocks/a.md', texts[0] ?? '');
    for (const title of ['B', 'C']) {
      const { hash } = await desk.open('stocks', 'a');
      await desk.save({ kind: 'stocks', id: 'a', hash, changes: [{ path: ['title'], to: title }] });
    }
    const versions = await desk.moves.versions('stocks', 'a');
    expect(versions.map(({ version }) => version)).toEqual(['2026-03-20T10-00-00-000Z-2', '2026-03-20T10-00-00-000Z']);
    expect(versions[0]?.at).toBe('2026-03-20T10:00:00.000Z');
    const first = versions[1]?.version ?? '';
    expect(await desk.moves.showVersion('stocks', 'a', first)).toEqual(['− title: C # mine', '+ title: A # mine']);
    const { hash } = await desk.open('stocks', 'a');
    await expect(desk.moves.restore('stocks', 'a', first, 'another')).rejects.toThrow(/open it again/);
    await desk.moves.restore('stocks', 'a', first, hash);
    expect(await textOf('stocks/a.md')).toBe(texts[0]);
    expect(await desk.moves.versions('stocks', 'a')).toHaveLength(3);
  });

  test.each(['../../secret', '2026-03-20T10-00-00-000Z/../x', '', 'index'])(
    'no version leads out: %s',
    async (version) => {
      await put('stocks/a.md', entry('title: A'));
      await put('secret.md', 'SECRET');
      await expect(desk.moves.showVersion('stocks', 'a', version)).rejects.toThrow();
    },
  );
});

describe('what the collection says of itself', () => {
  test('is begun by its first fact, and changed like every other entry', async () => {
    const opened = await desk.open('collection', '');
    expect(opened).toMatchObject({ kind: 'collection', facts: { format: '1' }, problems: [] });
    const wish = {
      kind: 'collection',
      id: '',
      hash: opened.hash,
      changes: [{ path: ['owner'], to: 'A. B.' }],
    } as const;
    expect((await desk.look(wish)).lines).toEqual(['+ owner: A. B.']);
    expect(await readdir(root)).toEqual([]);
    await desk.save(wish);
    expect(await textOf('collection.md')).toBe('---\nowner: A. B.\nformat: 1\n---\n');
    const again = await desk.open('collection', '');
    expect((await desk.save({ ...wish, hash: again.hash, changes: [{ path: ['units'], to: 'metric' }] })).is).toBe(
      'saved',
    );
    expect(await desk.moves.versions('collection', '')).toHaveLength(1);
  });
  test('is not begun over a file of that name that can’t be read', async () => {
    await writeFile(join(root, 'collection.md'), Buffer.from([0xff, 0xfe, 0x00]));
    await expect(desk.open('collection', '')).rejects.toThrow();
  });
});
