import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { byText } from '#model/diagnostic.ts';
import { isCode } from '../atomic.ts';

/** What a bag says of itself in bag-info.txt, beside its size. */
export interface BagInfo {
  readonly title: string;
  /** `YYYY-MM-DD`. */
  readonly date: string;
  readonly about: string;
}

const ALGORITHM = 'sha512';

/** Makes a bag of the files in `data/` of a folder: tag files and manifests with a SHA-512 of each.
 * Source: RFC 8493, sections 2.1 and 2.2.
 *
 * @param bag  holds `data/` already, and plain files in it. */
export async function sealBag(bag: string, info: BagInfo): Promise<void> {
  const payload = await filesBelow(bag, 'data');
  const manifest: string[] = [];
  let octets = 0;
  for (const path of payload) {
    const { sum, length } = await checksum(join(bag, path));
    manifest.push(`${sum}  ${encodedPath(path)}\n`);
    octets += length;
  }
  const tags: readonly (readonly [string, string])[] = [
    ['bagit.txt', 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n'],
    [`manifest-${ALGORITHM}.txt`, manifest.join('')],
    [
      'bag-info.txt',
      `External-Description: ${oneLine(info.about)}\nExternal-Identifier: ${oneLine(info.title)}\nBagging-Date: ${info.date}\nPayload-Oxum: ${octets}.${payload.length}\n`,
    ],
  ];
  for (const [name, text] of tags) await writeFile(join(bag, name), text);
  const others = (await filesBelow(bag, '')).filter(
    (path) => !path.startsWith('data/') && !path.startsWith('tagmanifest-'),
  );
  const tagManifest: string[] = [];
  for (const path of others) tagManifest.push(`${(await checksum(join(bag, path))).sum}  ${encodedPath(path)}\n`);
  await writeFile(join(bag, `tagmanifest-${ALGORITHM}.txt`), tagManifest.join(''));
}

const oneLine = (text: string) => text.replace(/\s+/gu, ' ').trim();

/** RFC 8493, 2.1.3: line feed, carriage return and the percent sign. */
export const encodedPath = (path: string): string =>
  path.replaceAll('%', '%25').replaceAll('\n', '%0A').replaceAll('\r', '%0D');

export const decodedPath = (path: string): string =>
  path.replaceAll(/%0A/giu, '\n').replaceAll(/%0D/giu, '\r').replaceAll('%25', '%');

/** Plain files below a folder, with `/`, sorted; links aren't followed and aren't files. */
export async function filesBelow(root: string, folder: string): Promise<readonly string[]> {
  const found: string[] = [];
  for (const one of await readdir(join(root, folder), { withFileTypes: true })) {
    const path = folder === '' ? one.name : `${folder}/${one.name}`;
    if (one.isDirectory()) found.push(...(await filesBelow(root, path)));
    else if (one.isFile()) found.push(path);
  }
  return found.sort(byText);
}

/** In hexadecimal, and how many octets there were. */
export async function checksum(
  file: string,
  algorithm = ALGORITHM,
): Promise<{ readonly sum: string; readonly length: number }> {
  const hash = createHash(algorithm);
  let length = 0;
  for await (const chunk of createReadStream(file) as AsyncIterable<Buffer>) {
    hash.update(chunk);
    length += chunk.length;
  }
  return { sum: hash.digest('hex'), length };
}

/** That a file went away while it was being copied. */
export class Vanished extends Error {}

/** Copies files into a bag's payload; hidden ones (an editor's, version control's) stay behind.
 * @returns how many.
 * @throws {Vanished} when one that was listed is gone: a bag without it wouldn't be the whole. */
export async function copyTree(from: string, to: string): Promise<number> {
  const files = (await filesBelow(from, '')).filter((path) => !path.split('/').some((part) => part.startsWith('.')));
  for (const path of files) {
    await mkdir(dirname(join(to, path)), { recursive: true });
    const copy = pipeline(createReadStream(join(from, path)), createWriteStream(join(to, path), { flags: 'wx' }));
    await copy.catch((error: unknown) => {
      if (!isCode(error, 'ENOENT')) throw error;
      throw new Vanished(
        `${path} was there when the folder was listed, and gone when it was to be copied. Run this again when nothing else is at work there.`,
      );
    });
  }
  return files.length;
}
