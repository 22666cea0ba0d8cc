import { createHash } from 'node:crypto';
import { lstat, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { isCode, writeWhole } from './atomic.ts';

/** A sealed file that was written to be fetched from a host, as a collection remembers it. */
interface HostedFile {
  readonly share: string;
  /** Absolute. */
  readonly file: string;
  /** Of its bytes as they were written. */
  readonly sha256: string;
}

/** What became of a file that was to be taken away. */
export interface TakenAway {
  readonly file: string;
  readonly why: string;
  /** False: what stands there now isn't the file that was sealed, so it stays. */
  readonly gone: boolean;
}

/** That the list of hosted files is there and can't be read. */
export class HostedUnread extends Error {}

/** Beside the entries and no entry itself: hidden, so that nothing reads it as one. */
const LIST = '.hosted.json';

/** Remembers a sealed file. One that stood at the same place before is forgotten.
 *
 * @throws {HostedUnread} when the list is there and can't be read; it is left as it is. */
export async function rememberHosted(collection: string, share: string, file: string, bytes: string): Promise<void> {
  const others = (await listOf(collection)).filter((one) => one.file !== file);
  await writeList(collection, [...others, { share, file, sha256: sha256(bytes) }]);
}

/** Takes away each hosted file whose share is over, if it still is, byte for byte, the one that was written there.
 *
 * @param over  why a share's files are to go; undefined while they stay.
 * @throws {HostedUnread} when the list is there and can't be read. */
export async function takeAwayHosted(
  collection: string,
  over: (share: string) => string | undefined,
): Promise<readonly TakenAway[]> {
  const list = await listOf(collection);
  const kept: HostedFile[] = [];
  const taken: TakenAway[] = [];
  for (const one of list) {
    const why = over(one.share);
    const state = why === undefined ? 'stays' : await stateOf(one);
    // One that is nowhere may stand on a disk that isn't there today.
    if (why === undefined || state === 'nowhere') {
      kept.push(one);
      continue;
    }
    if (state === 'ours') await rm(one.file);
    taken.push({ file: one.file, why, gone: state === 'ours' });
  }
  if (taken.length > 0) await writeList(collection, kept);
  return taken;
}

const sha256 = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');

/** A list that came with somebody else's collection must not be able to name any other file of this disk. */
const SEALED = /<title>Sealed dossier<\/title>[\s\S]*^-----BEGIN AGE ENCRYPTED FILE-----$/m;

async function stateOf({ file, sha256: written }: HostedFile): Promise<'ours' | 'other' | 'nowhere'> {
  try {
    if (!(await lstat(file)).isFile()) return 'other';
    const bytes = await readFile(file);
    return sha256(bytes) === written && SEALED.test(bytes.toString('latin1')) ? 'ours' : 'other';
  } catch (error) {
    if (isCode(error, 'ENOENT') || isCode(error, 'ENOTDIR')) return 'nowhere';
    throw error;
  }
}

async function listOf(collection: string): Promise<readonly HostedFile[]> {
  const text = await readFile(join(collection, LIST), 'utf8').catch((error: unknown) => {
    if (isCode(error, 'ENOENT')) return undefined;
    throw error;
  });
  if (text === undefined) return [];
  try {
    const { files } = JSON.parse(text) as { files?: unknown };
    if (Array.isArray(files) && files.every(isHosted)) return files;
  } catch {
    // Said below, as for a list of another shape.
  }
  throw new HostedUnread(`${join(collection, LIST)} isn’t the list of hosted files that it was.`);
}

const isHosted = (one: unknown): one is HostedFile =>
  typeof one === 'object' &&
  one !== null &&
  (['share', 'file', 'sha256'] as const).every((key) => typeof (one as Record<string, unknown>)[key] === 'string');

const writeList = (collection: string, files: readonly HostedFile[]) =>
  writeWhole(join(collection, LIST), `${JSON.stringify({ files }, null, 1)}\n`);
