// The opening page of a sealed site: takes the words, hands the ring to the worker, and goes where the reader wanted to.
import { Damaged, fromText, unseal, WrongWords } from '../sealed.ts';
import { KEPT_AS, ringOf } from './ring.ts';

const element = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`fault: no ${id}`);
  return found;
};
const base = element('p').dataset['base'] ?? '/';

function say(state: string): void {
  for (const one of document.querySelectorAll<HTMLElement>('[data-state]')) one.hidden = one.dataset['state'] !== state;
}

/** `#/reels/x/` leads to a page without its address ever being sent to the host. */
function wanted(): string {
  const inside = location.hash.startsWith('#/') ? location.hash.slice(2) : undefined;
  const to = new URL(inside === undefined ? location.pathname + location.search : base + inside, location.origin);
  return to.origin === location.origin && to.pathname.startsWith(base) ? to.href : new URL(base, location.origin).href;
}

async function enter(ring: string): Promise<void> {
  const to = wanted();
  await navigator.serviceWorker.register(`${base}worker.js`, { scope: base });
  const { active } = await navigator.serviceWorker.ready;
  const { port1, port2 } = new MessageChannel();
  const said = new Promise((resolve) => {
    port1.onmessage = (event) => resolve(event.data);
  });
  active?.postMessage(ring, [port2]);
  if ((await said) !== 'open') {
    sessionStorage.removeItem(KEPT_AS);
    say('damaged');
    return;
  }
  sessionStorage.setItem(KEPT_AS, ring);
  history.replaceState(null, '', to);
  location.reload();
}

async function open(words: string): Promise<void> {
  say('working');
  await new Promise((resolve) => setTimeout(resolve, 30));
  try {
    const ring = new TextDecoder().decode(await unseal(fromText((element('p').textContent ?? '').trim()), { words }));
    if (ringOf(ring) === undefined) throw new Damaged('no ring');
    await enter(ring);
  } catch (error) {
    if (!(error instanceof WrongWords || error instanceof Damaged)) throw error;
    say(error instanceof WrongWords ? 'wrong' : 'damaged');
  }
}

element('lock').addEventListener('submit', (event) => {
  event.preventDefault();
  const words = (element('words') as HTMLInputElement).value.trim();
  if (words !== '') void open(words);
});
if (navigator.serviceWorker === undefined) say('no-worker');
else {
  const kept = sessionStorage.getItem(KEPT_AS);
  if (kept !== null && ringOf(kept) !== undefined) void enter(kept);
  else say('closed');
}
