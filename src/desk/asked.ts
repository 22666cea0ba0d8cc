import type { IncomingMessage } from 'node:http';
import { isId } from '#model/entry-id.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import type { Change } from '#read/entry-edit.ts';
import type { Written, WrittenPath } from '#read/written-value.ts';
import type { Wish } from './desk.ts';
import type { DeskKind } from './fields/kinds.ts';
import { DeskRefusal } from './refusal.ts';

/** A photograph or a climate log is at most 200 MB, what a page says of an entry at most 2 MB. */
export const MOST_FILE_BYTES = 200 * 1024 * 1024;
const MOST_WISH_BYTES = 2 * 1024 * 1024;
const DEEPEST = 8;

/** A request's body, never more of it than `most`.
 *
 * @throws {DeskRefusal} when it is longer. */
export async function bodyOf(request: IncomingMessage, most: number): Promise<Buffer> {
  const said = Number(request.headers['content-length'] ?? 0);
  const tooMuch = new DeskRefusal(413, `This is over the limit of ${Math.round(most / 1024 / 1024)} MB.`);
  if (said > most) throw tooMuch;
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request) {
    size += (chunk as Buffer).length;
    if (size > most) throw tooMuch;
    chunks.push(chunk as Buffer);
  }
  return Buffer.concat(chunks);
}

/** @throws {DeskRefusal} when it isn't JSON of facts. */
export async function jsonOf(request: IncomingMessage): Promise<Readonly<Record<string, unknown>>> {
  const bytes = await bodyOf(request, MOST_WISH_BYTES);
  try {
    const value: unknown = JSON.parse(bytes.toString('utf8'));
    if (isRecord(value)) return value;
  } catch {
    // Answered below.
  }
  throw new DeskRefusal(400, 'This is no JSON that the desk understands.');
}

export function kindOf(given: unknown): EntryKind {
  const kind = ENTRY_KINDS.find((one) => one === given);
  if (kind === undefined) throw new DeskRefusal(400, 'There is no such kind of entry.');
  return kind;
}

/** An entry's kind and id; what the collection says of itself has none. */
export function whichOf(kind: unknown, id: unknown): readonly [kind: DeskKind, id: string] {
  return kind === 'collection' ? ['collection', ''] : [kindOf(kind), idOf(id)];
}

export function idOf(given: unknown): string {
  if (typeof given === 'string' && isId(given)) return given;
  throw new DeskRefusal(400, 'This can’t be an id: lower-case letters, digits and hyphens.');
}

export function textOf(given: unknown, most = 500): string {
  if (typeof given === 'string' && given.trim() !== '' && given.length <= most) return given;
  throw new DeskRefusal(400, 'A text is missing, or far too long.');
}

export function wishOf(given: Readonly<Record<string, unknown>>): Wish {
  const { changes, body } = given;
  const [kind, id] = whichOf(given['kind'], given['id']);
  if (!Array.isArray(changes) || changes.length > 500 || !(body === undefined || typeof body === 'string'))
    throw new DeskRefusal(400, 'The changes aren’t in the form that the desk reads.');
  return {
    kind,
    id,
    hash: textOf(given['hash']),
    changes: changes.map(changeOf),
    ...(body === undefined ? {} : { body }),
  };
}

function changeOf(given: unknown): Change {
  const change = isRecord(given) ? given : {};
  const path = change['path'];
  if (!Array.isArray(path) || path.length === 0 || path.length > DEEPEST || !path.every(isStep))
    throw new DeskRefusal(400, 'A change doesn’t say of what it is.');
  return { path: path as WrittenPath, to: change['to'] === null ? undefined : writtenFrom(change['to'], 0) };
}

const isStep = (step: unknown) =>
  typeof step === 'string'
    ? step !== '' && step !== '__proto__'
    : Number.isInteger(step) && Number(step) >= 0 && Number(step) < 5000;

function writtenFrom(given: unknown, depth: number): Written {
  if (typeof given === 'string') return given;
  if (depth > DEEPEST) throw new DeskRefusal(400, 'A fact is nested too deeply.');
  if (Array.isArray(given)) return given.map((item) => writtenFrom(item, depth + 1));
  if (!isRecord(given)) throw new DeskRefusal(400, 'A fact is a text, or a list or map of texts.');
  const map: Record<string, Written> = Object.create(null);
  for (const [key, value] of Object.entries(given)) map[key] = writtenFrom(value, depth + 1);
  return map;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
