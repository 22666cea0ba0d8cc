import { html, type Markup } from '../markup.ts';
import { decimal } from '../words/number.ts';

/** A line of the picture, with the letter that it goes by in the table beside it. */
interface CurveLine {
  readonly letter: string;
  readonly points: readonly { readonly frequencyHz: number; readonly levelDb: number }[];
}

export interface CurvePicture {
  readonly lines: readonly CurveLine[];
  readonly title: string;
  /** The same in a sentence, for those who can't see it. */
  readonly description: string;
  /** Unlike that of every other picture on the page. */
  readonly id: string;
}

const [WIDTH, HEIGHT] = [360, 204];
const [LEFT, RIGHT, TOP, BOTTOM] = [34, 336, 18, 182];
const [FROM_HZ, TO_HZ] = [20, 20_000];
const GRID_HZ = [20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000];
const NAMED_HZ = [20, 100, 1000, 10_000];
/** Letters are this far apart at least, so that none covers another. */
const LETTER_STEP = 12;
const STEPS_DB = [1, 2, 3, 5, 10, 20];
const MOST_STEPS = 7;
const LEAST_SPAN_DB = 3;

/** Lines in dB over frequency, 20 Hz to 20 kHz on a logarithmic axis. All are solid, since dashes say how sure something
 * is; each goes by the letter at its end. Geometry stands in attributes only. */
export function drawCurves({ lines, title, description, id }: CurvePicture): Markup {
  const scale = scaleOf(lines.flatMap((line) => line.points.map((point) => point.levelDb)));
  const y = (db: number) => round(BOTTOM - ((db - scale.low) / (scale.high - scale.low)) * (BOTTOM - TOP));
  return html`<svg class="curve" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" aria-labelledby="${id}-t ${id}-d"><title id="${id}-t">${title}</title><desc id="${id}-d">${description}</desc>
<path class="gr" d="${GRID_HZ.map((hz) => `M${x(hz)} ${TOP}V${BOTTOM}`).join('')}${scale.marks.map((db) => `M${LEFT} ${y(db)}H${RIGHT}`).join('')}"/>
<path class="zero" d="M${LEFT} ${y(0)}H${RIGHT}"/><path class="ax" d="M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}"/>
${scale.marks.map((db) => html`<text class="y" x="${LEFT - 5}" y="${y(db) + 4}">${db > 0 ? '+' : ''}${decimal(db, 0)}</text>`)}
<text class="y" x="${LEFT - 5}" y="9">dB</text>
${NAMED_HZ.map((hz) => html`<text class="x" x="${x(hz)}" y="${HEIGHT - 6}">${frequencyWords(hz)}</text>`)}
${lines.map((line) => html`<path class="a" d="${pathOf(line, y)}"/>`)}${letters(lines, y)}</svg>`;
}

/** `63 Hz`, `16 kHz`. */
export const frequencyWords = (hz: number): string =>
  hz < 1000 ? `${decimal(hz, 1)} Hz` : `${decimal(hz / 1000, 2)} kHz`;

const x = (hz: number) => round(LEFT + (Math.log(hz / FROM_HZ) / Math.log(TO_HZ / FROM_HZ)) * (RIGHT - LEFT));

const pathOf = ({ points }: CurveLine, y: (db: number) => number) =>
  points.map((point, at) => `${at === 0 ? 'M' : 'L'}${x(point.frequencyHz)} ${y(point.levelDb)}`).join('');

/** Whole steps round all that is drawn, 0 dB among them, and never so near that nothing looks like something. */
function scaleOf(levels: readonly number[]): { low: number; high: number; marks: readonly number[] } {
  const lowest = Math.min(0, ...levels);
  const highest = Math.max(0, ...levels);
  const spare = Math.max(0, LEAST_SPAN_DB - (highest - lowest)) / 2;
  const step =
    STEPS_DB.find((one) => Math.ceil((highest + spare) / one) - Math.floor((lowest - spare) / one) <= MOST_STEPS) ?? 50;
  const first = Math.floor((lowest - spare) / step);
  const last = Math.ceil((highest + spare) / step);
  const marks = Array.from({ length: last - first + 1 }, (_, at) => (first + at) * step);
  return { low: first * step, high: last * step, marks };
}

/** Each at the end of its line, moved apart where lines end together. */
function letters(lines: readonly CurveLine[], y: (db: number) => number): readonly Markup[] {
  const ends = lines
    .map(({ letter, points }) => ({ letter, at: y(points.at(-1)?.levelDb ?? 0) }))
    .sort((a, b) => a.at - b.at || (a.letter < b.letter ? -1 : 1));
  const places = apart(ends.map((end) => end.at));
  return ends.map(({ letter, at }, index) => {
    const place = places[index] ?? at;
    return html`<path class="to" d="M${RIGHT} ${at}L${RIGHT + 8} ${place}"/><text class="n" x="${RIGHT + 16}" y="${place + 4}">${letter}</text>`;
  });
}

/** Sorted heights, pushed down where they are too near, and back up where the last would leave the picture. */
function apart(heights: readonly number[]): readonly number[] {
  const down: number[] = [];
  for (const height of heights) down.push(Math.max(height, (down.at(-1) ?? Number.NEGATIVE_INFINITY) + LETTER_STEP));
  const up: number[] = [];
  for (const height of down.toReversed())
    up.push(round(Math.min(height, (up.at(-1) ?? BOTTOM + LETTER_STEP) - LETTER_STEP)));
  return up.toReversed();
}

const round = (units: number) => Math.round(units * 10) / 10;
