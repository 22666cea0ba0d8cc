import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { exportAs } from '../../src/commands/export.ts';
import { TOLD_EVERYTHING } from '../given/told-everything.ts';
import { writeCollection } from '../given/written-collection.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { askForPrograms } from './needed.ts';

/** What a spreadsheet would run, if it were let. */
const HOSTILE = ['=1+1', '+1+1', '-1+1', '@SUM(1;1)', '=HYPERLINK("http://example.org")', "'=1+1", '=cmd|x'];

let folder: string;
beforeAll(async () => {
  askForPrograms();
  folder = mkdtempSync(join(tmpdir(), 'outside-'));
  const hostile = Object.fromEntries(
    HOSTILE.map((text, at) => [
      `reels/hostile-${at}`,
      `title: ${JSON.stringify(text)}\nclient: ${JSON.stringify(text)}\nvaluations: [{ amount: 10 GBP, by: ${JSON.stringify(text)} }]`,
    ]),
  );
  await writeCollection(join(folder, 'collection'), { ...TOLD_EVERYTHING, ...hostile }, () =>
    cameraPhotograph(640, 400),
  );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const shell = (command: string, within = folder) => spawnSync('sh', ['-c', command], { cwd: within, encoding: 'utf8' });

async function exported(form: string, out: string): Promise<void> {
  let err = '';
  const io = {
    out: () => undefined,
    err: (text: string) => {
      err += text;
    },
    cwd: folder,
    now: new Date('2026-04-01T12:00:00'),
    env: {},
    terminal: false,
  };
  const exit = await exportAs(['--as', form, '--out', out, '--cache', join(folder, 'cache')], io);
  if (exit !== 0) throw new Error(err);
}

/** The cells of a CSV file as the spreadsheet Gnumeric holds them. */
function sheetOf(csv: string): string {
  const run = shell(`ssconvert --export-type=Gnumeric_Excel:xlsx2 ${csv} opened.xlsx`);
  if (run.status !== 0) throw new Error(run.stderr);
  const parts = unzipSync(readFileSync(join(folder, 'opened.xlsx')));
  return Object.entries(parts)
    .filter(([name]) => /^xl\/(?:worksheets\/|sharedStrings)/.test(name))
    .map(([, part]) => strFromU8(part))
    .join('\n');
}

describe('a spreadsheet', () => {
  test('runs nothing of a cell that holds a formula, which it would run as it stands', async () => {
    writeFileSync(join(folder, 'control.csv'), '"a","=1+1"\r\n');
    expect(sheetOf('control.csv')).toMatch(/<f>/);
    await exported('csv', 'reels.csv');
    const sheet = sheetOf('reels.csv');
    expect(sheet).not.toMatch(/<f[ >]/);
    expect(sheet).toContain('<t>=HYPERLINK(');
    await exported('schedule', 'schedule');
    expect(sheetOf('schedule/schedule.csv')).not.toMatch(/<f[ >]/);
  });
});

describe('a bag', () => {
  test('is whole to coreutils: the files, their sums and their count are those of its lists', async () => {
    await exported('bag', 'bag');
    const bag = join(folder, 'bag');
    for (const manifest of ['manifest-sha512.txt', 'tagmanifest-sha512.txt'])
      expect(shell(`sha512sum --check --strict --quiet ${manifest}`, bag)).toMatchObject({ status: 0, stdout: '' });
    const listed = shell('cut -c131- manifest-sha512.txt | LC_ALL=C sort', bag).stdout;
    expect(listed).toBe(shell('find data -type f | LC_ALL=C sort', bag).stdout);
    const counted = shell(
      "find data -type f -printf '%s\\n' | awk '{ octets += $1 } END { printf \"%.0f.%d\", octets, NR }'",
      bag,
    );
    expect(readFileSync(join(bag, 'bag-info.txt'), 'utf8')).toContain(`Payload-Oxum: ${counted.stdout}\n`);
    expect(shell('find . -type l', bag).stdout).toBe('');
  });
});

describe('the published schema of PBCore 2.1', () => {
  const schema = process.env['PBCORE_XSD'];
  const here = schema !== undefined && existsSync(schema);

  test('is at hand, or that it isn’t is said', () => {
    if (!here) process.stderr.write('PBCORE_XSD is not set: records were NOT held against the published schema.\n');
    expect(schema === undefined || here, 'PBCORE_XSD is set, and there is no such file').toBe(true);
  });

  test.runIf(here)('takes every record, and refuses one without its location', async () => {
    await exported('pbcore', 'reels.xml');
    const xml = readFileSync(join(folder, 'reels.xml'), 'utf8');
    const complaints = async (contents: string) =>
      (
        await validateXML({ xml: [{ fileName: 'reels.xml', contents }], schema: [readFileSync(schema ?? '', 'utf8')] })
      ).errors.map(({ message }) => message);
    expect(await complaints(xml)).toEqual([]);
    expect(await complaints(xml.replace(/<instantiationLocation>.*?<\/instantiationLocation>/, ''))).not.toEqual([]);
  });
});
