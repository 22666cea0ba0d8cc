import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { seal } from '../../src/commands/seal.ts';
import { listener } from '../given/listener.ts';
import { writeCollection } from '../given/written-collection.ts';
import { openBrowser } from '../site/browser.ts';
import { askForPrograms } from './needed.ts';

const WORDS = 'tavok limen rudas pobet';
let folder: string;
const keys = new Map<string, string>();

const shell = (command: string, env: Record<string, string> = {}) =>
  spawnSync('sh', ['-c', command], { cwd: folder, encoding: 'utf8', env: { ...process.env, ...env } });

beforeAll(async () => {
  askForPrograms();
  folder = mkdtempSync(join(tmpdir(), 'outside-'));
  await writeCollection(
    join(folder, 'collection'),
    {
      'reels/low-water': 'title: Low Water\nphotos: [{ file: front.jpg, shows: box front }]',
      'reels/low-water/front.jpg': '',
      'shares/words': 'title: By words\nfor: valuer\nreels: [low-water]',
      'shares/link': 'title: By link\nfor: valuer\nreels: [low-water]\nopened-by: link',
    },
    () =>
      sharp({ create: { width: 1800, height: 1200, channels: 3, background: '#a08060' } })
        .jpeg()
        .withExif({
          IFD0: { ImageDescription: 'a camera wrote this', Artist: 'somebody' },
          IFD3: { GPSLatitude: '51/1 30/1 0/1', GPSLatitudeRef: 'N' },
        })
        .toBuffer(),
  );
  for (const id of ['words', 'link']) {
    const { said, hear } = listener();
    const io = {
      ...hear,
      cwd: folder,
      now: new Date('2026-04-01T12:00:00'),
      env: { SEAL_PASSPHRASE: WORDS },
      terminal: false,
    };
    const exit = await seal(
      [id, '--collection', 'collection', '--cache', join(folder, 'cache'), '--out', `${id}.html`],
      io,
    );
    if (exit !== 0) throw new Error(said.err);
    keys.set(id, said.out.split('#')[1]?.trim() ?? '');
  }
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the age command', () => {
  test('opens what we sealed for a key, as the page says', () => {
    writeFileSync(join(folder, 'key.txt'), `${keys.get('link')}\n`);
    const run = shell("sed -n '/BEGIN AGE/,/END AGE/p' link.html | age -d -i key.txt > by-key.html");
    expect(run.stderr).toBe('');
    expect(readFileSync(join(folder, 'by-key.html'), 'utf8')).toContain('Low Water');
  });

  test('opens what we sealed with words, asked for on a terminal', () => {
    shell("sed -n '/BEGIN AGE/,/END AGE/p' words.html > words.age");
    const run = shell(
      `(sleep 2; printf '%s\\n' "$WORDS"; sleep 8) | script -qec 'age -d -o by-words.html words.age' /dev/null`,
      { WORDS },
    );
    expect(run.stdout).toContain('passphrase');
    expect(readFileSync(join(folder, 'by-words.html'), 'utf8')).toContain('Low Water');
  });

  test('seals what our page opens', async () => {
    writeFileSync(
      join(folder, 'plain.html'),
      '<!doctype html><html lang="en"><head><title>From outside</title></head><body><main id="main"><p id="who">Sealed by another program</p></main></body></html>',
    );
    writeFileSync(join(folder, 'own.txt'), `${keys.get('link')}\n`);
    const run = shell('age -r "$(age-keygen -y own.txt)" -a -o outside.age plain.html');
    expect(run.stderr).toBe('');
    const browser = await openBrowser();
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(folder, 'words.html')).href);
    await page.click('summary');
    await page.setInputFiles('#file', join(folder, 'outside.age'));
    await page.fill('#words', keys.get('link') ?? '');
    await page.click('#lock button');
    await page.waitForSelector('#who');
    expect(await page.textContent('#who')).toBe('Sealed by another program');
    await browser.close();
  });
});

test('exiftool finds in the pictures what their format needs, and nothing that a camera wrote', () => {
  const html = readFileSync(join(folder, 'by-key.html'), 'utf8');
  const pictures = [...html.matchAll(/data:image\/webp;base64,([A-Za-z0-9+/=]+)/g)].map((match) =>
    Buffer.from(match[1] ?? '', 'base64'),
  );
  expect(pictures.length).toBeGreaterThan(1);
  for (const [at, picture] of pictures.entries()) {
    writeFileSync(join(folder, `${at}.webp`), picture);
    const groups = Object.keys(
      (JSON.parse(shell(`exiftool -j -G1 ${at}.webp`).stdout) as Record<string, unknown>[])[0] ?? {},
    ).map((key) => key.split(':')[0]);
    expect(
      [...new Set(groups)].filter(
        (group) => !['SourceFile', 'ExifTool', 'System', 'File', 'RIFF', 'Composite'].includes(group ?? ''),
      ),
    ).toEqual([]);
  }
});
