/** Who wrote what this program stands on, and under which licence, from the packages as they are installed.
 *
 *     node tests/licences.ts      writes tests/licences.txt anew */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..');
const FILE = join(import.meta.dirname, 'licences.txt');

interface Locked {
  readonly packages: Readonly<
    Record<string, { readonly version?: string; readonly license?: string; readonly dev?: boolean }>
  >;
}

/** A line a package of the lock file: name, version, licence, and whether only tests need it. A package that says
 * nothing in the lock file is asked itself, where it is installed. */
export function licences(): string {
  const { packages } = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as Locked;
  const lines = Object.entries(packages)
    .filter(([path]) => path.startsWith('node_modules/'))
    .map(([path, { version, license, dev }]) => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return `${name} ${version ?? ''}: ${license ?? ownWord(path)}${dev === true ? ' (tests only)' : ''}`;
    });
  return `${[...new Set(lines)].sort().join('\n')}\n`;
}

function ownWord(path: string): string {
  const file = join(ROOT, path, 'package.json');
  if (!existsSync(file)) return 'not stated';
  const said = (JSON.parse(readFileSync(file, 'utf8')) as { license?: unknown }).license;
  return typeof said === 'string' ? said : 'not stated';
}

export const writtenLicences = () => readFileSync(FILE, 'utf8');

if (import.meta.main) writeFileSync(FILE, licences());
