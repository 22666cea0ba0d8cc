import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { columnsOf, SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { UsageError } from '../../src/commands/io.ts';
import { loadEntries } from '../../src/commands/load.ts';
import { FIELDS } from '../../src/desk/fields/kinds.ts';
import { csvOf, type ImportOptions, importedIn } from '../given/imported-sheet.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'kinds-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const imported = (rows: readonly (readonly string[])[], options: ImportOptions = {}) =>
  importedIn(dir, csvOf(rows), options);

async function there(path: string, text: string): Promise<void> {
  await mkdir(dirname(join(dir, 'c', path)), { recursive: true });
  await writeFile(join(dir, 'c', path), text);
}

const SHEETS: Readonly<Record<Exclude<SheetKind, 'reels'>, { rows: string[][]; text: string }>> = {
  editions: {
    rows: [
      ['Artist', 'Title', 'Record label', 'Cat no', 'Format', 'Country', 'Release date', 'RPM'],
      ['Ines Vorle', 'Marram', 'Hollin', 'HLX 2207; HLX 2208', 'album', 'overseas', '25/9/1978', '33 1/3'],
    ],
    text: 'title: Marram\nartist: Ines Vorle\nlabel: Hollin\ncatalogue: [HLX 2207, HLX 2208]\nmade-as: LP\nterritory: overseas\nissued: "1978-09-25"\nspeed: 33 1/3\n',
  },
  machines: {
    rows: [
      ['Machine', 'Speeds', 'EQ', 'Heads', 'Max reel', 'Tape width', 'Noise reduction', 'State', 'Owner'],
      ['Desk machine', '7.5/15 ips', 'NAB; IEC', 'two track', '10,5"', '1/4 in', 'none', 'works', 'owner'],
    ],
    text: 'title: Desk machine\nspeeds: [7.5 ips, 15 ips]\nequalisations:\n  - { curve: NAB }\n  - { curve: IEC }\ntracks: [two-track stereo]\nlargest-reel: 10.5"\nwidth: [1/4 in]\nnoise-reduction: none\nstate: working\nbelongs-to: owner\n',
  },
  stocks: {
    rows: [
      ['Tape stock', 'Base', 'Binder', 'Back coat', 'Thickness (µm)', 'Years made', 'Sheds', 'Source'],
      ['Norda Verde', 'PET', 'polyurethane', 'x', '52', '1972-1984', 'no', 'its maker’s sheet'],
    ],
    text: 'title: Norda Verde\nbase: polyester\nbinder: polyurethane\nback-coated: yes\nthickness: 52 µm\nmade: "1972/1984"\nknown-to-shed: no\nsource: its maker’s sheet\n',
  },
  places: {
    rows: [
      ['Room', 'Address', 'Colour'],
      ['Spare room', '4 Invented Row', 'white'],
    ],
    text: 'title: Spare room\naddress: 4 Invented Row\nalso:\n  Colour: white\n',
  },
  people: {
    rows: [
      ['Full name', 'Initials', 'Role', 'Years active', 'Remarks'],
      ['Tam Kessel', 'T.K., T.Ke.', 'copying, cutting', '1968-1985', 'Left-handed.'],
    ],
    text: 'title: Tam Kessel\ninitials: [T.K., T.Ke.]\ndid: [copying, cutting]\nactive: "1968/1985"\n---\nLeft-handed.\n',
  },
};

describe.each(Object.entries(SHEETS))('a sheet of %s', (kind, { rows, text }) => {
  test('comes in as such entries when told so, every cell accounted for', async () => {
    const { entries, accounted } = await imported(rows, { more: ['--kind', kind, '--write'] });
    expect(entries.map((entry) => entry.kind)).toEqual([kind]);
    expect(entries[0]?.text).toBe(`---\n${text}${text.includes('---') ? '' : '---\n'}`);
    expect(accounted.cells).toBe(rows.flat().length);
    expect(loadEntries(join(dir, 'c')).problems).toEqual([]);
    expect(await readdir(join(dir, 'c'))).toEqual([kind]);
  });

  test('is known by its own name, and what a row is is kept for the next time', async () => {
    expect((await imported(rows, { name: `my ${kind} 2026.csv` })).kind).toBe(kind);
    const { rows: keptKind } = JSON.parse(await readFile(join(dir, `my ${kind} 2026.csv.columns.json`), 'utf8'));
    expect(keptKind).toBe(kind);
  });
});

describe('a sheet without a telling name', () => {
  test.each(Object.keys(SHEETS))('of %s is known by its headings', async (kind) => {
    const { kind: found, err } = await imported(SHEETS[kind as keyof typeof SHEETS].rows, { name: 'list.csv' });
    expect(found).toBe(kind);
    expect(err).toContain('by its headings: --kind says otherwise');
  });

  test.each([
    [['Title', 'Artist', 'Record label', 'Cat no', 'Country', 'Box', 'Speed']],
    [['Title', 'Notes']],
    [['Name', 'Date']],
  ])('with the headings %j is of reels', async (headings) => {
    expect((await imported([headings, headings.map(() => 'x1')], { name: 'list.csv' })).kind).toBe('reels');
  });

  test('an unknown kind is refused in a sentence', async () => {
    const refused = imported([['Title'], ['x']], { more: ['--kind', 'shelf'] });
    await expect(refused).rejects.toBeInstanceOf(UsageError);
    await expect(imported([['Title'], ['x']], { more: ['--make', 'reels'] })).rejects.toThrow('--make takes editions');
  });
});

test('every fact that the desk asks for has its column, in every kind', () => {
  for (const kind of SHEET_KINDS) {
    const keys = columnsOf(kind).map(({ key }) => key);
    const facts = FIELDS[kind].flatMap((field) =>
      field.is === 'map' ? field.fields.map((inner) => `${field.key}.${inner.key}`) : [field.key],
    );
    expect(facts.filter((key) => !keys.includes(key))).toEqual([]);
  }
});

describe('entries that a sheet of reels names', () => {
  const ROWS = [
    ['Title', 'Side', 'Artist', 'Record label', 'Released', 'Engineer', 'Client', 'Stock', 'Room'],
    ['Marram', '1', 'Ines Vorle', 'Hollin', '1978', 'Tam Kessel', 'Hollin Overseas', 'Norda Verde', 'Spare room'],
    ['Marram', '2', 'Ines Vorle', 'Hollin', '1978', 'T.K.', 'Hollin Overseas', 'norda verde', 'Spare room'],
    ['Marram', '3', 'The Sallow Reach', 'Hollin', '', 'owner', '', '', ''],
    ['Low Water, side 1', '', 'The Sallow Reach', '', 'some time', '-', '', '', ''],
  ];

  test('aren’t made until told; their cells stay as they are, and that they could be is said', async () => {
    const { entries, err } = await imported(ROWS);
    expect(entries.every(({ kind }) => kind === 'reels')).toBe(true);
    expect(entries[0]?.text).toContain('  Artist: Ines Vorle\n');
    expect(entries[0]?.text).toContain('  by: Tam Kessel\n');
    expect(err).toContain('--make editions,stocks,places makes entries of them');
    expect(err).toContain('kept under also: until --make editions');
  });

  test('are made when told, one each, and referred to by their ids', async () => {
    const { entries, accounted } = await imported(ROWS, { more: ['--make', 'all', '--write'] });
    const made = entries.filter(({ kind }) => kind !== 'reels');
    expect(made.map(({ file }) => file)).toEqual([
      'editions/marram.md',
      'editions/marram-2.md',
      'editions/low-water.md',
      'people/hollin-overseas.md',
      'people/tam-kessel.md',
      'stocks/norda-verde.md',
      'places/spare-room.md',
    ]);
    expect(made[0]?.text).toBe('---\ntitle: Marram\nartist: Ines Vorle\nlabel: Hollin\nissued: "1978"\n---\n');
    const [first, second, third, last] = entries;
    expect(first?.text).toContain('edition: [marram]\nclient: hollin-overseas\nstock: norda-verde\n');
    expect(first?.text).toContain('  by: tam-kessel\nplace:\n  at: spare-room\n---');
    expect(second?.text).toContain('  by: T.K.\n');
    expect(third?.text).toContain('edition: [marram-2]\nrecorded:\n  by: owner\n---');
    expect(last?.text).toContain('edition: [low-water]\nalso:\n  Released: some time\n---');
    expect(accounted.cells).toBe(ROWS.flat().filter((cell) => cell !== '').length);
    expect(accounted.inAlso).toBe(1);
    expect(loadEntries(join(dir, 'c')).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('that there are by the same title are referred to, and stay as they are', async () => {
    await there('editions/marram-lp.md', '---\ntitle: MARRAM\n---\n');
    await there('people/tk.md', '---\ntitle: Tam  Kessel\n---\n');
    const { entries } = await imported(ROWS, { more: ['--make', 'editions,people', '--write'] });
    expect(entries[0]?.text).toContain('edition: [marram-lp]');
    expect(entries[0]?.text).toContain('  by: tk\n');
    expect(entries.map(({ id }) => id)).not.toContain('marram');
    expect(await readFile(join(dir, 'c/editions/marram-lp.md'), 'utf8')).toBe('---\ntitle: MARRAM\n---\n');
    // What the row says of that record isn't put into an entry that is its owner's, and isn't lost.
    expect(entries[0]?.text).toContain('  Artist: Ines Vorle\n');
  });

  test('that rows refer to by an id which isn’t there are begun', async () => {
    const rows = [
      ['Title', 'Edition', 'Artist', 'Stock'],
      ['Marram', 'marram-lp', 'Ines Vorle', 'norda-verde'],
    ];
    const { entries } = await imported(rows, { more: ['--make', 'all'] });
    expect(entries.map(({ file }) => file)).toEqual([
      'reels/marram.md',
      'editions/marram-lp.md',
      'stocks/norda-verde.md',
    ]);
    expect(entries[1]?.text).toBe('---\ntitle: Marram lp\nartist: Ines Vorle\n---\n');
    expect(entries[0]?.text).not.toContain('also');
  });
});

describe('told to fill', () => {
  const SHEET = [
    ['Title', 'Speed', 'Tracks', 'Matrix', 'Job', 'Engineer', 'Colour', 'Date'],
    ['Low Water', '15 ips', 'two track', 'HLX 2207-A', '4471', 'T.K.', 'blue', '25/4/1974'],
  ];
  const fill = async (before: string) => {
    await there('reels/low-water.md', before);
    const answer = await imported(SHEET, { more: ['--fill', '--write'] });
    return { ...answer, after: await readFile(join(dir, 'c/reels/low-water.md'), 'utf8') };
  };

  test('facts within maps are added where the entry lacks them, and nothing that it says changes', async () => {
    const { after, entries } = await fill(
      '---\r\ntitle: Low Water   # mine\r\nstatus: held\r\nformat: { speed: 30 in/s }   # measured\r\nnumbers:\r\n  # as on the spine\r\n  matrix: [HLX 2207-B]\r\nrecorded: none\r\nalso: { Colour: white, size: big }\r\n---\r\nBody\r\n',
    );
    expect(after).toBe(
      '---\r\ntitle: Low Water   # mine\r\nstatus: held\r\nformat: { tracks: two-track stereo, speed: 30 in/s }   # measured\r\nnumbers:\r\n  # as on the spine\r\n  matrix: [HLX 2207-B]\r\n  job: ["4471"]\r\nrecorded: none\r\nalso: { Colour: white, size: big }\r\n---\r\nBody\r\n',
    );
    expect(entries[0]).toMatchObject({ state: 'filled', lacks: ['numbers.job', 'format.tracks'] });
    expect(loadEntries(join(dir, 'c')).problems).toEqual([]);
  });

  test('a key that its owner left empty stays empty', async () => {
    const { after } = await fill('---\ntitle: Low Water\nstatus: held\nformat:\n  speed:\nnumbers:\n---\n');
    expect(after).toContain('format:\n  tracks: two-track stereo\n  speed:\nnumbers:\n');
    expect(after.match(/numbers:/g)).toHaveLength(1);
  });

  test('told twice, it adds nothing the second time', async () => {
    const { after } = await fill('---\ntitle: Low Water\nstatus: held\nformat: { speed: 30 in/s }\n---\n');
    const again = await fill(after);
    expect(again.after).toBe(after);
    expect(again.entries[0]).toMatchObject({ state: 'there', lacks: [] });
  });

  test('facts that stand in brackets as a whole get the new ones within them', async () => {
    const { after } = await fill('---\n{ title: Low Water, status: held, format: { speed: 30 in/s } }\n---\n');
    expect(after).toMatch(/^---\n\{ title: Low Water, status: held, .*speed: 30 in\/s.* \}\n---\n$/);
    expect(after).toContain('matrix: [HLX 2207-A]');
    expect(loadEntries(join(dir, 'c')).problems).toEqual([]);
  });

  test('an entry of a form that can’t be added to is left, and what it lacks is said', async () => {
    const before = '---\ntitle: Low Water\nstatus: held\nformat: &a { speed: 30 in/s }\nalso: { b: *a }\n---\n';
    const { after, entries } = await fill(before);
    expect(after).toBe(before);
    expect(entries[0]?.state).toBe('there');
  });
});
