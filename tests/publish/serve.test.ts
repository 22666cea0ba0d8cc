import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PortTaken, type Serving, serve } from '#publish/serve.ts';

let folder: string;
let serving: Serving;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'serve-'));
  const site = join(folder, 'site');
  await mkdir(join(site, 'reels', 'low-water'), { recursive: true });
  await mkdir(join(site, 'photographs'), { recursive: true });
  await mkdir(join(site, 'empty'));
  await writeFile(join(folder, 'secret.txt'), 'SECRET');
  await writeFile(join(folder, 'site-secret.txt'), 'SECRET');
  await writeFile(join(site, 'index.html'), '<html><body><p>Home</p></body></html>');
  await writeFile(join(site, '404.html'), '<html><body><p>Nothing of that name</p></body></html>');
  await writeFile(join(site, 'reels', 'low-water', 'index.html'), '<html><body>Low Water</body></html>');
  await writeFile(join(site, '.hidden'), 'SECRET');
  await writeFile(join(site, 'photographs', '0123456789abcdef0123.webp'), 'picture');
  await symlink(join(folder, 'secret.txt'), join(site, 'link.txt'));
  await symlink(folder, join(site, 'up'));
  serving = await serve({ root: site, port: 0, live: true });
});

afterAll(async () => {
  await serving.close();
  await rm(folder, { recursive: true });
});

/** One request, byte for byte as given: a browser or `fetch` would tidy the address first. */
async function raw(target: string, host = `127.0.0.1:${serving.port}`, method = 'GET'): Promise<string> {
  return await rawLines([`${method} ${target} HTTP/1.1`, `Host: ${host}`, 'Connection: close', '', '']);
}

async function rawLines(lines: readonly string[]): Promise<string> {
  const socket = connect(serving.port, '127.0.0.1');
  socket.write(lines.join('\r\n'), 'latin1');
  let text = '';
  for await (const chunk of socket) text += String(chunk);
  return text;
}

const statusOf = (reply: string) => Number(reply.slice(9, 12));

describe('which names it answers to', () => {
  test.each(['127.0.0.1', 'localhost', 'LOCALHOST', '[::1]'])('%s with its port is its own', async (name) => {
    expect(statusOf(await raw('/', `${name}:${serving.port}`))).toBe(200);
  });
  test.each(['rebound.example', 'localhost.rebound.example', '127.0.0.1.nip.example', '192.168.1.9', '0.0.0.0'])(
    '%s is refused, and gets no page',
    async (name) => {
      const reply = await raw('/', `${name}:${serving.port}`);
      expect(statusOf(reply)).toBe(421);
      expect(reply).not.toContain('Home');
    },
  );
  test('its own name with another port, or with none, is refused', async () => {
    expect(statusOf(await raw('/', '127.0.0.1:1'))).toBe(421);
    expect(statusOf(await raw('/', '127.0.0.1'))).toBe(421);
  });
  test('a request with no name, or with two, is refused', async () => {
    const own = `Host: 127.0.0.1:${serving.port}`;
    expect(statusOf(await rawLines(['GET / HTTP/1.1', 'Connection: close', '', '']))).toBeGreaterThanOrEqual(400);
    const two = await rawLines(['GET / HTTP/1.1', own, 'Host: rebound.example', 'Connection: close', '', '']);
    expect(statusOf(two)).toBeGreaterThanOrEqual(400);
    expect(two).not.toContain('Home');
  });
  test('an address with another name in it gets nothing', async () => {
    expect(await raw('http://rebound.example/')).not.toContain('Home');
  });
  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('%s is refused', async (method) => {
    expect(statusOf(await raw('/', undefined, method))).toBe(405);
  });
});

describe('what is never served', () => {
  test.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/%2E%2E%2Fsecret.txt',
    '/reels/%2e%2e/%2e%2e/secret.txt',
    '/reels/..%2f..%2fsecret.txt',
    '/..%5csecret.txt',
    '/%252e%252e/secret.txt',
    '/../site-secret.txt',
    '/%c0%ae%c0%ae/secret.txt',
    '//secret.txt',
    '/./../secret.txt',
    '/secret.txt%00.html',
    '/link.txt',
    '/up/secret.txt',
    '/up/',
    '/.hidden',
    '/%2ehidden',
    '/%',
    '*',
  ])('%s gives no file from outside the site', async (target) => {
    const reply = await raw(target);
    expect(statusOf(reply)).toBeGreaterThanOrEqual(400);
    expect(reply).not.toContain('SECRET');
  });
  test('a folder without a page of its own is not listed', async () => {
    const reply = await raw('/photographs/');
    expect(statusOf(reply)).toBe(404);
    expect(reply).not.toContain('0123456789');
    expect(statusOf(await raw('/empty/'))).toBe(404);
  });
  test('a folder without its slash leads to the folder on the same host, and nowhere else', async () => {
    const reply = await raw('/reels/low-water');
    expect(statusOf(reply)).toBe(308);
    expect(reply).toMatch(/^location: \/reels\/low-water\/\r$/im);
    expect(statusOf(await raw('//rebound.example/..'))).toBe(404);
    expect(statusOf(await raw('/%2f%2frebound.example'))).toBe(404);
  });
});

describe('what comes with a page', () => {
  test.each([
    ['content-security-policy', /default-src 'none'.*frame-ancestors 'none'/],
    ['x-content-type-options', /^nosniff$/],
    ['referrer-policy', /^no-referrer$/],
    ['cross-origin-resource-policy', /^same-origin$/],
    ['content-type', /^text\/html; charset=utf-8$/],
    ['cache-control', /^no-cache$/],
  ])('%s', async (name, value) => {
    for (const page of ['', 'reels/low-water/', 'nowhere/']) {
      expect((await fetch(serving.address + page)).headers.get(name)).toMatch(value);
    }
  });
  test('no header lets another site read it', async () => {
    expect((await fetch(serving.address)).headers.get('access-control-allow-origin')).toBeNull();
  });
  test('a picture named by its content may be kept, and an unchanged page isn’t sent twice', async () => {
    const picture = await fetch(`${serving.address}photographs/0123456789abcdef0123.webp`);
    expect(picture.headers.get('cache-control')).toContain('immutable');
    expect(picture.headers.get('content-type')).toBe('image/webp');
    const tag = (await fetch(serving.address)).headers.get('etag') ?? '';
    const again = await fetch(serving.address, { headers: { 'if-none-match': tag } });
    expect([again.status, await again.text()]).toEqual([304, '']);
  });
  test('the site’s own page says that there is nothing at an address', async () => {
    const reply = await fetch(`${serving.address}nowhere`);
    expect([reply.status, await reply.text()]).toEqual([404, expect.stringContaining('Nothing of that name')]);
  });
});

describe('open pages read themselves anew', () => {
  test('an event is sent when the site changed, and the script that waits for it comes from the server', async () => {
    const page = await (await fetch(serving.address)).text();
    const script = /<script src="([^"]+)" type="module"><\/script><\/body>/.exec(page)?.[1] ?? '';
    expect(await (await fetch(new URL(script, serving.address))).text()).toContain('location.reload()');
    const events = await fetch(`${serving.address}.live/events`);
    expect(events.headers.get('content-type')).toBe('text/event-stream');
    const reader = events.body?.pipeThrough(new TextDecoderStream()).getReader();
    expect((await reader?.read())?.value).toContain('event: ready');
    serving.changed();
    expect((await reader?.read())?.value).toContain('event: changed');
    await reader?.cancel();
  });
  test('a page that was sent before a change is told so on connecting, and one that was sent after it is not', async () => {
    const ownState = (page: string) => /reload\.js\?site=([^"]+)"/.exec(page)?.[1];
    const stateNow = async () => {
      const events = await fetch(`${serving.address}.live/events`);
      const reader = events.body?.pipeThrough(new TextDecoderStream()).getReader();
      const said = (await reader?.read())?.value ?? '';
      await reader?.cancel();
      return /event: ready\ndata: (.*)/.exec(said)?.[1];
    };
    const before = await fetch(serving.address);
    const sent = ownState(await before.text());
    expect(sent).toBe(await stateNow());
    serving.changed();
    expect(await stateNow()).not.toBe(sent);
    // A browser that kept the page mustn't be told that it is the same: it would read it anew for ever.
    const again = await fetch(serving.address, { headers: { 'if-none-match': before.headers.get('etag') ?? '' } });
    expect(again.status).toBe(200);
    expect(ownState(await again.text())).toBe(await stateNow());
  });
  test('without it a page is sent as it is on disk', async () => {
    const still = await serve({ root: join(folder, 'site'), port: 0 });
    expect(await (await fetch(still.address)).text()).toBe('<html><body><p>Home</p></body></html>');
    expect((await fetch(`${still.address}.live/events`)).status).toBe(404);
    await still.close();
  });
});

describe('where it listens', () => {
  test('a port that is taken is said, with what to do', async () => {
    const second = serve({ root: folder, port: serving.port });
    await expect(second).rejects.toThrow(PortTaken);
    await expect(second).rejects.toThrow(/Choose another with --port/);
  });
  test('with no port asked for, the next free one is taken', async () => {
    const [first, second] = [await serve({ root: folder }), await serve({ root: folder })];
    expect(second.port).toBeGreaterThan(first.port);
    await Promise.all([first.close(), second.close()]);
  });
  test('a site below the top of its host is found there only', async () => {
    const below = await serve({ root: join(folder, 'site'), port: 0, base: '/tapes/' });
    expect(await (await fetch(`${below.address}reels/low-water`)).text()).toContain('Low Water');
    expect((await fetch(below.address.slice(0, -1))).url).toBe(below.address);
    expect((await fetch(new URL('/reels/low-water/', below.address))).status).toBe(404);
    await below.close();
  });
});
