import type { Diagnostic } from '#model/diagnostic.ts';
import type { EntryKind } from '#model/words.ts';
import type { Change } from '#read/entry-edit.ts';
import type { Listed, Opened, Saved } from '../desk.ts';

/** That the desk refused; its sentence is for the owner. */
export class Refusal extends Error {}

async function ask(path: string, init: RequestInit = {}, accepted: readonly number[] = []): Promise<unknown> {
  const headers = { 'X-Desk': '1', ...(init.headers as Record<string, string> | undefined) };
  let reply: Response;
  try {
    reply = await fetch(path, { ...init, headers });
  } catch {
    throw new Refusal(
      'The desk doesn’t answer. Is it still running in the terminal? Nothing that you typed is lost here.',
    );
  }
  if (reply.ok || accepted.includes(reply.status)) {
    if ((reply.headers.get('Content-Type') ?? '').startsWith('application/json')) return await reply.json();
  }
  throw new Refusal((await reply.text()).trim());
}

const post = (path: string, value: unknown, accepted: readonly number[] = []) =>
  ask(path, { method: 'POST', body: JSON.stringify(value) }, accepted);
const at = (kind: EntryKind, id: string) => `kind=${kind}&id=${encodeURIComponent(id)}`;

export interface PageWish {
  readonly kind: EntryKind;
  readonly id: string;
  readonly hash: string;
  readonly changes: readonly Change[];
  readonly body?: string;
}

/** JSON has no undefined: a value that goes is null. */
const sent = (wish: PageWish) => ({ ...wish, changes: wish.changes.map(({ path, to }) => ({ path, to: to ?? null })) });

export interface Looked {
  readonly problems: readonly Diagnostic[];
  readonly gone: readonly string[];
  readonly come: readonly string[];
}

export const entries = async () => (await ask('/api/entries')) as readonly Listed[];
export const open = async (kind: EntryKind, id: string) => (await ask(`/api/entry?${at(kind, id)}`)) as Opened;
export const look = async (wish: PageWish) => (await post('/api/look', sent(wish))) as Looked;
export const save = async (wish: PageWish) => (await post('/api/save', sent(wish), [409])) as Saved;
export const create = async (kind: EntryKind, id: string, title: string) =>
  (await post('/api/new', { kind, id, title })) as Opened;
export const addPhotograph = async (kind: EntryKind, id: string, file: File) =>
  (await ask(`/api/photograph?${at(kind, id)}&name=${encodeURIComponent(file.name)}`, {
    method: 'POST',
    body: file,
  })) as {
    file: string;
  };
export const photographUrl = (kind: EntryKind, id: string, name: string) =>
  `/api/photograph?${at(kind, id)}&name=${encodeURIComponent(name)}`;
