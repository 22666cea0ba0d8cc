import type { EntryKind } from '#model/words.ts';
import type { Change } from '#read/entry-edit.ts';
import type { Checked, Listed, Opened, Saved } from '../desk.ts';
import type { AwayShown, DeletingShown, RenamingShown } from '../entry-moves.ts';
import type { DeskKind } from '../fields/kinds.ts';
import type { AddedLog } from '../files-beside.ts';
import type { KeptVersion } from '../kept-before.ts';

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
const at = (kind: DeskKind, id: string) => `kind=${kind}&id=${encodeURIComponent(id)}`;

export interface PageWish {
  readonly kind: DeskKind;
  readonly id: string;
  readonly hash: string;
  readonly changes: readonly Change[];
  readonly body?: string;
}

/** JSON has no undefined: a value that goes is null. */
const sent = (wish: PageWish) => ({ ...wish, changes: wish.changes.map(({ path, to }) => ({ path, to: to ?? null })) });

export interface Looked extends Checked {
  readonly lines: readonly string[];
}

export const entries = async () => (await ask('/api/entries')) as readonly Listed[];
export const open = async (kind: DeskKind, id: string) => (await ask(`/api/entry?${at(kind, id)}`)) as Opened;
export const look = async (wish: PageWish) => (await post('/api/look', sent(wish))) as Looked;
export const save = async (wish: PageWish) => (await post('/api/save', sent(wish), [409])) as Saved;
export const create = async (kind: EntryKind, id: string, title: string) =>
  (await post('/api/new', { kind, id, title })) as Opened;

const sendFile = (what: string, kind: DeskKind, id: string, file: File) =>
  ask(`/api/${what}?${at(kind, id)}&name=${encodeURIComponent(file.name)}`, { method: 'POST', body: file });
export const addPhotograph = async (kind: DeskKind, id: string, file: File) =>
  (await sendFile('photograph', kind, id, file)) as { file: string };
export const addLog = async (id: string, file: File) => (await sendFile('log', 'places', id, file)) as AddedLog;
export const photographUrl = (kind: DeskKind, id: string, name: string) =>
  `/api/photograph?${at(kind, id)}&name=${encodeURIComponent(name)}`;

export const versions = async (kind: DeskKind, id: string) =>
  (await ask(`/api/before?${at(kind, id)}`)) as readonly KeptVersion[];
export const versionLines = async (kind: DeskKind, id: string, version: string) =>
  (await ask(`/api/before/lines?${at(kind, id)}&version=${version}`)) as readonly string[];
export const restore = (kind: DeskKind, id: string, version: string, hash: string) =>
  post('/api/restore', { kind, id, version, hash });
export const showRenaming = async (kind: EntryKind, id: string, to: string) =>
  (await ask(`/api/rename?${at(kind, id)}&to=${encodeURIComponent(to)}`)) as RenamingShown;
export const rename = (kind: EntryKind, id: string, to: string, hash: string) =>
  post('/api/rename', { kind, id, to, hash });
export const showDeleting = async (kind: EntryKind, id: string) =>
  (await ask(`/api/delete?${at(kind, id)}`)) as DeletingShown;
export const remove = (kind: EntryKind, id: string, hash: string) => post('/api/delete', { kind, id, hash });
export const away = async () => (await ask('/api/away')) as readonly AwayShown[];
export const bringBack = (kind: EntryKind, id: string) => post('/api/bring-back', { kind, id });
