import type { IncomingMessage } from 'node:http';
import { bodyOf, idOf, jsonOf, kindOf, MOST_FILE_BYTES, textOf, whichOf, wishOf } from './asked.ts';
import type { Desk } from './desk.ts';
import { whenOf } from './kept-before.ts';
import { DeskRefusal } from './refusal.ts';

/** What the page gets: data, or a photograph. */
export type Answer =
  | { readonly json: unknown; readonly status?: number }
  | { readonly type: string; readonly bytes: Uint8Array };

type Given = Readonly<Record<string, unknown>>;

/** What the desk's own page asks for, once it is known to be that.
 *
 * @throws {DeskRefusal} when it can't be had. */
export async function answerApi(request: IncomingMessage, url: URL, desk: Desk): Promise<Answer> {
  const asked = (key: string) => url.searchParams.get(key) ?? undefined;
  const entry = () => [kindOf(asked('kind')), idOf(asked('id'))] as const;
  const which = () => whichOf(asked('kind'), asked('id'));
  switch (`${request.method} ${url.pathname}`) {
    case 'GET /api/entries':
      return { json: desk.entries() };
    case 'GET /api/entry':
      return { json: await desk.open(...which()) };
    case 'GET /api/photograph':
      return await desk.photograph(...entry(), textOf(asked('name')));
    case 'GET /api/before':
      return { json: await desk.moves.versions(...which()) };
    case 'GET /api/before/lines':
      return { json: await desk.moves.showVersion(...which(), versionOf(asked('version'))) };
    case 'GET /api/away':
      return { json: await desk.moves.away() };
    case 'GET /api/rename':
      return { json: await desk.moves.showRenaming(...entry(), idOf(asked('to'))) };
    case 'GET /api/delete':
      return { json: await desk.moves.showDeleting(...entry()) };
    case 'POST /api/photograph': {
      const name = textOf(asked('name'));
      return { json: { file: await desk.addPhotograph(...entry(), name, await bodyOf(request, MOST_FILE_BYTES)) } };
    }
    case 'POST /api/log': {
      const [id, name] = [idOf(asked('id')), textOf(asked('name'))];
      return { json: await desk.addLog(id, name, await bodyOf(request, MOST_FILE_BYTES)) };
    }
    default:
      if (request.method === 'POST') return await change(url.pathname, () => jsonOf(request), desk);
      throw new DeskRefusal(404, 'The desk does no such thing.');
  }
}

async function change(path: string, body: () => Promise<Given>, desk: Desk): Promise<Answer> {
  const entry = (given: Given) => [kindOf(given['kind']), idOf(given['id'])] as const;
  const done = { json: { done: true } };
  switch (path) {
    case '/api/look':
      return { json: await desk.look(wishOf(await body())) };
    case '/api/save': {
      const saved = await desk.save(wishOf(await body()));
      return { json: saved, status: saved.is === 'saved' ? 200 : 409 };
    }
    case '/api/new': {
      const given = await body();
      return { json: await desk.create(...entry(given), textOf(given['title'])) };
    }
    case '/api/rename': {
      const given = await body();
      await desk.moves.rename(...entry(given), idOf(given['to']), textOf(given['hash']));
      return done;
    }
    case '/api/delete': {
      const given = await body();
      await desk.moves.delete(...entry(given), textOf(given['hash']));
      return done;
    }
    case '/api/restore': {
      const given = await body();
      const which = whichOf(given['kind'], given['id']);
      await desk.moves.restore(...which, versionOf(given['version']), textOf(given['hash']));
      return done;
    }
    case '/api/bring-back':
      await desk.moves.bringBack(...entry(await body()));
      return done;
    default:
      throw new DeskRefusal(404, 'The desk does no such thing.');
  }
}

/** The name of a kept version, which is the time when it was kept and nothing else. */
function versionOf(given: unknown): string {
  const version = textOf(given, 40);
  if (whenOf(version) === undefined) throw new DeskRefusal(400, 'There is no version of that name.');
  return version;
}
