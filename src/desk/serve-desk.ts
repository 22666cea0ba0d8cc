import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { networkInterfaces } from 'node:os';
import { isCode } from '#publish/atomic.ts';
import { CannotEdit } from '#read/entry-edit.ts';
import { type Answer, answerApi } from './api.ts';
import { bodyOf } from './asked.ts';
import { Desk, type DeskOptions } from './desk.ts';
import { Gate } from './gate.ts';
import type { PageFiles } from './page-files.ts';
import { DeskRefusal } from './refusal.ts';

const LOOPBACK = '127.0.0.1';
const FIRST_PORT = 4400;
const PORTS_TRIED = 50;

export interface ServeDeskOptions extends DeskOptions {
  readonly page: PageFiles;
  readonly port?: number;
  /** Answer to other devices in the room too, to one that has the code. */
  readonly lan?: boolean;
}

export interface DeskServing {
  /** With the secret in it: for this computer's owner only. */
  readonly address: string;
  readonly port: number;
  /** For a phone: where it asks for the code, and the code. */
  readonly room: { readonly addresses: readonly string[]; readonly code: string } | undefined;
  close(): Promise<void>;
}

/** Serves the desk on the loopback address. */
export async function serveDesk(options: ServeDeskOptions): Promise<DeskServing> {
  const lan = options.lan === true;
  const desk = new Desk(options);
  const around: { gate?: Gate } = {};
  const server = createServer((request, response) => {
    const { gate } = around;
    if (gate === undefined) {
      response.destroy();
      return;
    }
    answer(request, response, { gate, desk, options }).catch((error: unknown) => fail(response, error));
  });
  server.headersTimeout = 10_000;
  server.requestTimeout = 300_000;
  const port = await listenOn(server, options.port, lan ? '0.0.0.0' : LOOPBACK);
  const others = lan ? addressesHere() : [];
  const gate = new Gate([LOOPBACK, 'localhost', ...others], port, lan, options.now ?? Date.now);
  around.gate = gate;
  const room =
    gate.code === undefined
      ? undefined
      : { addresses: others.map((host) => `http://${host}:${port}/enter`), code: gate.code };
  return {
    address: `http://${LOOPBACK}:${port}/enter/${gate.secret}`,
    port,
    room,
    close: async () => {
      const closed = new Promise((resolve) => server.close(resolve));
      server.closeAllConnections();
      await closed;
    },
  };
}

interface Around {
  readonly gate: Gate;
  readonly desk: Desk;
  readonly options: ServeDeskOptions;
}

async function answer(request: IncomingMessage, response: ServerResponse, around: Around): Promise<void> {
  const { gate, options } = around;
  const strange = gate.refuseName(request);
  if (strange !== undefined) return say(response, strange.status, strange.sentence);
  const url = new URL(request.url?.startsWith('/') ? `http://desk${request.url}` : 'http://desk/nothing');
  if (url.pathname === '/enter' || url.pathname.startsWith('/enter/')) return await enter(request, response, url, gate);
  if (url.pathname.startsWith('/api/')) return await api(request, response, url, around);
  if (request.method !== 'GET') return say(response, 405, 'Only reading is answered here.');
  const name = url.pathname === '/' ? 'index.html' : url.pathname.slice(1);
  // Type and styles hold nothing of the owner's, and the page that asks for the code needs them.
  if (name === 'index.html' && !gate.knows(request))
    return say(response, 403, 'Open the desk by the address that it printed.');
  const file = options.page.get(name);
  if (file === undefined) return say(response, 404, 'There is no such page here.');
  response.writeHead(200, headers(file.type));
  response.end(file.bytes);
}

async function api(request: IncomingMessage, response: ServerResponse, url: URL, { gate, desk }: Around) {
  const refused = gate.refuseStranger(request);
  if (refused !== undefined) return say(response, refused.status, refused.sentence);
  const answered: Answer = await answerApi(request, url, desk);
  if ('bytes' in answered) {
    response.writeHead(200, headers(answered.type));
    response.end(answered.bytes);
  } else json(response, answered.json, answered.status);
}

/** By the secret in the address, or by the code: the browser is remembered, and the secret leaves its address bar. */
async function enter(request: IncomingMessage, response: ServerResponse, url: URL, gate: Gate): Promise<void> {
  const letIn = () => {
    response.writeHead(303, { ...headers('text/plain; charset=utf-8'), Location: '/', 'Set-Cookie': gate.cookie() });
    response.end();
  };
  const secret = url.pathname.slice('/enter/'.length);
  if (request.method === 'GET' && secret !== '') {
    return gate.opensBy(secret)
      ? letIn()
      : say(response, 403, 'This address is of another time. Look at the terminal.');
  }
  if (gate.code === undefined) return say(response, 403, 'Open the desk by the address that it printed.');
  if (request.method === 'POST') {
    const given = new URLSearchParams((await bodyOf(request, 1000)).toString('utf8')).get('code') ?? '';
    if (gate.opensByCode(given.trim())) return letIn();
    return say(response, 403, 'That is not the code, or it has been used. Start the desk again for a new one.');
  }
  response.writeHead(200, headers('text/html; charset=utf-8'));
  response.end(CODE_PAGE);
}

const CODE_PAGE = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>The desk</title><link rel="stylesheet" href="/desk.css"></head>
<body><main class="sheet"><h1>The desk</h1><form method="post" action="/enter"><p><label for="code" class="cap">The six figures that the terminal shows</label><br>
<input id="code" name="code" inputmode="numeric" autocomplete="one-time-code" maxlength="6" class="entry" required></p><button class="btn">Open</button></form></main></body></html>`;

async function listenOn(server: Server, wanted: number | undefined, host: string): Promise<number> {
  const last = wanted ?? FIRST_PORT + PORTS_TRIED - 1;
  for (let port = wanted ?? FIRST_PORT; port <= last; port += 1) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, host, () => {
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
  throw new DeskRefusal(409, `No port from ${wanted ?? FIRST_PORT} to ${last} is free. Choose one with --port.`);
}

const addressesHere = () =>
  Object.values(networkInterfaces())
    .flatMap((found) => found ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);

const POLICY = [
  ["default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' blob:", "font-src 'self'"],
  ["connect-src 'self'", "form-action 'self'", "base-uri 'none'", "frame-ancestors 'none'"],
]
  .flat()
  .join('; ');

const headers = (type: string) => ({
  'Content-Type': type,
  'Content-Security-Policy': POLICY,
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
});

function json(response: ServerResponse, value: unknown, status = 200): void {
  response.writeHead(status, headers('application/json; charset=utf-8'));
  response.end(JSON.stringify(value));
}

function say(response: ServerResponse, status: number, sentence: string): void {
  // What wasn't read of a refused request is not waited for.
  response.writeHead(status, { ...headers('text/plain; charset=utf-8'), Connection: 'close' });
  response.end(`${sentence}\n`);
}

function fail(response: ServerResponse, error: unknown): void {
  if (response.headersSent) response.destroy();
  else if (error instanceof DeskRefusal) say(response, error.status, error.message);
  else if (error instanceof CannotEdit) say(response, 422, error.message);
  else say(response, 500, `The desk met a fault of its own: ${String(error)}`);
}
