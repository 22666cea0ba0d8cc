import type { ClimateStretch, ClimateSummary } from '#model/climate.ts';
import { html, type Markup } from '../markup.ts';
import { decimal } from '../words/number.ts';

/** One of the traces of a log. */
export interface Trace {
  readonly title: string;
  readonly drawing: Markup;
  /** Figures beside the left edge, with how far down they stand, in percent. */
  readonly scale: readonly { readonly words: string; readonly percent: number }[];
  /** First days of months along the foot, with how far along they stand. */
  readonly months: readonly { readonly words: string; readonly percent: number }[];
}

interface Bounds {
  /** The medium-term bounds: a shaded band. A missing end is open. */
  readonly band: readonly [low: number | undefined, high: number] | undefined;
  /** The outer bounds of the other source: lines. */
  readonly lines: readonly number[];
}

interface Quantity {
  readonly title: string;
  readonly unit: string;
  readonly bounds: Bounds;
  readonly of: (stretch: ClimateStretch) => { low: number; mean: number; high: number } | undefined;
}

/** The band by ISO 18923, medium term; the lines by IASA-TC 05 section 3.3. */
const QUANTITIES: readonly Quantity[] = [
  {
    title: 'Temperature, °C',
    unit: '°C',
    bounds: { band: [undefined, 23], lines: [8, 35] },
    of: ({ lowC, meanC, highC }) => ({ low: lowC, mean: meanC, high: highC }),
  },
  {
    title: 'Relative humidity, %',
    unit: '%',
    bounds: { band: [20, 50], lines: [25, 60] },
    of: ({ lowPercent, meanPercent, highPercent }) => ({ low: lowPercent, mean: meanPercent, high: highPercent }),
  },
  {
    title: 'Dew point, °C',
    unit: '°C',
    bounds: { band: undefined, lines: [] },
    of: ({ meanDewPointC: mean }) => (mean === undefined ? undefined : { low: mean, mean, high: mean }),
  },
];

const WIDE = 1000;
const HIGH = 200;
/** More points than this can't be told apart on a sheet, and make the drawing heavy. */
const MOST_POINTS = 400;

/** Temperature, humidity and dew point over time, to one scale of time; where nothing was logged there is no line. */
export function drawClimate(climate: ClimateSummary): readonly Trace[] {
  const { points, widthMs } = thinned(climate);
  return QUANTITIES.map((quantity) => drawTrace(quantity, climate, points, widthMs));
}

interface Point {
  readonly fromMs: number;
  readonly low: number;
  readonly mean: number;
  readonly high: number;
}

/** Neighbours are put together until they are few enough: nothing that a stretch reached is lost. */
function thinned({ series, stretchMs, usualStepMs }: ClimateSummary): {
  points: readonly (readonly ClimateStretch[])[];
  widthMs: number;
} {
  const span = ((series.at(-1)?.fromMs ?? 0) - (series[0]?.fromMs ?? 0)) / stretchMs + 1;
  // No narrower than the log's own step: between two readings of an hour there is no gap.
  const widthMs = Math.max(1, Math.ceil(span / MOST_POINTS), Math.ceil(usualStepMs / stretchMs)) * stretchMs;
  const groups = Map.groupBy(series, (stretch) => Math.floor(stretch.fromMs / widthMs));
  return { points: [...groups.values()], widthMs };
}

function drawTrace(
  { title, unit, bounds, of }: Quantity,
  climate: ClimateSummary,
  groups: readonly (readonly ClimateStretch[])[],
  widthMs: number,
): Trace {
  const points = groups.flatMap((stretches) => pointOf(stretches, of));
  const ends = [...bounds.lines, ...(bounds.band ?? [])].filter((end) => end !== undefined);
  const reached = points.length === 0 ? [0] : points.flatMap((point) => [point.low, point.high]);
  const low = Math.floor(Math.min(...ends, ...reached) / 5) * 5;
  const high = Math.ceil(Math.max(...ends, ...reached) / 5) * 5;
  const y = (value: number) => Math.round(((high - value) / Math.max(1, high - low)) * HIGH);
  const fromMs = points[0]?.fromMs ?? climate.fromMs;
  const spanMs = Math.max(1, (points.at(-1)?.fromMs ?? fromMs) + widthMs - fromMs);
  const x = (timeMs: number) => Math.round(((timeMs - fromMs) / spanMs) * WIDE);
  const runs = withoutGaps(points, Math.max(1.9 * widthMs, STEPS_IN_A_GAP * climate.usualStepMs));
  const mean = runs.map((run) => path(meanOf(run, widthMs, x, y)));
  const envelope = runs.map((run) => `${path(around(run, x, y))}Z`).join('');
  const band = bounds.band === undefined ? undefined : bandOf(bounds.band, low, y);
  const lines = bounds.lines.map((value) => html`<path class="outer" d="M0 ${y(value)}H${WIDE}"/>`);
  const drawing = html`<svg viewBox="0 0 ${WIDE} ${HIGH}" preserveAspectRatio="none" role="img" aria-label="${inWords(title, points, unit, bounds, runs.length)}">${band}${lines}<path class="env" d="${envelope}"/><path class="mean" d="${mean.join('')}"/></svg>`;
  const marks = [low, ...ends, high].filter((value, index, all) => all.indexOf(value) === index);
  return {
    title,
    drawing,
    scale: apart(marks.map((value) => ({ words: String(value), percent: Math.round((y(value) / HIGH) * 100) }))),
    months: monthsOf(fromMs, spanMs),
  };
}

function pointOf(stretches: readonly ClimateStretch[], of: Quantity['of']): readonly Point[] {
  const values = stretches.flatMap((stretch) => of(stretch) ?? []);
  const [first] = stretches;
  if (first === undefined || values.length === 0) return [];
  return [
    {
      fromMs: first.fromMs,
      low: Math.min(...values.map((value) => value.low)),
      mean: values.reduce((sum, value) => sum + value.mean, 0) / values.length,
      high: Math.max(...values.map((value) => value.high)),
    },
  ];
}

/** A step over this many usual ones is a gap, as in the reading of the log. */
const STEPS_IN_A_GAP = 3;

/** A line ends where the next stretch is too far off: nobody knows what the air did. */
function withoutGaps(points: readonly Point[], mostMs: number): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  for (const point of points) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (run === undefined || before === undefined || point.fromMs - before.fromMs > mostMs) runs.push([point]);
    else run.push(point);
  }
  return runs;
}

/** A stretch that stands alone is as long as itself, or it couldn't be seen. */
function meanOf(run: readonly Point[], widthMs: number, x: (ms: number) => number, y: (value: number) => number) {
  const line = run.map((point) => [x(point.fromMs), y(point.mean)] as const);
  const [only] = run;
  return only === undefined || run.length > 1 ? line : [...line, [x(only.fromMs + widthMs), y(only.mean)] as const];
}

const around = (run: readonly Point[], x: (ms: number) => number, y: (value: number) => number) => [
  ...run.map((point) => [x(point.fromMs), y(point.high)] as const),
  ...run.map((point) => [x(point.fromMs), y(point.low)] as const).reverse(),
];

function bandOf([from, until]: NonNullable<Bounds['band']>, low: number, y: (value: number) => number): Markup {
  const top = y(until);
  return html`<rect class="band" width="${WIDE}" y="${top}" height="${y(from ?? low) - top}"/>`;
}

function inWords(title: string, points: readonly Point[], unit: string, { band, lines }: Bounds, runs: number): string {
  if (points.length === 0) return `${title}: none, the air was wholly dry`;
  const least = Math.min(...points.map((point) => point.low));
  const most = Math.max(...points.map((point) => point.high));
  const gaps = runs > 1 ? `; ${runs - 1} ${runs === 2 ? 'gap' : 'gaps'}` : '';
  const shaded = band === undefined ? '' : `; shaded: ${band[0] === undefined ? 'up' : band[0]} to ${band[1]} ${unit}`;
  const outer = lines.length === 0 ? '' : `; lines at ${lines.join(' and ')} ${unit}`;
  return `${title}: between ${decimal(least, 1)} and ${decimal(most, 1)} ${unit}${shaded}${outer}${gaps}`;
}

/** Figures that would stand on each other: the earlier one stays. */
function apart(marks: Trace['scale']): Trace['scale'] {
  const kept: { words: string; percent: number }[] = [];
  for (const one of [...marks].sort((a, b) => a.percent - b.percent)) {
    if (kept.every((other) => Math.abs(other.percent - one.percent) >= 9)) kept.push(one);
  }
  return kept;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** At most a dozen first days of months. */
function monthsOf(fromMs: number, spanMs: number): Trace['months'] {
  const first = new Date(fromMs);
  const all: { words: string; percent: number }[] = [];
  for (let month = 1; month < 1200; month += 1) {
    const start = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + month, 1);
    // One at the very end would stand beside the drawing.
    if (start >= fromMs + 0.97 * spanMs) break;
    const at = new Date(start);
    all.push({
      words: `${MONTHS[at.getUTCMonth()]} ’${String(at.getUTCFullYear()).slice(2)}`,
      percent: Math.round(((start - fromMs) / spanMs) * 100),
    });
  }
  const every = Math.ceil(all.length / 12);
  return all.filter((_, index) => index % every === 0);
}

/** Moves from point to point in whole units: a third of the size of places. */
function path(points: readonly (readonly [number, number])[]): string {
  let [atX, atY] = points[0] ?? [0, 0];
  let text = `M${atX} ${atY}`;
  for (const [x, y] of points.slice(1)) {
    text += `l${x - atX} ${y - atY}`;
    [atX, atY] = [x, y];
  }
  return text;
}
