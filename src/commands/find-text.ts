import type { countList, ListRow } from '#compute/identifiers/number-list.ts';
import type { Answer, Hit, Lead } from '#compute/identifiers/number-search.ts';
import { many, plain } from './problem-list.ts';

/** An answer as the terminal shows it: what matched, how, why, and which entry it leads to. */
export function answerText({ hits, total, near, query }: Answer): string {
  const found = hits.flatMap((hit) => [leadLine(hit, hit.how), `    ${hit.because}${tieWords(hit)}`]);
  const heading = total === 0 ? [`No entry has ${query}.`] : [];
  const more = total > hits.length ? [`and ${total - hits.length} more: type more of the number`] : [];
  const only =
    near.length === 0
      ? []
      : [
          '',
          'Only near:',
          ...near.slice(0, total === 0 ? near.length : FEW).flatMap((one) => [leadLine(one), `    ${one.because}`]),
        ];
  return `${[...heading, ...found, ...more, ...only].map(plain).join('\n')}\n`;
}

/** Beside hits, near numbers are only a hint. */
const FEW = 3;

const tieWords = ({ tied }: Hit) => (tied ? ' Another fits as well.' : '');

const leadLine = ({ number, as, title, state, id, of }: Lead, how?: string) =>
  [`${number}  ${as}`, ...(how === undefined ? [] : [how]), `${of}: ${title}`, state, entryOf(of, id)].join('  |  ');

const entryOf = (of: Lead['of'], id: string) => `${of === 'edition' ? 'editions' : 'reels'}/${id}`;

/** A list as the terminal shows it: line by line, then how many of each. */
export function listText(rows: readonly ListRow[], counts: ReturnType<typeof countList>): string {
  const lines = rows.flatMap((row) => [`${stateWords(row)}  |  ${row.text}`, ...reasons(row)]);
  const parts = Object.entries(counts).map(([word, count]) => `${count} ${word === 'doubtful' ? 'perhaps' : word}`);
  return `${[...lines, '', `${many(rows.length, 'line')}: ${parts.join(', ')}.`].map(plain).join('\n')}\n`;
}

const stateWords = ({ state, doubtful, number }: ListRow) =>
  number === null ? 'no number' : doubtful ? `perhaps ${state}` : state;

function reasons({ hits, near, doubtful }: ListRow): readonly string[] {
  const first = hits[0] ?? near[0];
  if (first === undefined) return [];
  const why = doubtful || hits.length === 0 ? ` ${first.because}` : '';
  const others = hits.length > 1 ? ` (and ${hits.length - 1} more)` : '';
  return [`    ${first.number}: ${first.title}, ${first.state}${others}.${why}`];
}
