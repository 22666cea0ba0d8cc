import type { ClimateSummary } from '#model/climate.ts';
import { html, type Markup } from '../markup.ts';
import { decimal } from '../words/number.ts';

/** One of the two traces of a log. */
export interface Trace {
  readonly title: string;
  readonly drawing: Markup;
  /** Figures beside the left edge, with how far down they stand, in percent. */
  readonly scale: readonly { readonly words: string; readonly percent: number }[];
}

/** The bounds by which the summary counts its hours: the shaded band, and the outer lines. */
const BOUNDS = { c: { low: 8, high: 23, outer: [8, 35] }, percent: { low: 20, high: 50, outer: [20, 60] } } as const;
const WIDE = 1000;
const HIGH = 200;
/** More points than this can't be told apart on a sheet, and make the drawing heavy. */
const MOST_POINTS = 400;

export function drawTemperature(climate: ClimateSummary): Trace {
  const points = thinned(climate).map((one) => ({ low: one.lowC, mean: one.meanC, high: one.highC }));
  return drawTrace('Temperature, °C', points, BOUNDS.c, '°C');
}

export function drawHumidity(climate: ClimateSummary): Trace {
  const points = thinned(climate).map((one) => ({ low: one.lowPercent, mean: one.meanPercent, high: one.highPercent }));
  return drawTrace('Relative humidity, %', points, BOUNDS.percent, '%');
}

interface Point {
  readonly low: number;
  readonly mean: number;
  readonly high: number;
}

function thinned({ series }: ClimateSummary) {
  const every = Math.ceil(series.length / MOST_POINTS);
  return series.filter((_, index) => index % every === 0);
}

function drawTrace(
  title: string,
  points: readonly Point[],
  bounds: (typeof BOUNDS)['c' | 'percent'],
  unit: string,
): Trace {
  const low = Math.floor(Math.min(bounds.low, ...points.map((point) => point.low)) / 5) * 5;
  const high = Math.ceil(Math.max(bounds.high, ...points.map((point) => point.high)) / 5) * 5;
  const y = (value: number) => Math.round(((high - value) / (high - low)) * HIGH);
  const x = (index: number) => Math.round((index / Math.max(1, points.length - 1)) * WIDE);
  const top = y(bounds.high);
  const mean = path(points.map((point, index) => [x(index), y(point.mean)]));
  const envelope = path([
    ...points.map((point, index) => [x(index), y(point.high)] as const),
    ...points.map((point, index) => [x(index), y(point.low)] as const).reverse(),
  ]);
  const outer = bounds.outer
    .filter((value) => value > low && value < high)
    .map((value) => html`<path class="outer" d="M0 ${y(value)}H${WIDE}"/>`);
  const least = Math.min(...points.map((point) => point.low));
  const most = Math.max(...points.map((point) => point.high));
  const words = `${title}: between ${decimal(least, 1)} and ${decimal(most, 1)} ${unit}; the shaded band is ${bounds.low} to ${bounds.high} ${unit}`;
  const drawing = html`<svg viewBox="0 0 ${WIDE} ${HIGH}" preserveAspectRatio="none" role="img" aria-label="${words}"><rect class="band" width="${WIDE}" y="${top}" height="${y(bounds.low) - top}"/>${outer}<path class="env" d="${envelope}Z"/><path class="mean" d="${mean}"/></svg>`;
  const scale = [low, bounds.low, bounds.high, high].filter((value, index, all) => all.indexOf(value) === index);
  return {
    title,
    drawing,
    scale: scale.map((value) => ({ words: String(value), percent: Math.round((y(value) / HIGH) * 100) })),
  };
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
