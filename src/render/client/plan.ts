import { planBake } from '#compute/plan/bake.ts';
import { planPlaying } from '#compute/plan/playing.ts';
import type { LocalTime } from '#model/dates.ts';
import type { PlanReel } from '#model/plan.ts';
import { parseLocalTime } from '#validate/scalars/local-time.ts';
import { html, type Markup } from '../markup.ts';
import { bakeSheet } from '../views/bake-sheet.ts';
import { playingSheet } from '../views/playing-sheet.ts';

const form = document.querySelector<HTMLFormElement>('#chooser');
const query = new URL(location.href).searchParams;
const asked = query
  .getAll('reels')
  .flatMap((ids) => ids.split(','))
  .map((id) => id.trim())
  .filter((id) => id !== '');

if (form !== null && asked.length > 0) void show(form);

/** Works the plan of the address out and lays it out, by the same code as the plans that stand ready. */
async function show(chooser: HTMLFormElement): Promise<void> {
  const root = chooser.dataset['root'] ?? '/';
  refill(chooser);
  const all = (await fetch(`${root}plan.json`).then((answer) => answer.json())) as readonly PlanReel[];
  const byId = new Map(all.map((reel) => [reel.id, reel]));
  const reels = [...new Set(asked)].flatMap((id) => byId.get(id) ?? []);
  const unknown = asked.filter((id) => !byId.has(id));
  const reelHref = (id: string) => `${root}reels/${id}/`;
  const missing = unknown.length > 0 && html`<p>No reel that is here has the id ${unknown.join(', ')}.</p>`;
  lay(html`${missing}${reels.length > 0 && sheet(chooser, reels, reelHref)}`);
}

function sheet(chooser: HTMLFormElement, reels: readonly PlanReel[], reelHref: (id: string) => string): Markup {
  if (chooser.dataset['kind'] !== 'bake') return playingSheet(planPlaying(reels), { reelHref });
  const start = parseLocalTime(query.get('start') ?? startOf(chooser));
  if (!start.ok) return html`<p>${start.message} ${start.action} A start looks like ${start.expected}.</p>`;
  return bakeSheet(planBake(reels, start.value as LocalTime), { reelHref });
}

const startOf = (chooser: HTMLFormElement) => chooser.querySelector<HTMLInputElement>('#start')?.value ?? '';

/** The form shows what the address asks for. */
function refill(chooser: HTMLFormElement): void {
  for (const box of chooser.querySelectorAll<HTMLInputElement>('input[type=checkbox]'))
    box.checked = asked.includes(box.value);
  const ids = chooser.querySelector<HTMLInputElement>('#ids');
  if (ids !== null) ids.value = asked.join(', ');
  const start = chooser.querySelector<HTMLInputElement>('#start');
  if (start !== null) start.value = query.get('start') ?? start.value;
}

/** Every text in it went through the escaping of `html`. The sheet has cautions of its own: the page's step back. */
function lay(markup: Markup): void {
  const place = document.getElementById('plan');
  if (place === null) return;
  place.innerHTML = markup.toString();
  document.getElementById('first')?.toggleAttribute('hidden', place.querySelector('.cautions') !== null);
}
