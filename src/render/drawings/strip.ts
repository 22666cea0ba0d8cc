import { html, type Markup } from '../markup.ts';

/** A stretch of a strip, in the strip's own unit (seconds of a side, days of custody). */
export interface Stretch {
  readonly is: 'title' | 'gap' | 'asked gap' | 'run-out' | 'unknown';
  readonly from: number;
  readonly to: number;
  readonly words?: string | undefined;
}

export interface Tick {
  readonly at: number;
  readonly words: string;
}

const TOP = 12;
const BAND = 42;
/** Narrower than this many percent, a stretch has no room for its word; the table beside it has it. */
const LEAST_FOR_WORDS = 2.6;
const WORD_PERCENT = 1.15;
/** The same on a telephone, where a letter takes more of the strip. */
const NARROW_WORD_PERCENT = 2.6;
const NARROW_FIGURE_PERCENT = 2.1;

/** A strip to scale at any width: geometry in percent, text at text size. `title` says it in words. */
export function drawStrip(stretches: readonly Stretch[], ticks: readonly Tick[], title: string): Markup {
  const from = Math.min(...stretches.map((stretch) => stretch.from));
  const to = Math.max(...stretches.map((stretch) => stretch.to));
  const percent = (at: number) => Math.round(((at - from) / (to - from || 1)) * 10000) / 100;
  return html`<svg class="stripd" width="100%" height="82" role="img" aria-label="${title}"><defs><pattern id="hatch" class="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M1 0V5"/></pattern></defs><rect class="band" x="0" y="${TOP}" width="100%" height="${BAND}"/>${stretches.map(
    (stretch) => drawStretch(stretch, percent(stretch.from), percent(stretch.to)),
  )}${ticks.map((tick, at) => drawTick(percent(tick.at), tick.words, crowded(percent(tick.at), tick.words, ticks[at + 1], percent(ticks[at + 1]?.at ?? from))))}</svg>`;
}

function drawStretch(stretch: Stretch, left: number, right: number): Markup {
  const width = Math.round((right - left) * 100) / 100;
  const middle = Math.round((left + right) * 50) / 100;
  const box = (className: string, fill = '') =>
    html`<rect class="${className}" x="${left}%" y="${TOP}" width="${width}%" height="${BAND}"${fill === '' ? '' : html` fill="${fill}"`}/>`;
  if (stretch.is === 'gap' || stretch.is === 'asked gap') {
    const ask = stretch.is === 'asked gap' && html`<line class="ask" x1="${middle}%" x2="${middle}%" y1="0" y2="10"/>`;
    return html`<line class="gap" x1="${middle}%" x2="${middle}%" y1="${TOP + 1}" y2="${TOP + BAND - 1}"/>${ask}`;
  }
  if (stretch.is === 'run-out') return box('ro', 'url(#hatch)');
  const roomy = stretch.words !== undefined && width >= Math.max(LEAST_FOR_WORDS, stretch.words.length * WORD_PERCENT);
  const className = width < (stretch.words?.length ?? 0) * NARROW_WORD_PERCENT ? 'n wide' : 'n';
  const words =
    roomy && html`<text class="${className}" x="${middle}%" y="${TOP + BAND / 2 + 5}">${stretch.words}</text>`;
  return html`${box(stretch.is === 'unknown' ? 'unk' : 't')}${words}`;
}

/** Just before the last figure, which stands to the left of its place: no room for both on a telephone. */
const crowded = (left: number, words: string, next: Tick | undefined, right: number) =>
  next !== undefined && right > 97 && right - left < (words.length / 2 + next.words.length) * NARROW_FIGURE_PERCENT;

function drawTick(at: number, words: string, isCrowded: boolean): Markup {
  const place = `${at < 3 ? '' : at > 97 ? ' end' : ' mid'}${isCrowded ? ' wide' : ''}`;
  return html`<line class="tick" x1="${at}%" x2="${at}%" y1="${TOP + BAND}" y2="${TOP + BAND + 6}"/><text class="tk${place}" x="${at}%" y="${TOP + BAND + 20}">${words}</text>`;
}
