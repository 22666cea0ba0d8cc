/** Past this length a text is no mistyped name, and comparing it would only cost time. */
const LONGEST = 60;

/** The candidate nearest to a text, if one is near enough to be a slip: a third of its letters, capitals and separators
 * aside. Of several as near, the first by code unit. */
export function nearestOf(text: string, candidates: Iterable<string>): string | undefined {
  if (text.length > LONGEST) return undefined;
  const wanted = plain(text);
  let best: string | undefined;
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - text.length) > least + 2 || candidate.length > LONGEST) continue;
    const steps = slips(wanted, plain(candidate), least + 1);
    if (steps < least || (steps === least && best !== undefined && candidate < best)) {
      best = candidate;
      least = steps;
    }
  }
  return best;
}

const plain = (text: string) => text.toLowerCase().replace(/[\s_-]/gu, '');

/** Letters to put in, leave out, change or swap with their neighbour; given up as `limit` once it can't be less. */
function slips(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let before: number[] = [];
  let above: number[] = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let steps = Math.min((above[j] ?? limit) + 1, (row[j - 1] ?? limit) + 1, (above[j - 1] ?? limit) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        steps = Math.min(steps, (before[j - 2] ?? limit) + 1);
      }
      row.push(steps);
      if (steps < least) least = steps;
    }
    // A swap can bring the next row one under this one, never two.
    if (least > limit) return limit;
    [before, above] = [above, row];
  }
  return Math.min(above[b.length] ?? limit, limit);
}
