import { posix } from 'node:path';

/** What a link in Markdown points at, in round brackets or behind a reference's name. */
const TARGET = /(\]\(\s*<?|^[ ]{0,3}\[[^\]\n]{1,200}\]:[ \t]*<?)([^\s<>()]{1,500})/gmu;

/** An owner's account in which the links into the collection follow files that move.
 *
 * @param file     The entry's file before, relative to the collection.
 * @param fileNow  The same after.
 * @param moved    Where a file of the collection is afterwards. */
export function withLinksMoved(body: string, file: string, fileNow: string, moved: (path: string) => string): string {
  return body.replace(TARGET, (whole, before: string, target: string) => {
    if (/^[a-z][a-z0-9+.-]*:|^[/\\#]/iu.test(target)) return whole;
    const [path = '', ...rest] = target.split(/(?=[#?])/u);
    const old = posix.join(posix.dirname(file), decoded(path));
    const now = moved(old);
    if (now === old && posix.dirname(file) === posix.dirname(fileNow)) return whole;
    const relative = posix.relative(posix.dirname(fileNow), now);
    const was = posix.relative(posix.dirname(file), old);
    return relative === was ? whole : before + [relative, ...rest].join('');
  });
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
