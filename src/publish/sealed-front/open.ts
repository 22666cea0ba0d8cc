// The one script inside a sealed dossier. It asks nothing of any network.
import { Damaged, fromText, type Opener, unseal, WrongWords } from '../sealed.ts';
import { picturesApart } from './pictures-apart.ts';
import { askFirst, showDossier } from './show.ts';

const element = <E extends HTMLElement>(id: string): E => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`fault: no ${id}`);
  return found as E;
};

/** The states of the front: its sentences are in the page, and all but one are hidden. */
type State = 'closed' | 'working' | 'wrong' | 'damaged' | 'not-sealed' | 'no-key' | 'old-browser';

function say(state: State): void {
  for (const one of document.querySelectorAll<HTMLElement>('[data-state]')) one.hidden = one.dataset['state'] !== state;
  document.body.dataset['now'] = state;
}

const BINARY = 'age-encryption.org/';
const END = '-----END AGE ENCRYPTED FILE-----';
let sealed: Uint8Array | undefined;

async function checked(text: string, sum: string): Promise<Uint8Array> {
  const bytes = fromText(text.trim());
  // Where the page isn't trusted with cryptography (http:), the format's own check has to do.
  if (crypto.subtle === undefined) return bytes;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>));
  const found = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  if (found !== sum) throw new Damaged('its checksum differs');
  return bytes;
}

async function open(by: Opener): Promise<void> {
  if (sealed === undefined) return;
  say('working');
  // Lets the sentence be drawn first: what follows keeps the processor busy.
  await new Promise((resolve) => setTimeout(resolve, 30));
  try {
    const bytes = await unseal(sealed, by);
    sealed = undefined;
    const page = picturesApart(bytes);
    if (await askFirst(page)) showDossier(page);
  } catch (error) {
    if (!(error instanceof WrongWords || error instanceof Damaged)) throw error;
    say(error instanceof WrongWords ? ('key' in by ? 'no-key' : 'wrong') : 'damaged');
    element<HTMLInputElement>('words').focus();
  }
}

/** The key of a link: taken out of the address, so that it stays in no history and on no screen. */
function keyOfLink(): string | undefined {
  const found = /AGE-SECRET-KEY-1[0-9A-Z]+/i.exec(location.hash)?.[0];
  if (location.hash !== '') history.replaceState(null, '', location.pathname + location.search);
  return found?.toUpperCase();
}

/** The sealed text in a file of its own or in a dossier. */
function textIn(bytes: Uint8Array): string {
  const text = new TextDecoder('latin1').decode(bytes);
  const [start, end] = [text.indexOf('-----BEGIN AGE ENCRYPTED FILE-----'), text.indexOf(END)];
  if (start < 0 || end < start) throw new Damaged('not a sealed file');
  return text.slice(start, end + END.length);
}

async function chosen(file: File): Promise<void> {
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const starts = new TextDecoder('latin1').decode(bytes.subarray(0, BINARY.length));
    sealed = starts === BINARY ? bytes : fromText(textIn(bytes));
    element('chosen').textContent = `${file.name}, ${Math.ceil(file.size / 1000)} kB`;
    say('closed');
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    sealed = undefined;
    say('not-sealed');
  }
}

async function start(): Promise<void> {
  const key = keyOfLink();
  const form = element<HTMLFormElement>('lock');
  const words = element<HTMLInputElement>('words');
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const given = words.value.trim();
    if (given === '') return;
    const asKey = /AGE-SECRET-KEY-1[0-9A-Z]+/i.exec(given)?.[0];
    void open(asKey === undefined ? { words: given } : { key: asKey.toUpperCase() });
  });
  const file = element<HTMLInputElement>('file');
  file.addEventListener('change', () => {
    const [first] = file.files ?? [];
    if (first !== undefined) void chosen(first);
  });
  window.addEventListener('hashchange', () => {
    const later = keyOfLink();
    if (later !== undefined) void open({ key: later });
  });
  const payload = element('p');
  try {
    sealed = await checked(payload.textContent ?? '', payload.dataset['sha256'] ?? '');
    // It is held once as it is; its text isn't needed any more.
    payload.textContent = '';
    say('closed');
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    say('damaged');
    return;
  }
  if (key !== undefined) await open({ key });
}

void start();
