/** Where a photograph named in an entry lies, relative to the collection: names start at the entry's own folder.
 * Undefined when the name is absolute, or leads out of the collection.
 *
 * @param entryFile  the entry's file, such as `reels/x/index.md`.
 * @param written    as the entry names it, such as `box-front.jpg` or `../shared/legend.jpg`. */
export function photographPath(entryFile: string, written: string): string | undefined {
  if (/^[\\/]|^[A-Za-z]:|\\|\0/.test(written)) return undefined;
  const parts = entryFile.split('/').slice(0, -1);
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return undefined;
  }
  return parts.join('/');
}
