/** More pairs of lines than this aren't compared one by one. */
const MOST_PAIRS = 4_000_000;

/** What differs between two texts, line by line: `− ` before a line that goes, `+ ` before one that comes, in the order
 * of the text. Line ends count for nothing here. */
export function lineDiff(before: string, after: string): readonly string[] {
  const [old, now] = [before.split(/\r?\n/u), after.split(/\r?\n/u)];
  let first = 0;
  while (first < old.length && first < now.length && old[first] === now[first]) first++;
  let last = 0;
  while (last < Math.min(old.length, now.length) - first && old.at(-1 - last) === now.at(-1 - last)) last++;
  return between(old.slice(first, old.length - last), now.slice(first, now.length - last));
}

function between(old: readonly string[], now: readonly string[]): readonly string[] {
  const goes = (line: string) => `− ${line}`;
  const comes = (line: string) => `+ ${line}`;
  if (old.length * now.length > MOST_PAIRS) return [...old.map(goes), ...now.map(comes)];
  const common = commonLengths(old, now);
  const lengthAt = (a: number, b: number) => common[a]?.[b] ?? 0;
  const lines: string[] = [];
  for (let a = 0, b = 0; a < old.length || b < now.length; ) {
    const [gone, come] = [old[a], now[b]];
    if (gone !== undefined && gone === come) {
      a++;
      b++;
    } else if (gone !== undefined && (come === undefined || lengthAt(a + 1, b) >= lengthAt(a, b + 1))) {
      lines.push(goes(gone));
      a++;
    } else if (come !== undefined) {
      lines.push(comes(come));
      b++;
    }
  }
  return lines;
}

/** How many lines the rest of both have in common, from each pair of places on. */
function commonLengths(old: readonly string[], now: readonly string[]): readonly Uint32Array[] {
  const rows = old.map(() => new Uint32Array(now.length + 1));
  rows.push(new Uint32Array(now.length + 1));
  for (let a = old.length - 1; a >= 0; a--) {
    const [row, below] = [rows[a], rows[a + 1]];
    if (row === undefined || below === undefined) continue;
    for (let b = now.length - 1; b >= 0; b--) {
      row[b] = old[a] === now[b] ? (below[b + 1] ?? 0) + 1 : Math.max(below[b] ?? 0, row[b + 1] ?? 0);
    }
  }
  return rows;
}
