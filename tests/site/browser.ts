import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Browser, chromium, type LaunchOptions } from 'playwright-core';
import { withLock } from '#publish/build-lock.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const CACHE = join(ROOT, '.cache', 'browser');
const LIBRARIES = join(ROOT, 'node_modules', '@sparticuz', 'chromium', 'bin', 'al2023.tar.br');
const FLAGS = [
  '--headless=shell',
  '--no-zygote',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const INSTALLED = ['/usr/bin/chromium', '/usr/bin/google-chrome', '/usr/bin/google-chrome-stable'];

/** A real browser without a window: the one of CHROME_PATH, else on Linux (x64) the one among the packages, else an
 * installed Chromium or Chrome. None of the package's own switches, since they turn the web's protections off.
 *
 * @throws {Error} saying what to install, when no browser starts: a test that needs one fails, and is never skipped. */
export async function openBrowser(): Promise<Browser> {
  const own = process.env['CHROME_PATH'];
  const ways: (() => Promise<Browser>)[] = [];
  if (own !== undefined && own !== '') ways.push(() => launch({ executablePath: own }));
  else {
    if (process.platform === 'linux' && process.arch === 'x64') ways.push(openPackaged);
    ways.push(...INSTALLED.filter(existsSync).map((path) => () => launch({ executablePath: path })));
    ways.push(() => launch({ channel: 'chrome' }));
  }
  const failures: string[] = [];
  for (const way of ways) {
    try {
      return await way();
    } catch (error) {
      failures.push(String(error).split('\n').slice(0, 6).join('\n'));
    }
  }
  throw new Error(
    `No browser starts, and these tests need one. Install Chromium or Chrome, or set CHROME_PATH to one.\n${failures.join('\n')}`,
  );
}

function launch(options: LaunchOptions, packaged = false): Promise<Browser> {
  // The packaged browser brings no program for its sandbox; root and most CI machines can't use one.
  const unboxed = packaged || process.getuid?.() === 0 || process.env['CI'] !== undefined;
  return chromium.launch({ ...options, args: [...FLAGS, ...(unboxed ? ['--no-sandbox'] : [])] });
}

/** Unpacks into the project's own folder: the package's is the machine's temporary one, where two users clash. */
async function openPackaged(): Promise<Browser> {
  mkdirSync(CACHE, { recursive: true });
  // Before the import, which reads them. Its own list of fonts names fixed folders: without it text has no width.
  process.env['TMPDIR'] = CACHE;
  process.env['FONTCONFIG_FILE'] = join(CACHE, 'own-fonts.conf');
  writeFileSync(process.env['FONTCONFIG_FILE'], fontList());
  const { default: packaged, inflate } = await import('@sparticuz/chromium');
  // Test files run side by side: the first of them unpacks, and the others find it done.
  const once = <T>(unpack: () => Promise<T>) => withLock(join(CACHE, 'unpacking.lock'), () => undefined, unpack);
  const executablePath = await once(() => packaged.executablePath());
  try {
    return await launch({ executablePath }, true);
  } catch (error) {
    if (!/shared libraries/.test(String(error))) throw error;
    // A bare machine lacks libraries that a desktop has; the package carries them.
    await once(() => inflate(LIBRARIES));
    const environment = { ...process.env, LD_LIBRARY_PATH: join(CACHE, 'al2023', 'lib') };
    return await launch({ executablePath, env: environment }, true);
  }
}

const fontList = () => `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${CACHE}/fonts/fonts</dir><dir>/usr/share/fonts</dir><cachedir>${CACHE}/fc</cachedir></fontconfig>
`;
