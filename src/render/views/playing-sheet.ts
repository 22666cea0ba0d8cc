import type { PlannedReel, PlanReel, PlayingPlan } from '#model/plan.ts';
import { mark } from '../marks.ts';
import { html, type Markup } from '../markup.ts';
import { clock, spoken } from '../words/duration.ts';
import { count, listed } from '../words/number.ts';
import { cautionBox, cell, head, list, type PlanPlace, reelName, row, section, told } from './plan-parts.ts';

/** A day at the machine on one sheet: the same at build, in the browser and in a sealed dossier. */
export function playingSheet(plan: PlayingPlan, place: PlanPlace = {}): Markup {
  const { play, leave } = plan;
  return html`${cautionBox(plan.cautions)}${section(
    'order',
    1,
    'Order',
    'Soundest first, one setting after the other, a baked tape last.',
    play.length === 0
      ? html`<p>${mark('not-recorded', 'None of these is to be played')} What each would take stands below.</p>`
      : html`${orderTable(play, place)}${total(plan)}${stepList(play)}`,
  )}${leave.length > 0 && section('not', 2, 'Not to be played', 'What it would take is said, so that nobody tries.', leaveTable(leave, place))}${section(
    'day',
    leave.length > 0 ? 3 : 2,
    'For all of them',
    'Sources that differ stand side by side.',
    forAll(plan),
  )}${play.length > 0 && section('write', leave.length > 0 ? 4 : 3, 'Write down on the day', '', writeTable(play))}`;
}

function orderTable(play: readonly PlannedReel[], place: PlanPlace): Markup {
  const rows = play.map(({ reel, machine, sameSettings }, index) =>
    row(html`${index + 1}. ${reelName(reel.id, reel.title, place)}`, [
      cell('Condition', condition(reel, index, play[index - 1]?.reel)),
      cell('Set to', sameSettings ? html`as No. ${index}; check again` : settings(reel, machine?.title)),
      cell('Wound on', html`${told(reel.woundOn)}, ${told(reel.wind)}`),
      cell(
        'Runs',
        reel.runsS === undefined
          ? told({ says: reel.runsBy, known: false })
          : html`${clock(reel.runsS)}${reel.runs === 2 && ' twice'}<br><span class="soft">${reel.runsBy}</span>`,
        'r nowrap',
      ),
    ]),
  );
  return html`<table class="led stack run order">${head(['Reel', 'Condition', 'Set the machine to', 'Wound on', 'Runs'])}<tbody>${rows}</tbody></table>`;
}

function condition(reel: PlanReel, index: number, before: PlanReel | undefined): Markup {
  if (reel.may === 'yes') return html`${mark('clear', 'clear')} seen ${reel.looked}`;
  const because = reel.because.join(' ');
  const same = before?.may === reel.may && before.because.join(' ') === because;
  return html`${mark('care', 'with care')} ${same ? `as No. ${index}` : because}`;
}

const settings = (reel: PlanReel, machine: string | undefined): Markup =>
  html`${machine === undefined ? told({ says: 'machine not recorded', known: false }) : html`<b>${machine}</b>`}: ${told(reel.speed)} · ${told(reel.equalisation)} · ${told(reel.tracks)} · level ${told(reel.level)}, tones ${told(reel.tones)} · noise reduction ${told(reel.noiseReduction)}`;

function total({ programmeS, withSetUpS, play, timesSource }: PlayingPlan): Markup {
  if (programmeS === undefined || withSetUpS === undefined) {
    return html`<p class="small">${told({ says: 'No total', known: false })}: a length isn’t recorded. Allow ${timesSource}.</p>`;
  }
  return html`<p class="small">${clock(programmeS)} of tape on ${count(play.length, 'reel')}; about ${spoken(Math.round(withSetUpS / 300) * 300)} with set-up (${timesSource}).</p>`;
}

/** Each step once, with the numbers of the reels that it goes for, in the order of the bench. */
function stepList(play: readonly PlannedReel[]): Markup {
  const numbers = new Map<string, number[]>();
  play.forEach(({ steps }, index) => {
    for (const step of steps) numbers.set(step, [...(numbers.get(step) ?? []), index + 1]);
  });
  const steps = [...numbers].map(
    ([step, of]) =>
      html`<li><b>${of.length === play.length && of.length > 1 ? 'All' : `No. ${listed(of.map(String))}`}:</b> ${step}</li>`,
  );
  return html`<div><h3>At the bench</h3><ul class="why cols">${steps}</ul></div>`;
}

function leaveTable(leave: readonly PlanReel[], place: PlanPlace): Markup {
  const rows = leave.map((reel) =>
    row(reelName(reel.id, reel.title, place), [
      cell('Why', html`${mark('cannot', 'leave it in its box')} ${reel.because.join(' ')}`, 'w'),
      cell(
        'It would take',
        html`${reel.takes.join(' ')}${reel.bake.answer === 'never' && html` <b>Never to be baked:</b> ${reel.bake.because}`}`,
        'w',
      ),
    ]),
  );
  return html`<table class="led stack run">${head(['Reel', 'Why', 'What it would take'])}<tbody>${rows}</tbody></table>`;
}

function forAll(plan: PlayingPlan): Markup {
  const sourced = (rows: PlayingPlan['capture']) =>
    list(rows.map(({ says, source }) => html`${says} <span class="soft">(${source})</span>`));
  return html`<div class="pair three"><div><h3>Let it take the room’s air, in its box</h3>${sourced(plan.acclimatising)}</div><div><h3>Capture</h3>${sourced(plan.capture)}</div><div><h3>At the first squeal</h3>${list(plan.squeal)}</div></div>`;
}

function writeTable(play: readonly PlannedReel[]): Markup {
  const rows = play.map(
    (_, index) => html`<tr><th scope="row">${index + 1}</th><td></td><td></td><td></td><td></td></tr>`,
  );
  return html`<table class="led write">${head(['No.', 'Azimuth, by ear or tones', 'Level found', 'Real length', 'Heard, seen, stopped at'])}<tbody>${rows}</tbody></table>`;
}
