import type { LocalTime } from '#model/dates.ts';
import type { BakePlan, BakeRow, PlanReel } from '#model/plan.ts';
import { bakeTimesKey, drawBakeTimes } from '../drawings/bake-times.ts';
import { mark, none, notRecorded, type Shape } from '../marks.ts';
import { html, type Markup, type Printable } from '../markup.ts';
import { timeWords } from '../words/date.ts';
import { spoken } from '../words/duration.ts';
import { figures } from '../words/number.ts';
import { cautionBox, cell, head, type PlanPlace, reelName, row, section } from './plan-parts.ts';

/** The practices of baking laid out side by side, for whoever is experienced enough to choose; and the log to keep. */
export function bakeSheet(plan: BakePlan, place: PlanPlace = {}): Markup {
  const { considered, refused } = plan;
  return html`${cautionBox(plan.cautions)}${section(
    'may',
    1,
    'May it be baked at all?',
    'By base, binder and what was seen. An unknown base means no.',
    html`<p><b>An experienced practitioner should do this,</b> and decides whether it is done. The program plans; it doesn’t advise.</p>${mayTable([...considered, ...refused], place)}`,
  )}${considered.length > 0 && section('practices', 2, 'The practices, side by side', 'Never merged into one figure. What rests on what is said in each row.', practices(plan))}${
    considered.length > 0 &&
    html`<div class="further">${section('log', 3, 'Bake log', 'A sheet of its own: filled in while it is warm, and kept in the box.', logSheet(considered))}</div>`
  }`;
}

const ANSWERS: Readonly<Record<PlanReel['bake']['answer'], readonly [Shape, string]>> = {
  never: ['cannot', 'never'],
  'may be considered': ['risk', 'may be considered'],
  'no reason to': ['clear', 'no reason to'],
  'not known': ['not-recorded', 'not known: no'],
};

const answerMark = (answer: PlanReel['bake']['answer']): Markup => mark(...ANSWERS[answer]);

/** What the answers rest on stands once under the table, under its letter. */
function mayTable(reels: readonly PlanReel[], place: PlanPlace): Markup {
  const sources = [...new Set(reels.map((reel) => reel.bake.sources.join('; ')))];
  const letter = (reel: PlanReel) => String.fromCodePoint(A + sources.indexOf(reel.bake.sources.join('; ')));
  const rows = reels.map((reel) =>
    row(reelName(reel.id, reel.title, place), [
      cell('Answer', answerMark(reel.bake.answer), 'v'),
      cell('Because', html`${reel.bake.because} <span class="soft">(${letter(reel)})</span>`, 'w'),
      cell('Bakes so far', earlier(reel), 'w'),
      cell('Do', reel.bake.action, 'w'),
    ]),
  );
  return html`<table class="led stack run may">${head(['Reel', 'Baking', 'Because', 'Bakes so far', 'Do'])}<tbody>${rows}</tbody></table><p class="small soft">${sources.map(
    (source, index) => html`(${String.fromCodePoint(A + index)}) ${source}. `,
  )}</p>`;
}

const A = 97;

function earlier({ bake }: PlanReel): Markup {
  if (bake.earlier.length === 0) return none('none recorded');
  return html`${bake.earlier.length}: ${bake.earlier.map(({ on, how, ended, transferredOn }, index) => {
    const end = ended === undefined ? '' : `, ended ${timeWords(ended)}`;
    const copy = transferredOn === undefined ? ', no transfer recorded after it' : `, transferred ${transferredOn}`;
    return `${index === 0 ? '' : '; '}${on}, ${how}${end}${copy}`;
  })}`;
}

function practices(plan: BakePlan): Markup {
  return html`<p>As if the heat were turned on ${timeWords(plan.startsAt)}. ${
    plan.passS === undefined
      ? notRecorded('Passes can’t be counted: a length isn’t recorded')
      : html`One pass of all of them takes ${spoken(Math.round(plan.passS / 60) * 60)} (${plan.passSource}).`
  }</p>${drawBakeTimes(plan.rows, plan.startsAt)}${bakeTimesKey()}<table class="led stack run practices">${head(['Practice', 'Warmth, and for how long', 'Heat ends; cooled', 'Said to stop playing', 'Passes that fit'])}<tbody>${plan.rows.map(
    practiceRow,
  )}</tbody></table><p>${mark('differs', 'they disagree')} on warmth, on hours and on how long the tape plays afterwards. “Not given”, and no word of cooling: the source is silent on it. A tape has had enough, by one rule of thumb, after ${plan.usualBakes} bakes (${plan.usualBakesSource}). The times run on the clock of the place; a change to or from summer time shifts them.</p><p><b>What baking is said to cost:</b> ${plan.costs.map(
    ({ says, source }, index) => html`${index > 0 && '; '}${says} <span class="soft">(${source})</span>`,
  )}.</p>`;
}

const NOT_GIVEN = html`<span class="soft">not given</span>`;

function practiceRow(one: BakeRow, index: number): Markup {
  const passes = one.passes;
  return row(
    html`${index + 1}. ${one.practice.replace('quarter inch', '¼ in')}<br><span class="soft">${rests(one)}</span>`,
    [
      cell(
        'Warmth',
        html`${one.warmth}, ${one.hours === 'not given' ? 'time not given' : `for ${one.hours}`}${one.remark !== undefined && html`<br><span class="soft">${one.remark}</span>`}`,
      ),
      cell(
        'Heat ends',
        html`${span(one.heatEnds, one.startsAt)}${one.cooledAt !== undefined && html`<br>cooled ${span(one.cooledAt, one.startsAt)}`}`,
      ),
      cell(
        'Stops playing',
        html`${one.saysOfWindow !== undefined && html`${one.saysOfWindow}<br>`}${span(one.closes, one.startsAt)}`,
      ),
      cell(
        'Passes',
        passes === undefined ? NOT_GIVEN : passes[0] === passes[1] ? String(passes[0]) : `${passes[0]} to ${passes[1]}`,
      ),
    ],
  );
}

const rests = ({ rests: on, source }: BakeRow) => (on === source ? source : `${on}; ${source}`);

function span(times: readonly [LocalTime, LocalTime] | undefined, startsAt: LocalTime): Printable {
  if (times === undefined) return NOT_GIVEN;
  const [from, until] = times.map((time) => inPlan(time, startsAt));
  return from === until ? from : `${from} to ${until}`;
}

/** The year stands where it isn't that of the start. */
function inPlan(time: LocalTime, startsAt: LocalTime): string {
  const year = time.slice(0, 4);
  return year === startsAt.slice(0, 4) ? timeWords(time).replace(` ${year}`, '') : timeWords(time);
}

/** Rows enough for a reading an hour of a short bake, or every third of a long one. */
const LOG_ROWS = 12;

function logSheet(reels: readonly PlanReel[]): Markup {
  const rows = Array.from({ length: LOG_ROWS }, () => html`<tr><td></td><td></td><td></td><td></td><td></td></tr>`);
  return html`<p>${figures(reels.length, 'reel')}: ${reels.map((reel) => reel.title).join('; ')}.</p><table class="led write">${head(['Time', 'Thermometer at the tape', 'Second thermometer', 'Humidity', 'Seen, and by whom'])}<tbody>${rows}</tbody></table><div class="sign"><p><span>Heat on</span></p><p><span>Heat off</span></p><p><span>Cool, and out</span></p></div>`;
}
