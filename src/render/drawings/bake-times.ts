import type { LocalTime } from '#model/dates.ts';
import type { BakeRow } from '#model/plan.ts';
import { html, type Markup } from '../markup.ts';
import { timeWords } from '../words/date.ts';

const ROW = 16;
const BAR = 9;
const FOOT = 18;
/** Hours that are told by the hour; what lies further off is told by the day, on a shorter scale past a break. */
const NEAR_STEP = 12;
const FAR_FROM_HOURS = 72;
/** Where the first scale ends and the second begins, in percent. */
const NEAR_ENDS = 58;
const FAR_BEGINS = 62;

/** A stretch of one practice, in hours from the start. */
interface Span {
  readonly is: 'heat' | 'later' | 'cool' | 'plays' | 'closing';
  readonly from: number;
  readonly to: number;
}

/** Every practice as a bar of its own from one start: heat, cooling, the time in which the tape is said to play, and the
 * stretch in which that is said to end. Nothing is merged; a source that is silent has no bar there. Geometry is in
 * percent, so that the words keep their size at any width. The numbers are those of the table's rows. */
export function drawBakeTimes(rows: readonly BakeRow[], startsAt: LocalTime): Markup {
  const bars = rows.map((row) => spansOf(row, startsAt));
  const scale = scaleOf(bars.flat());
  const height = rows.length * ROW + FOOT;
  const names = rows.map((row, index) => {
    const y = index * ROW + 12;
    return html`<text class="no" x="0" y="${y}">${index + 1}</text><text class="nm" x="20" y="${y}">${nameOf(row)}</text>`;
  });
  const drawn = bars.map((spans, index) => spans.map((span) => drawSpan(span, scale, index * ROW + 3)));
  return html`<div class="bakesw"><svg class="bakes names" width="100%" height="${height}" aria-hidden="true">${names}</svg><svg class="bakes" width="100%" height="${height}" role="img" aria-labelledby="bakes-title bakes-says"><title id="bakes-title">The practices in time, from ${timeWords(startsAt)}</title><desc id="bakes-says">${rows.map((row, index) => inWords(row, index + 1)).join(' ')}</desc><defs>${pattern('bakes-later', 45)}${pattern('bakes-closing', -45)}</defs>${axis(scale, rows.length * ROW)}${drawn}</svg></div>`;
}

/** What the shapes mean, each beside a piece of itself. */
export function bakeTimesKey(): Markup {
  const sign = (is: Span['is'], words: string) =>
    html`<span class="nb"><svg class="bakes swatch" width="22" height="11" aria-hidden="true"><rect class="${is}" x="1" y="1" width="20" height="9"/></svg> ${words}</span> `;
  return html`<p class="small bakes-key">${sign('heat', 'heat')}${sign('later', 'heat, by the longer time')}${sign('cool', 'cooling')}${sign('plays', 'said to play')}${sign('closing', 'said to stop playing within this')} No bar: the source is silent. Past the break: by the day.</p>`;
}

const hoursFrom = (startsAt: LocalTime, time: LocalTime) =>
  (Date.parse(`${time}:00Z`) - Date.parse(`${startsAt}:00Z`)) / 3_600_000;

function spansOf({ heatEnds, cooledAt, closes }: BakeRow, startsAt: LocalTime): readonly Span[] {
  if (heatEnds === undefined) return [];
  const at = (time: LocalTime) => hoursFrom(startsAt, time);
  const [heat, later] = [at(heatEnds[0]), at(heatEnds[1])];
  const cool = cooledAt === undefined ? later : at(cooledAt[1]);
  const spans: Span[] = [
    { is: 'heat', from: 0, to: heat },
    { is: 'later', from: heat, to: later },
    { is: 'cool', from: later, to: cool },
  ];
  if (closes !== undefined) {
    spans.push(
      { is: 'plays', from: cool, to: at(closes[0]) },
      { is: 'closing', from: at(closes[0]), to: at(closes[1]) },
    );
  }
  return spans.filter(({ from, to }) => to > from);
}

interface Scale {
  readonly nearHours: number;
  /** Missing where nothing lies past the first scale. */
  readonly farHours: number | undefined;
  readonly x: (hours: number) => number;
}

function scaleOf(spans: readonly Span[]): Scale {
  const ends = spans.map(({ to }) => to);
  const near = Math.max(NEAR_STEP, ...ends.filter((hours) => hours <= FAR_FROM_HOURS));
  const nearHours = Math.ceil(near / NEAR_STEP) * NEAR_STEP;
  const last = Math.max(0, ...ends);
  if (last <= nearHours) return { nearHours, farHours: undefined, x: (hours) => round((hours / nearHours) * 100) };
  const farHours = (Math.ceil(last / 24) + 1) * 24;
  const x = (hours: number) =>
    hours <= nearHours
      ? round((hours / nearHours) * NEAR_ENDS)
      : round(FAR_BEGINS + ((hours - nearHours) / (farHours - nearHours)) * (100 - FAR_BEGINS));
  return { nearHours, farHours, x };
}

const round = (percent: number) => Math.round(percent * 100) / 100;

/** A span that crosses the break is drawn on both sides of it. */
function drawSpan({ is, from, to }: Span, scale: Scale, y: number): Markup {
  const { nearHours, x } = scale;
  const rect = (left: number, right: number) =>
    html`<rect class="${is}" x="${left}%" y="${y}" width="${round(right - left)}%" height="${BAR}"/>`;
  if (to <= nearHours || from > nearHours) return rect(x(from), x(to));
  const far = rect(FAR_BEGINS, x(to));
  return from === nearHours ? far : html`${rect(x(from), NEAR_ENDS)}${far}`;
}

function axis({ nearHours, farHours, x }: Scale, foot: number): Markup {
  const near = Array.from({ length: nearHours / NEAR_STEP + 1 }, (_, step) => step * NEAR_STEP);
  const far = farHours === undefined ? [] : [7, 14, 21, 28].map((day) => day * 24).filter((at) => at < farHours);
  const line = (hours: number, words: string, place: string) =>
    html`<line class="gr" x1="${x(hours)}%" x2="${x(hours)}%" y1="0" y2="${foot}"/><text class="tk ${place}" x="${x(hours)}%" y="${foot + 13}">${words}</text>`;
  const ends = farHours === undefined ? 100 : NEAR_ENDS;
  return html`<line class="ax" x1="0" x2="${ends}%" y1="${foot}" y2="${foot}"/>${
    farHours !== undefined && html`<line class="ax" x1="${FAR_BEGINS}%" x2="100%" y1="${foot}" y2="${foot}"/>`
  }${near.map((hours, index) => line(hours, `${hours} h`, placeOf(index, near.length)))}${far.map((hours, index) => line(hours, `${hours / 24} d`, index % 2 === 0 ? 'less' : ''))}`;
}

/** The first and the last stay inside the drawing; on a phone every second one steps back. */
const placeOf = (index: number, count: number) =>
  index === 0 ? 'first' : index === count - 1 ? 'end' : (count - 1 - index) % 2 === 1 ? 'less' : '';

const pattern = (id: string, turned: number) =>
  html`<pattern id="${id}" class="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(${turned})"><path d="M1 0V5"/></pattern>`;

/** The width of the tape stands in the table; most are for a quarter inch. */
const nameOf = ({ practice }: BakeRow) => practice.replace(', quarter inch', '').replace(', not said', '');

function inWords(row: BakeRow, number: number): string {
  const heat = row.heatEnds === undefined ? 'hours not given' : `heat ends ${between(row.heatEnds)}`;
  const cool = row.cooledAt === undefined ? '' : `, cool ${between(row.cooledAt)}`;
  const closes =
    row.closes === undefined ? ', nothing said of how long it plays' : `, said to stop playing ${between(row.closes)}`;
  return `${number}, ${row.practice}: ${heat}${cool}${closes}.`;
}

const between = ([from, until]: readonly [LocalTime, LocalTime]) =>
  from === until ? timeWords(from) : `${timeWords(from)} to ${timeWords(until)}`;
