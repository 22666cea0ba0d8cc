import { distance } from 'fastest-levenshtein';
import Fuse from 'fuse.js';
import { searchNumbers } from '#compute/identifiers/number-search.ts';
import { type OpenIndex, openNumberIndex } from '#compute/identifiers/open-index.ts';
import { plainForm } from '#compute/identifiers/plain.ts';

/** Runs in the browser: the search of the site's own pages, and two others on the same questions. */
export interface FindTimes {
  readonly readyMs: number;
  /** One a question, in milliseconds. */
  readonly ours: readonly number[];
  /** The same few questions that the others are asked. */
  readonly oursOfFew: readonly number[];
  readonly linear: readonly number[];
  readonly fuzzy: readonly number[];
}

/** As many answers as the box shows. */
const MOST = 8;
/** A general fuzzy search takes so long that a few questions must do. */
const FEW = 12;

declare global {
  interface Window {
    findTimes: (questions: readonly string[]) => Promise<FindTimes>;
  }
}

window.findTimes = async (questions) => {
  const reply = await fetch('numbers.json');
  const text = await reply.text();
  const start = performance.now();
  const index = openNumberIndex(JSON.parse(text));
  const readyMs = performance.now() - start;
  const few = questions.filter((_, at) => at % Math.ceil(questions.length / FEW) === 0);
  for (const question of few) searchNumbers(index, question, MOST);
  return {
    readyMs,
    ours: timed(questions, (question) => void searchNumbers(index, question, MOST)),
    oursOfFew: timed(few, (question) => void searchNumbers(index, question, MOST)),
    linear: timed(few, linearScan(index)),
    fuzzy: timed(few, fuzzySearch(index)),
  };
};

function timed(questions: readonly string[], ask: (question: string) => void): readonly number[] {
  return questions.map((question) => {
    const start = performance.now();
    ask(question);
    return performance.now() - start;
  });
}

/** Every number's edit distance by another library, and the nearest of them. */
function linearScan({ plains }: OpenIndex) {
  return (question: string) => {
    const asked = plainForm(question);
    const found = plains.map((plain, at) => ({ at, away: plain.includes(asked) ? 0 : distance(asked, plain) }));
    found.sort((a, b) => a.away - b.away || a.at - b.at);
    return found.slice(0, MOST);
  };
}

function fuzzySearch({ plains }: OpenIndex) {
  const fuse = new Fuse(plains, { threshold: 0.4, ignoreLocation: true });
  return (question: string) => fuse.search(plainForm(question), { limit: MOST });
}
