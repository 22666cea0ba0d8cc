import { plainForm } from './plain.ts';

/** A run of a number: letters, figures, or what stands between them. */
export interface Run {
  readonly is: 'letters' | 'figures' | 'between';
  /** As written. */
  readonly text: string;
  /** In plain characters; empty for what stands between. */
  readonly plain: string;
  /** Where it starts and ends in the text, counted from 0. */
  readonly from: number;
  readonly to: number;
}

const FIGURES = /^[0-9?]+$/;

/** A text cut into runs of letters, of figures and of what stands between. An unread `?` goes with the run it touches,
 *  and counts as a figure when it stands alone. */
export function runsOf(text: string): readonly Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (const character of text) {
    addCharacter(runs, character, from);
    from += character.length;
  }
  return runs;
}

function addCharacter(runs: Run[], character: string, from: number): void {
  const plain = character === '?' || character === '？' ? '?' : plainForm(character);
  const last = runs.at(-1);
  const is = kindOf(plain, last);
  const to = from + character.length;
  if (last !== undefined && last.is === is) {
    runs[runs.length - 1] = { is, text: last.text + character, plain: last.plain + plain, from: last.from, to };
  } else if (last !== undefined && plain === '' && isCombining(character)) {
    runs[runs.length - 1] = { ...last, text: last.text + character, to };
  } else {
    runs.push({ is, text: character, plain, from, to });
  }
}

function kindOf(plain: string, last: Run | undefined): Run['is'] {
  if (plain === '') return 'between';
  if (plain === '?' && last?.is === 'letters') return 'letters';
  return FIGURES.test(plain) ? 'figures' : 'letters';
}

/** An accent that follows its letter as a character of its own belongs to the letter. */
const isCombining = (character: string) => /^\p{M}$/u.test(character);
