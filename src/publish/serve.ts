import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { HEADER_POLICY } from '#render/policy.ts';
import { isCode } from './atomic.ts';
import { contentType } from './content-type.ts';
import { LIVE_EVENTS, LIVE_SCRIPT, LIVE_SCRIPT_TEXT, OpenPages, withLiveScript } from './live-reload.ts';
import { type Asked, siteFile } from './site-file.ts';

const LOOPBACK = '127.0.0.1';
const FIRST_PORT = 4321;
const PORTS_TRIED = 100;

export interface ServeOptions {
  /** The site's folder or the link to it; absolute. */
  readonly root: string;
  /** Exactly this port; without it the first free one from 4321 on. */
  readonly port?: number;
  /** Where the site stands on its host, such as `/sub/`. */
  readonly base?: string;
  /** Tell open pages when the site changed. */
  readonly live?: boolean;
  /** What is newer than the site's files. */
  readonly fresh?: Fresh;
}

/** What a site has become since its files were written. Addresses are from the site's root, decoded. */
export interface Fresh {
  /** Whether an address is one that a page could have, which is then made anew. */
  isPage(address: string): boolean;
  /** The page, or undefined where there is none any more. */
  page(address: string): Promise<string | undefined>;
  /** Looked into before the site's own files. */
  folders(): readonly string[];
}

export interface Serving {
  /** `http://127.0.0.1:4321/`, with the base. */
  readonly address: string;
  readonly port: number;
  /** Makes every open page read itself anew; does nothing without `live`. */
  changed(): void;
  close(): Promise<void>;
}

/** That the port asked for is taken. */
export class PortTaken extends Error {}

/** Serves a finished site on the loopback address, to this machine only.
 *
 * @throws {PortTaken} when the port asked for, or every port tried, is taken. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const pages = new OpenPages();
  const server = createServer((request, response) => {
    answer(request, response, options, pages).catch((error: unknown) => {
      if (!response.headersSent) response.writeHead(500, headers('text/plain; charset=utf-8'));
      response.end(`The server can’t read its own files: ${String(error)}\n`);
    });
  });
  // A browser that sends its headers slowly holds nothing up for long.
  server.headersTimeout = 10_000;
  const port = await listenOn(server, options.port);
  return {
    address: `http://${LOOPBACK}:${port}${options.base ?? '/'}`,
    port,
    changed: () => pages.changed(),
    close: async () => {
      pages.end();
      const closed = new Promise((resolve) => server.close(resolve));
      server.closeAllConnections();
      await closed;
    },
  };
}

async function listenOn(server: Server, wanted: number | undefined): Promise<number> {
  const last = wanted ?? FIRST_PORT + PORTS_TRIED - 1;
  for (let port = wanted ?? FIRST_PORT; port <= last; port += 1) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, LOOPBACK, () => {
          server.off('error', reject);
          resolve();
        });
      });
      const at = server.address();
      return typeof at === 'object' && at !== null ? at.port : port;
    } catch (error) {
      if (!isCode(error, 'EADDRINUSE') && !isCode(error, 'EACCES')) throw error;
    }
  }
  throw new PortTaken(
    wanted === undefined
      ? `No port from ${FIRST_PORT} to ${last} is free. Choose one with --port.`
      : `Port ${wanted} is taken, or may not be used. Choose another with --port, or leave --port out.`,
  );
}

async function answer(request: IncomingMessage, response: ServerResponse, options: ServeOptions, pages: OpenPages) {
  const refused = refusal(request);
  if (refused !== undefined) return say(response, ...refused);
  const address = (request.url ?? '').split(/[?#]/, 1)[0] ?? '';
  if (options.live === true && address === LIVE_EVENTS) {
    response.writeHead(200, { ...headers('text/event-stream'), 'Cache-Control': 'no-store' });
    return pages.add(response);
  }
  if (options.live === true && address === LIVE_SCRIPT) {
    response.writeHead(200, headers('text/javascript; charset=utf-8'));
    response.end(LIVE_SCRIPT_TEXT);
    return;
  }
  // Of before the page is made: a change meanwhile makes the browser ask once more, and never keeps it from asking.
  const live = options.live === true ? pages.state : undefined;
  const base = options.base ?? '/';
  if (`${address}/` === base) return move(response, base);
  const inside = address.startsWith(base) ? `/${address.slice(base.length)}` : undefined;
  const fresh = inside === undefined ? undefined : await freshPage(inside, options);
  if (fresh?.html !== undefined) return sendPage(request, response, fresh, live);
  const asked = inside === undefined || fresh !== undefined ? NOTHING : await newestFile(inside, options);
  if (asked.is === 'file') return await send(request, response, asked, 200, live);
  if (asked.is === 'moved') return move(response, base.slice(0, -1) + asked.to);
  const page = await siteFile(options.root, '/404.html');
  if (page.is === 'file') return await send(request, response, page, 404, live);
  say(response, 404, 'There is no such page here.');
}

const NOTHING: Asked = { is: 'nothing' };

interface FreshPage {
  readonly address: string;
  readonly html: string | undefined;
}

/** Undefined where the address isn't that of a page that may have changed. */
async function freshPage(inside: string, { fresh }: ServeOptions): Promise<FreshPage | undefined> {
  let address: string;
  try {
    address = decodeURIComponent(inside);
  } catch {
    return undefined;
  }
  return fresh?.isPage(address) === true ? { address, html: await fresh.page(address) } : undefined;
}

async function newestFile(inside: string, { root, fresh }: ServeOptions): Promise<Asked> {
  for (const folder of fresh?.folders() ?? []) {
    const asked = await siteFile(folder, inside);
    if (asked.is === 'file') return asked;
  }
  return await siteFile(root, inside);
}

function sendPage(
  request: IncomingMessage,
  response: ServerResponse,
  { address, html = '' }: FreshPage,
  live: string | undefined,
): void {
  const isPage = address.endsWith('/');
  const body = Buffer.from(isPage && live !== undefined ? withLiveScript(html, live) : html);
  const own = {
    ...headers(isPage ? 'text/html; charset=utf-8' : contentType(address)),
    'Cache-Control': 'no-store',
    'Content-Length': body.length,
  };
  response.writeHead(200, own);
  response.end(request.method === 'HEAD' ? undefined : body);
}

/** A page of another site that resolves its own name to this machine still sends that name: it is refused, as is
 * anything but reading. */
function refusal(request: IncomingMessage): [number, string] | undefined {
  if (request.method !== 'GET' && request.method !== 'HEAD') return [405, 'Only reading is answered here.'];
  const hosts = request.headersDistinct.host ?? [];
  const port = request.socket.localPort;
  const own = [LOOPBACK, 'localhost', '[::1]'].map((name) => (port === 80 ? name : `${name}:${port}`));
  if (hosts.length === 1 && own.includes(hosts[0]?.toLowerCase() ?? '')) return undefined;
  return [421, `This server answers to http://${LOOPBACK}:${port}/ and to no other name.`];
}

async function send(
  request: IncomingMessage,
  response: ServerResponse,
  asked: Extract<Asked, { is: 'file' }>,
  status: number,
  live: string | undefined,
): Promise<void> {
  try {
    const page = live !== undefined && asked.path.endsWith('.html');
    // A page holds the state in which it was sent, and one of another state isn't the same.
    const state = page ? `-${live}` : '';
    const tag = `"${asked.size.toString(36)}-${Math.round(asked.changed).toString(36)}${state}"`;
    const own = { ...headers(contentType(asked.path)), ETag: tag, 'Cache-Control': caching(asked.path) };
    if (status === 200 && request.headers['if-none-match'] === tag) {
      response.writeHead(304, own);
      response.end();
      return;
    }
    const bytes = await asked.file.readFile();
    const body = page ? Buffer.from(withLiveScript(bytes.toString('utf8'), live)) : bytes;
    response.writeHead(status, { ...own, 'Content-Length': body.length });
    response.end(request.method === 'HEAD' ? undefined : body);
  } finally {
    await asked.file.close();
  }
}

/** A name that is made from the content may be kept for good; anything else is asked for again each time. */
const caching = (path: string) =>
  /[\\/]photographs[\\/][0-9a-f]{20}[./\\]|[\\/]_astro[\\/][^\\/]+$/.test(path)
    ? 'private, max-age=31536000, immutable'
    : 'no-cache';

const headers = (type: string) => ({
  'Content-Type': type,
  'Content-Security-Policy': HEADER_POLICY,
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
});

function say(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, headers('text/plain; charset=utf-8'));
  response.end(`${sentence}\n`);
}

function move(response: ServerResponse, to: string): void {
  response.writeHead(308, { ...headers('text/plain; charset=utf-8'), Location: to });
  response.end();
}
