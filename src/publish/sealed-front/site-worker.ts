// Between a sealed site and its pages: decrypts each file as it is asked for, in this browser. A page's address never
// leaves it: the host is asked for sealed files only, by their own names.
import { unseal } from '../sealed.ts';
import { ASK, type FileList, KEEPER, OPENING, type Ring, ringOf } from './ring.ts';

/** The parts of a service worker's world that are used here; the DOM's types leave them out. */
interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: {
    matchAll(options: object): Promise<readonly { postMessage(message: unknown, ports: MessagePort[]): void }[]>;
    claim(): Promise<void>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: string, listener: (event: WorkerEvent) => void): void;
}
interface WorkerEvent {
  readonly request: Request;
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
  waitUntil(work: Promise<unknown>): void;
  respondWith(answer: Promise<Response>): void;
}
declare const KEEPER_SCRIPT: string;
const worker = globalThis as unknown as WorkerScope;
const SCOPE = new URL(worker.registration.scope);

let opened: { readonly ring: Ring; readonly list: FileList } | undefined;

async function openWith(ring: Ring): Promise<void> {
  const list = JSON.parse(new TextDecoder().decode(await plain(ring.list, ring))) as FileList;
  opened = { ring, list };
}

async function plain(name: string, ring: Ring): Promise<Uint8Array> {
  const answer = await fetch(new URL(name, SCOPE));
  if (!answer.ok) throw new Error(`the host has no ${name}`);
  return await unseal(new Uint8Array(await answer.arrayBuffer()), { key: ring.key });
}

const WAIT_MS = 1500;

/** Asks the open pages for the ring. */
async function askPages(): Promise<void> {
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const answers = pages.map((page) => {
    const { port1, port2 } = new MessageChannel();
    const answer = new Promise<string | undefined>((resolve) => {
      port1.onmessage = (event) => resolve(typeof event.data === 'string' ? event.data : undefined);
      setTimeout(() => resolve(undefined), WAIT_MS);
    });
    page.postMessage(ASK, [port2]);
    return answer;
  });
  for (const answer of answers) {
    const ring = ringOf((await answer) ?? '');
    if (ring !== undefined) return await openWith(ring);
  }
}

async function answer(request: Request): Promise<Response> {
  const path = decodeURIComponent(new URL(request.url).pathname.slice(SCOPE.pathname.length));
  if (OPENING.includes(path)) return await fetch(request);
  if (opened === undefined) await askPages();
  if (opened === undefined) {
    // The opening page asks for the words, and then comes back to this very address.
    return request.mode === 'navigate'
      ? await fetch(new URL('index.html', SCOPE))
      : new Response('sealed', { status: 503 });
  }
  const { ring, list } = opened;
  if (path === KEEPER) return new Response(KEEPER_SCRIPT, { headers: { 'content-type': 'text/javascript' } });
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  const found = list[file];
  if (found === undefined && list[`${path}/index.html`] !== undefined)
    return Response.redirect(`${new URL(`${path}/`, SCOPE)}`);
  if (found === undefined)
    return new Response('There is no such page.', { status: 404, headers: { 'content-type': 'text/plain' } });
  const [name, type] = found;
  const bytes = await plain(name, ring);
  const headers = { 'content-type': type, 'cache-control': 'no-store' };
  if (!type.startsWith('text/html')) return new Response(bytes.slice(), { headers });
  const keeper = `<script src="${SCOPE.pathname}${KEEPER}"></script></head>`;
  return new Response(
    new TextDecoder().decode(bytes).replace('</head>', () => keeper),
    { headers },
  );
}

worker.addEventListener('install', (event) => event.waitUntil(worker.skipWaiting()));
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('message', (event) => {
  const ring = ringOf(typeof event.data === 'string' ? event.data : '');
  if (ring === undefined) return;
  const done = openWith(ring).then(
    () => 'open',
    (error: unknown) => String(error),
  );
  event.waitUntil(done.then((said) => event.ports[0]?.postMessage(said)));
});
worker.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (url.origin !== SCOPE.origin || !url.pathname.startsWith(SCOPE.pathname)) return;
  event.respondWith(answer(event.request));
});
