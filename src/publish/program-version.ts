import { createHash } from 'node:crypto';
import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../..');
const PARTS = ['src/**/*', 'public/**/*', 'astro.config.mjs', 'package.json', 'package-lock.json'];

/** A checksum of all that pages are made by: this program's own files, the list of its packages, and Node. */
export function programVersion(): string {
  const hash = createHash('sha256').update(`${process.version} ${process.platform} ${process.arch}`);
  for (const path of globSync(PARTS, { cwd: ROOT, withFileTypes: true })
    .filter((found) => found.isFile())
    .map((found) => join(found.parentPath, found.name))
    .sort()) {
    const text = readFileSync(path);
    hash.update(`\n${path.slice(ROOT.length)} ${text.length}\n`).update(text);
  }
  return hash.digest('hex');
}
