/** What a system says of a disk or a folder that can't be written, and what can be done about it. */
const TROUBLES: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['EACCES', ['may not be opened or written by you', 'Change its permissions, or choose another folder']],
  ['EPERM', ['may not be opened or written by you', 'Change its permissions, or choose another folder']],
  ['EROFS', ['is on a disk that can only be read', 'Choose a folder on another disk']],
  ['ENOSPC', ['is on a disk that is full', 'Make room on it, or choose a folder on another disk']],
  ['EDQUOT', ['is on a disk where your share is used up', 'Make room on it, or choose a folder on another disk']],
  ['ENOTDIR', ['can’t be there: a part of its path is a file', 'Choose another folder']],
  ['EEXIST', ['can’t be there: a file of that name is', 'Choose another folder']],
  ['ENAMETOOLONG', ['has a name that is too long', 'Choose a shorter one']],
]);

/** What tools that aren't ours say of the same, in words only: the number is the system's own. */
const NUMBERS: ReadonlyMap<string, string> = new Map([
  ['13', 'EACCES'],
  ['28', 'ENOSPC'],
  ['30', 'EROFS'],
  ['36', 'ENAMETOOLONG'],
]);

/** One sentence or two for an error that is the disk's and not the program's; undefined for any other error.
 * What was there before is still there: everything is written beside it first. */
export function diskTrouble(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const trouble = TROUBLES.get(codeOf(error) ?? '');
  if (trouble === undefined) return undefined;
  const [what, action] = trouble;
  return `${pathOf(error) ?? 'A place that has to be written'} ${what}. ${action}. What was there before is as it was.`;
}

function codeOf(error: Error): string | undefined {
  if ('code' in error && typeof error.code === 'string' && TROUBLES.has(error.code)) return error.code;
  return NUMBERS.get(/\(os error (\d+)\)/.exec(error.message)?.[1] ?? '');
}

/** Where it was written to: of a copy or a renaming the system names both ends. */
function pathOf(error: Error): string | undefined {
  if ('dest' in error && typeof error.dest === 'string') return error.dest;
  return 'path' in error && typeof error.path === 'string' ? error.path : undefined;
}
