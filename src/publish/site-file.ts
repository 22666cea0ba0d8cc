import { type FileHandle, open, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';

/** What an address asks for: a file of the site, the same address with a slash after it, or nothing that is there. */
export type Asked =
  | {
      readonly is: 'file';
      readonly path: string;
      readonly file: FileHandle;
      readonly size: number;
      readonly changed: number;
    }
  | { readonly is: 'moved'; readonly to: string }
  | { readonly is: 'nothing' };

const NOTHING: Asked = { is: 'nothing' };

/** Finds the file behind an address. Nothing outside `root` is ever opened, whatever dots, codes or links lead there;
 * names that begin with a dot aren't part of a site.
 *
 * @param root     the site's folder, or the link to it: followed anew each time, as a build replaces it.
 * @param address  the request's path as it came, still encoded, without its query. */
export async function siteFile(root: string, address: string): Promise<Asked> {
  const parts = partsOf(address);
  if (parts === undefined) return NOTHING;
  try {
    const inside = await realpath(root);
    const folder = address.endsWith('/');
    const path = await realpath(join(inside, ...parts, folder ? 'index.html' : ''));
    // A link inside the site must not lead out of it.
    if (!path.startsWith(inside + sep) && path !== inside) return NOTHING;
    const file = await open(path, 'r');
    const about = await file.stat();
    if (about.isFile()) return { is: 'file', path, file, size: about.size, changed: about.mtimeMs };
    await file.close();
    return about.isDirectory() && !folder ? { is: 'moved', to: `${address}/` } : NOTHING;
  } catch {
    return NOTHING;
  }
}

/** The names in an address, decoded once; undefined when one of them isn't a plain name. */
function partsOf(address: string): readonly string[] | undefined {
  if (!address.startsWith('/')) return undefined;
  const names = address.slice(1).split('/');
  if (names.at(-1) === '') names.pop();
  try {
    const parts = names.map(decodeURIComponent);
    return parts.every(isPlainName) ? parts : undefined;
  } catch {
    return undefined;
  }
}

/** An empty name would also make `//host/` out of a redirect; `:` names another stream of a file on Windows. */
const isPlainName = (name: string) => name !== '' && !name.startsWith('.') && !/[\\/:\0]/.test(name);
