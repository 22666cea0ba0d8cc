import { mkdir, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type GivenDesk, givenDesk, keptTexts, SIDE_1, twoPhotographs } from './given-desk.ts';

let desk: GivenDesk;
let cookie: string;
const own = () => `127.0.0.1:${desk.serving.port}`;

beforeAll(async () => {
  desk = await givenDesk();
  const reply = await raw(new URL(desk.serving.address).pathname, { cookie: '' });
  cookie = /^set-cookie: ([^;]+)/im.exec(reply)?.[1] ?? '';
});
afterAll(async () => {
  await desk.serving.close();
  await rm(desk.folder, { recursive: true });
});

interface Sent {
  readonly method?: string;
  readonly host?: string;
  readonly origin?: string | undefined;
  readonly cookie?: string;
  readonly more?: readonly string[];
  readonly body?: string | Uint8Array;
}

/** One request, byte for byte as given: a browser or `fetch` would tidy it first. */
async function raw(target: string, sent: Sent = {}): Promise<string> {
  const { method = 'GET', host = own(), body = '' } = sent;
  const origin = 'origin' in sent ? sent.origin : `http://${own()}`;
  const bytes = Buffer.from(body);
  const lines = [
    `${method} ${target} HTTP/1.1`,
    `Host: ${host}`,
    'Connection: close',
    ...(origin === undefined ? [] : [`Origin: ${origin}`]),
    `Cookie: ${sent.cookie ?? cookie}`,
    ...(sent.more ?? (method === 'POST' ? ['X-Desk: 1', `Content-Length: ${bytes.length}`] : [])),
    '',
    '',
  ];
  const socket = connect(desk.serving.port, '127.0.0.1');
  socket.on('error', () => undefined);
  socket.write(Buffer.concat([Buffer.from(lines.join('\r\n'), 'latin1'), bytes]));
  let text = '';
  try {
    for await (const chunk of socket) text += String(chunk);
  } catch {
    // The desk hung up on what it refused; what it said before counts.
  }
  return text;
}
const statusOf = (reply: string) => Number(reply.slice(9, 12));
const post = (path: string, value: unknown, sent: Sent = {}) =>
  raw(path, { method: 'POST', body: JSON.stringify(value), ...sent });
const bodyOf = (reply: string) => JSON.parse(reply.slice(reply.indexOf('{'), reply.lastIndexOf('}') + 1));
const opened = async (id = 'low-water-1') => bodyOf(await raw(`/api/entry?kind=reels&id=${id}`));

describe('who is answered', () => {
  test('a browser that came in by the address is let in, and its secret can’t be read by scripts', async () => {
    const reply = await raw(new URL(desk.serving.address).pathname, { cookie: '' });
    expect(statusOf(reply)).toBe(303);
    expect(reply).toMatch(/HttpOnly; SameSite=Strict/);
    expect(statusOf(await raw('/'))).toBe(200);
    expect(statusOf(await raw('/api/entries'))).toBe(200);
  });
  test.each(['/', '/api/entries', '/api/entry?kind=reels&id=low-water-1'])(
    '%s without the secret is refused',
    async (path) => {
      for (const other of [
        '',
        'desk-1=x',
        `desk-${desk.serving.port}=`,
        `desk-${desk.serving.port}=${'A'.repeat(32)}`,
      ]) {
        const reply = await raw(path, { cookie: other });
        expect(statusOf(reply)).toBe(403);
        expect(reply).not.toContain('Low Water');
      }
    },
  );
  test('another secret in the address opens nothing', async () => {
    const reply = await raw(`/enter/${'A'.repeat(32)}`, { cookie: '' });
    expect(statusOf(reply)).toBe(403);
    expect(reply).not.toMatch(/set-cookie/i);
  });
  test.each(['rebound.example', '127.0.0.1', '127.0.0.1:1', '0.0.0.0', '192.168.1.9', 'localhost.rebound.example'])(
    'the name %s is refused, with the secret too',
    async (host) => {
      for (const path of ['/', '/api/entries', new URL(desk.serving.address).pathname]) {
        expect(statusOf(await raw(path, { host }))).toBe(421);
      }
    },
  );
  test.each([undefined, 'null', 'http://rebound.example', 'https://127.0.0.1', 'http://127.0.0.1:1'])(
    'a change from the origin %s is refused',
    async (origin) => {
      const reply = await post('/api/new', { kind: 'reels', id: 'forged', title: 'Forged' }, { origin });
      expect(statusOf(reply)).toBe(403);
      expect(await readdir(join(desk.root, 'reels'))).not.toContain('forged');
    },
  );
  test('a form of another site, which can’t send the desk’s header, is refused', async () => {
    const body = JSON.stringify({ kind: 'reels', id: 'forged', title: 'Forged' });
    expect(statusOf(await raw('/api/new', { method: 'POST', body, more: [`Content-Length: ${body.length}`] }))).toBe(
      403,
    );
  });
  test.each(['look', 'save', 'new', 'photograph', 'log', 'rename', 'delete', 'restore', 'bring-back'])(
    '%s is refused without the secret, and from another site',
    async (what) => {
      const given = { kind: 'reels', id: 'low-water-1', to: 'forged', title: 'A', hash: 'x', changes: [] };
      const path = `/api/${what}?kind=reels&id=low-water-1&name=a.jpg`;
      expect(statusOf(await post(path, given, { cookie: '' }))).toBe(403);
      expect(statusOf(await post(path, given, { origin: 'http://rebound.example' }))).toBe(403);
      expect(statusOf(await post(path, given, { host: 'rebound.example' }))).toBe(421);
      expect(statusOf(await post(path.replace('reels', '..'), { ...given, kind: '..' }))).toBeGreaterThanOrEqual(400);
      expect(await desk.textOf('reels/low-water-1.md')).toBe(SIDE_1);
    },
  );
  test('no other address of this computer answers', async () => {
    const others = Object.values(networkInterfaces()).flatMap((found) => found ?? []);
    const hosts = ['127.0.0.2', ...others.filter((one) => one.address !== '127.0.0.1').map(({ address }) => address)];
    for (const host of hosts) {
      const reached = await new Promise((resolve) => {
        const socket = connect({ port: desk.serving.port, host, timeout: 3000 });
        socket.on('connect', () => resolve(true));
        for (const end of ['error', 'timeout']) socket.on(end, () => resolve(false));
        socket.on('close', () => socket.destroy());
      });
      expect(reached, host).toBe(false);
    }
  });
  test('what another site makes the browser ask is refused', async () => {
    expect(statusOf(await raw('/api/entries', { more: ['Sec-Fetch-Site: cross-site'] }))).toBe(403);
    expect(statusOf(await raw('/api/entries', { more: ['Sec-Fetch-Site: same-site'] }))).toBe(403);
  });
  test('every answer has a strict policy, and none may be framed or kept', async () => {
    for (const path of ['/', '/desk.js', '/api/entries', '/nothing']) {
      const reply = await raw(path);
      expect(reply).toMatch(/content-security-policy: default-src 'none'; script-src 'self';/i);
      expect(reply).not.toMatch(/unsafe/);
      expect(reply).toMatch(/cache-control: no-store/i);
    }
  });
});

describe('what is never reached', () => {
  test.each([
    '../secret.txt',
    '..%2fsecret.txt',
    'low-water-1/../../../secret',
    '/etc/passwd',
    '',
    '.before',
    'a'.repeat(300),
  ])('no id leads out: %s', async (id) => {
    for (const path of [`/api/entry?kind=reels&id=${encodeURIComponent(id)}`, `/api/entry?kind=reels&id=${id}`]) {
      const reply = await raw(path.replaceAll(' ', '%20'));
      expect(statusOf(reply)).toBeGreaterThanOrEqual(400);
      expect(reply).not.toContain('SECRET');
    }
    expect(statusOf(await post('/api/new', { kind: 'reels', id, title: 'A' }))).toBe(400);
  });
  test.each(['..', '.before', 'collection', '', '__proto__', 'reels/..'])('no kind leads out: %s', async (kind) => {
    expect(statusOf(await post('/api/new', { kind, id: 'a', title: 'A' }))).toBe(400);
  });
  test.each(['../secret.txt', '../../secret.txt', '..\\secret.txt', '%2e%2e/secret.txt', 'low-water-1.md'])(
    'no photograph’s name leads out: %s',
    async (name) => {
      const reply = await raw(`/api/photograph?kind=reels&id=low-water-1&name=${encodeURIComponent(name)}`);
      expect(statusOf(reply)).toBe(404);
      expect(reply).not.toContain('SECRET');
    },
  );
  test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/index.html/../../secret.txt', 'http://rebound.example/', '*'])(
    '%s gives no file',
    async (path) => {
      expect(await raw(path)).not.toContain('SECRET');
    },
  );
  test('a folder that is a link out of the collection is not written through', async () => {
    const out = join(desk.folder, 'outside');
    await mkdir(out);
    await symlink(out, join(desk.root, 'stocks'));
    const reply = await post('/api/new', { kind: 'stocks', id: 'norda', title: 'Norda' });
    expect(statusOf(reply)).toBe(409);
    expect(await readdir(out)).toEqual([]);
    await rm(join(desk.root, 'stocks'));
    await symlink(out, join(desk.root, 'places'));
    expect(statusOf(await post('/api/new', { kind: 'places', id: 'loft', title: 'Loft' }))).toBe(409);
    expect(await readdir(out)).toEqual([]);
    await rm(join(desk.root, 'places'));
  });
});

describe('what is too large or makes no sense', () => {
  test('a body that says it is over the limit is refused before it is read', async () => {
    const more = ['X-Desk: 1', 'Content-Length: 3000000'];
    expect(statusOf(await raw('/api/save', { method: 'POST', more, body: 'x' }))).toBe(413);
  });
  test('a body that doesn’t say so is refused when it gets there', async () => {
    const chunk = 'x'.repeat(0x100000);
    const body = `${`100000\r\n${chunk}\r\n`.repeat(3)}0\r\n\r\n`;
    const reply = await raw('/api/look', { method: 'POST', more: ['X-Desk: 1', 'Transfer-Encoding: chunked'], body });
    expect(reply === '' || statusOf(reply) === 413).toBe(true);
    expect(statusOf(await raw('/api/entries'))).toBe(200);
  });
  test.each([
    ['no JSON', '{'],
    ['a list', '[]'],
    ['no changes', '{"kind":"reels","id":"low-water-1","hash":"x"}'],
    ['a number for a fact', '{"kind":"reels","id":"low-water-1","hash":"x","changes":[{"path":["title"],"to":1}]}'],
    ['a path that is a text', '{"kind":"reels","id":"low-water-1","hash":"x","changes":[{"path":"title","to":"A"}]}'],
    [
      'a key with a trick',
      '{"kind":"reels","id":"low-water-1","hash":"x","changes":[{"path":["__proto__"],"to":"A"}]}',
    ],
  ])('%s is refused', async (_, body) => {
    expect(statusOf(await raw('/api/save', { method: 'POST', body }))).toBe(400);
    expect(await desk.textOf('reels/low-water-1.md')).toBe(SIDE_1);
  });
});

describe('files that are sent', () => {
  const send = (what: string, name: string, body: string | Uint8Array) =>
    raw(`/api/${what}&name=${encodeURIComponent(name)}`, { method: 'POST', body });
  const photograph = (name: string, body: string | Uint8Array) =>
    send('photograph?kind=reels&id=low-water-2', name, body);
  const log = (name: string, body: string | Uint8Array) => send('log?kind=places&id=spare-room', name, body);
  const everything = async () => (await readdir(desk.root, { recursive: true })).sort();
  /** A PNG of which every side is as long as one says, and that holds next to nothing. */
  const vastPicture = () => {
    const chunk = (name: string, data: Buffer) => {
      const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
      const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
      length.writeUInt32BE(data.length);
      sum.writeUInt32BE(crc32(named));
      return Buffer.concat([length, named, sum]);
    };
    const head = Buffer.from([0, 0, 0xea, 0x60, 0, 0, 0xea, 0x60, 8, 0, 0, 0, 0]);
    const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const data = chunk('IDAT', deflateSync(Buffer.alloc(100)));
    return Buffer.concat([start, chunk('IHDR', head), data, chunk('IEND', Buffer.alloc(0))]);
  };
  const page = '<html><script>alert(1)</script></html>';

  test.each([
    ['a drawing', 'a.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'isn’t a JPEG'],
    ['a page', 'a.jpg', page, 'isn’t a JPEG'],
    ['nothing', 'a.jpg', '', 'is empty'],
    [
      'a page that begins as a JPEG',
      'a.jpg',
      Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.from(page)]),
      'damaged',
    ],
    ['a small file of vast size', 'a.png', vastPicture(), '60000 × 60000 pixels'],
    ['a phone’s HEIC', 'a.jpg', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), 'HEIC'],
  ])('%s is no photograph, and says so', async (_, name, body, says) => {
    const before = await everything();
    const reply = await photograph(name, body);
    expect(statusOf(reply)).toBe(415);
    expect(reply).toContain(says);
    expect(await everything()).toEqual(before);
  });
  test('a file over the limit is refused before it is read', async () => {
    for (const what of [
      'photograph?kind=reels&id=low-water-2&name=a.jpg',
      'log?kind=places&id=spare-room&name=a.csv',
    ]) {
      const more = ['X-Desk: 1', `Content-Length: ${300 * 1024 * 1024}`];
      const reply = await raw(`/api/${what}`, { method: 'POST', more, body: 'x' });
      expect(statusOf(reply)).toBe(413);
      expect(reply).toContain('200 MB');
    }
  });
  test('a photograph with a page behind it is served as a photograph and nothing else', async () => {
    const [path = ''] = await twoPhotographs(desk.folder);
    const both = Buffer.concat([await readFile(path), Buffer.from(page)]);
    const { file } = bodyOf(await photograph('evil.html', both));
    expect(file).toBe('low-water-2/evil.jpg');
    const reply = await raw(`/api/photograph?kind=reels&id=low-water-2&name=${encodeURIComponent(file)}`);
    expect(reply).toMatch(/content-type: image\/jpeg/i);
    expect(reply).toMatch(/x-content-type-options: nosniff/i);
    expect(await desk.textOf('reels/low-water-2.md')).toContain('side 2');
  });
  test.each([
    ['that leads up', '..', 'photograph.jpg'],
    ['of a hidden file', '.htaccess', 'photograph-2.jpg'],
    ['of a device', 'CON.jpg', 'con-file.jpg'],
    ['with a zero in it', 'a\0.jpg', 'a.jpg'],
    ['that looks like an option', '-rf.jpg', 'rf.jpg'],
    ['of 400 letters', `${'b'.repeat(400)}.jpg`, `${'b'.repeat(100)}.jpg`],
    ['with ways in it', '../c/d\\e.jpg', 'c-d-e.jpg'],
    ['that is read from the right', '\u202egpj.exe', 'gpj.jpg'],
  ])('a name %s becomes a plain one in the reel’s own folder', async (_, name, plain) => {
    const [path = ''] = await twoPhotographs(desk.folder);
    expect(bodyOf(await photograph(name, await readFile(path))).file).toBe(`low-water-2/${plain}`);
  });
  test('a climate log lies beside its place, and what its heading doesn’t say is proposed', async () => {
    await post('/api/new', { kind: 'places', id: 'spare-room', title: 'Spare room' });
    const clear = 'time,temperature_C,humidity_percent\n2026-01-01T00:00,18,45\n';
    expect(bodyOf(await log('Logger 1.CSV', clear))).toMatchObject({ file: 'logger-1.csv' });
    expect(await desk.textOf('places/spare-room/logger-1.csv')).toBe(clear);
    const unclear = 'Serial 4471\nstamp_UTC+2;T_air;RH;dew\n2026-01-01 00:00;18,0;45,0;9\n';
    expect(bodyOf(await log('../../x.csv', unclear))).toEqual({
      file: 'x.csv',
      header: ['stamp_UTC+2', 'T_air', 'RH', 'dew'],
      columns: { time: 'stamp_UTC+2', temperature_C: 'T_air', humidity_percent: 'RH' },
      zone: '+02:00',
    });
  });
  test.each([
    ['a page', page],
    ['a workbook', Buffer.from('PK\x03\x04\0\0,\n,', 'latin1')],
    ['a photograph', Buffer.from([0xff, 0xd8, 0xff, 0, 44, 10, 44])],
    ['a line of text', 'only one line, with a comma'],
    ['nothing', ''],
  ])('%s is no climate log', async (_, body) => {
    await post('/api/new', { kind: 'places', id: 'spare-room', title: 'Spare room' });
    const before = await everything();
    const reply = await log('log.csv', body);
    expect(statusOf(reply)).toBe(415);
    expect(reply).toContain('CSV');
    expect(await everything()).toEqual(before);
  });
});

describe('what is written', () => {
  test('looking writes nothing, and names the reading that would agree', async () => {
    const { hash } = await opened('low-water-2');
    const before = await desk.textOf('reels/low-water-2.md');
    const changes = [{ path: ['numbers', 'matrix'], to: ['HLX 2201-B'] }];
    const reply = bodyOf(await post('/api/look', { kind: 'reels', id: 'low-water-2', hash, changes }));
    const differ = reply.problems.find((problem: { code: string }) => problem.code === 'number/sides-differ');
    expect(differ?.expected).toContain('HLX 2207-B');
    expect(reply.lines).toEqual(['− numbers: { matrix: [HLX 2207-B] }', '+ numbers: { matrix: [HLX 2201-B] }']);
    expect(await desk.textOf('reels/low-water-2.md')).toBe(before);
  });
  test('one change changes one line, and the entry before is kept', async () => {
    const { hash } = await opened();
    const changes = [{ path: ['length'], to: '18:53' }];
    expect(bodyOf(await post('/api/save', { kind: 'reels', id: 'low-water-1', hash, changes })).is).toBe('saved');
    expect(await desk.textOf('reels/low-water-1.md')).toBe(SIDE_1.replace('18:52', '18:53'));
    expect(await keptTexts(desk, 'reels/low-water-1')).toEqual([SIDE_1]);
    await writeFile(join(desk.root, 'reels', 'low-water-1.md'), SIDE_1);
  });
  test('the later of two windows is told, shown both, and writes nothing', async () => {
    const first = await opened();
    const second = await opened();
    const wish = (hash: string, to: string) => ({
      kind: 'reels',
      id: 'low-water-1',
      hash,
      changes: [{ path: ['set'], to }],
    });
    expect(statusOf(await post('/api/save', wish(first.hash, 'first')))).toBe(200);
    const reply = await post('/api/save', wish(second.hash, 'second'));
    expect(statusOf(reply)).toBe(409);
    expect(bodyOf(reply)).toMatchObject({
      is: 'changed',
      theirs: expect.stringContaining('set: first'),
      yours: expect.stringContaining('second'),
    });
    expect(await desk.textOf('reels/low-water-1.md')).toContain('set: first');
    await writeFile(join(desk.root, 'reels', 'low-water-1.md'), SIDE_1);
  });
  test('of two saves at the very same time one is told', async () => {
    const { hash } = await opened();
    const saves = ['one', 'two', 'three'].map((to) =>
      post('/api/save', { kind: 'reels', id: 'low-water-1', hash, changes: [{ path: ['set'], to }] }),
    );
    expect((await Promise.all(saves)).map(statusOf).sort()).toEqual([200, 409, 409]);
    await writeFile(join(desk.root, 'reels', 'low-water-1.md'), SIDE_1);
  });
  test('a photograph is kept byte for byte, under a safe name, and never over another', async () => {
    await post('/api/new', { kind: 'reels', id: 'white-box', title: 'White box' });
    const [path = ''] = await twoPhotographs(desk.folder);
    const bytes = await readFile(path);
    const names = [];
    for (const name of ['Böx Front.JPG', 'box front.png', '../../evil.jpg']) {
      const target = `/api/photograph?kind=reels&id=white-box&name=${encodeURIComponent(name)}`;
      names.push(bodyOf(await raw(target, { method: 'POST', body: bytes })).file);
    }
    expect(names).toEqual(['box-front.jpg', 'box-front-2.jpg', 'evil.jpg']);
    expect(await readFile(join(desk.root, 'reels', 'white-box', 'box-front.jpg'))).toEqual(bytes);
    expect((await readdir(desk.folder)).filter((name) => /evil/.test(name))).toEqual([]);
  });
  test('an id that is taken is refused, and its entry stays', async () => {
    expect(statusOf(await post('/api/new', { kind: 'reels', id: 'low-water-2', title: 'Other' }))).toBe(409);
    expect(await desk.textOf('reels/low-water-2.md')).toContain('Low Water, side 2');
  });
});

describe('with --lan', () => {
  const enter = async (address: string, code: string) =>
    await fetch(address, { method: 'POST', body: new URLSearchParams({ code }), redirect: 'manual' });
  test('a phone comes in by the code, once, and not without it', async () => {
    const room = await givenDesk({ lan: true });
    const address = `http://127.0.0.1:${room.serving.port}/enter`;
    try {
      expect(await (await fetch(address)).text()).toContain('six figures');
      expect((await fetch(`http://127.0.0.1:${room.serving.port}/api/entries`)).status).toBe(403);
      expect((await enter(address, 'nothing')).status).toBe(403);
      const code = room.serving.room?.code ?? '';
      const reply = await enter(address, code);
      expect(reply.status).toBe(303);
      const [pass] = (reply.headers.get('set-cookie') ?? '').split(';');
      const asked = await fetch(`http://127.0.0.1:${room.serving.port}/api/entries`, {
        headers: { cookie: pass ?? '' },
      });
      expect(asked.status).toBe(200);
      expect((await enter(address, code)).status).toBe(403);
    } finally {
      await room.serving.close();
      await rm(room.folder, { recursive: true });
    }
  });
  test('without it there is no page that asks for a code', async () => {
    expect(statusOf(await raw('/enter', { cookie: '' }))).toBe(403);
    expect(desk.serving.room).toBeUndefined();
  });
});
