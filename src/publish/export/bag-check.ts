import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { byText } from '#model/diagnostic.ts';
import { checksum, decodedPath, filesBelow } from './bag.ts';

/** What is wrong with a bag. Complete: every file is there that should be, and no other. Valid: complete, and every
 * checksum agrees. Source: RFC 8493, section 3. */
export interface BagVerdict {
  readonly complete: boolean;
  readonly valid: boolean;
  /** Sentences, each with what to do. */
  readonly faults: readonly string[];
  readonly files: number;
}

const DECLARED = /^BagIt-Version: (\d+)\.(\d+)\nTag-File-Character-Encoding: (\S+)\n?$/u;
const ALGORITHMS = ['sha512', 'sha256', 'sha1', 'md5'];

/** Looks at every file of a bag, made by this program or by another. Whatever it finds, it changes nothing. */
export async function checkBag(bag: string): Promise<BagVerdict> {
  const missing: string[] = [];
  const wrong: string[] = [];
  const files = await filesBelow(bag, '').catch(() => undefined);
  if (files === undefined)
    return { complete: false, valid: false, faults: [`There is no folder ${bag} to look at.`], files: 0 };
  await lookAtDeclaration(bag, files, missing);
  const manifests = files.filter((path) => /^manifest-[a-z0-9]+\.txt$/u.test(path));
  if (manifests.length === 0) missing.push('There is no manifest of the payload (manifest-sha512.txt, for example).');
  const payload = files.filter((path) => path.startsWith('data/'));
  for (const manifest of manifests) {
    const listed = await readManifest(bag, manifest, missing);
    for (const path of payload)
      if (!listed.has(path))
        missing.push(`${path} isn’t in ${manifest}: it was added later, or the list is not whole.`);
    await compare(bag, manifest, listed, files, missing, wrong);
  }
  for (const manifest of files.filter((path) => /^tagmanifest-[a-z0-9]+\.txt$/u.test(path)))
    await compare(bag, manifest, await readManifest(bag, manifest, missing), files, missing, wrong);
  await lookAtOxum(bag, files, payload, wrong);
  return {
    complete: missing.length === 0,
    valid: missing.length === 0 && wrong.length === 0,
    faults: [...missing, ...wrong].sort(byText),
    files: payload.length,
  };
}

async function lookAtDeclaration(bag: string, files: readonly string[], missing: string[]): Promise<void> {
  const text = files.includes('bagit.txt')
    ? (await readFile(join(bag, 'bagit.txt'), 'utf8')).replaceAll('\r\n', '\n')
    : '';
  if (!DECLARED.test(text))
    missing.push(
      'bagit.txt isn’t there, or isn’t exactly the two lines BagIt-Version and Tag-File-Character-Encoding.',
    );
  if (!files.some((path) => path.startsWith('data/'))) missing.push('There is no payload in data/.');
  if (files.includes('fetch.txt'))
    missing.push('fetch.txt names files to be fetched from elsewhere; nothing is fetched here.');
}

async function readManifest(bag: string, name: string, missing: string[]): Promise<ReadonlyMap<string, string>> {
  const listed = new Map<string, string>();
  for (const line of (await readFile(join(bag, name), 'utf8')).split(/\r\n|\r|\n/u)) {
    if (line === '') continue;
    const [, sum = '', path = ''] = /^([0-9a-f]+)[ \t]+\*?(.+)$/iu.exec(line) ?? [];
    const decoded = decodedPath(path).replace(/^\.\//u, '');
    if (sum === '' || /(?:^|\/)\.\.(?:\/|$)|^[/~]/u.test(decoded))
      missing.push(`${name} has a line that names no file of the bag: "${line.slice(0, 80)}".`);
    else listed.set(decoded, sum.toLowerCase());
  }
  return listed;
}

async function compare(
  bag: string,
  manifest: string,
  listed: ReadonlyMap<string, string>,
  files: readonly string[],
  missing: string[],
  wrong: string[],
): Promise<void> {
  const algorithm = /-([a-z0-9]+)\.txt$/u.exec(manifest)?.[1] ?? '';
  if (!ALGORITHMS.includes(algorithm)) {
    wrong.push(`${manifest} uses ${algorithm}, which can’t be worked out here.`);
    return;
  }
  const there = new Set(files);
  for (const [path, sum] of listed) {
    if (!there.has(path))
      missing.push(`${path} is in ${manifest} and isn’t there. Take it from another copy of the bag.`);
    else if ((await checksum(join(bag, path), algorithm)).sum !== sum)
      wrong.push(`${path} isn’t what it was when the bag was made. Take it from another copy of the bag.`);
  }
}

async function lookAtOxum(
  bag: string,
  files: readonly string[],
  payload: readonly string[],
  wrong: string[],
): Promise<void> {
  const info = files.includes('bag-info.txt') ? await readFile(join(bag, 'bag-info.txt'), 'utf8') : '';
  const stated = /^Payload-Oxum: *(\d+\.\d+) *$/imu.exec(info)?.[1];
  if (stated === undefined) return;
  let octets = 0;
  for (const path of payload) octets += (await checksum(join(bag, path))).length;
  const found = `${octets}.${payload.length}`;
  if (found !== stated) wrong.push(`bag-info.txt says ${stated} (octets.files), and there is ${found}.`);
}
