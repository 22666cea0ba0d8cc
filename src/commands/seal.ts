import { readFile } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import type { OwnShare } from '#model/dossier.ts';
import { valueOf } from '#model/fact.ts';
import { writeWhole } from '#publish/atomic.ts';
import { makeDossierPage } from '#publish/dossier.ts';
import { frontPage } from '#publish/front-page.ts';
import { Damaged, freshKey, fromText, type Opener, seal as sealed, unseal, WrongWords } from '#publish/sealed.ts';
import { commandLine } from './arguments.ts';
import { refuseInsideSite, rememberAsHosted } from './hosted.ts';
import { DONE, type Io, PROBLEMS, UsageError } from './io.ts';
import { type Loaded, loadCatalogue } from './load.ts';
import { wordsToOpen, wordsToSeal } from './passphrase.ts';
import { plain } from './problem-list.ts';
import { sealSite } from './seal-site.ts';
import { planText } from './seal-text.ts';
import { fingerprintOf, shareDossier, whyUncertain } from './share-dossier.ts';

const OPTIONS = {
  out: { type: 'string' },
  base: { type: 'string' },
  'dry-run': { type: 'boolean' },
  'passphrase-file': { type: 'string' },
  open: { type: 'string' },
  site: { type: 'boolean' },
  cache: { type: 'string' },
} as const;

/** Seals a share's dossier into one file, says what would go along, opens a sealed file, or seals the whole site. */
export async function seal(args: readonly string[], io: Io): Promise<number> {
  const { shared, values, positionals } = commandLine(args, io, OPTIONS);
  if (values.open !== undefined) return await openFile(values.open, values.out, values['passphrase-file'], io);
  if (values.site === true) {
    if (values.out === undefined) throw new UsageError('Say where the sealed site is to go: --out DIR.');
    const words = () => wordsToSeal(values['passphrase-file'], io, []);
    return await sealSite(
      { ...shared, out: resolve(io.cwd, values.out), base: values.base, cache: values.cache },
      words,
      io,
    );
  }
  const [id] = positionals;
  if (id === undefined || positionals.length > 1)
    throw new UsageError('Name one share, as in npm run seal -- the-share --out dossier.html.');
  const loaded = await loadCatalogue(shared, io, values.cache);
  const own = ownShare(loaded, id);
  if (values['dry-run'] === true) {
    io.out(shared.json ? `${JSON.stringify(own.plan, null, 2)}\n` : planText(own.plan));
    return DONE;
  }
  const share = loaded.catalogue.entries.shares.find((one) => one.id === id);
  const refusal = whyNot(own) ?? (share && whyUncertain(loaded.catalogue, share));
  if (refusal !== undefined) {
    io.err(`${plain(refusal)}\n`);
    return PROBLEMS;
  }
  if (values.out === undefined) throw new UsageError('Say where the file is to go: --out dossier.html.');
  await refuseInsideSite(resolve(io.cwd, values.out));
  return await sealShare(
    loaded,
    own,
    { ...values, out: resolve(io.cwd, values.out), collection: shared.collection },
    io,
  );
}

function ownShare({ catalogue }: Loaded, id: string): OwnShare {
  const share = catalogue.entries.shares.find((one) => one.id === id);
  if (share !== undefined) return shareDossier(catalogue, share, fingerprintOf(catalogue));
  const ids = catalogue.entries.shares.map((one) => one.id);
  throw new UsageError(`There is no share "${id}" that can be used. There are: ${ids.join(', ') || 'none'}.`);
}

/** Why a share isn't sealed: its owner has to look at it first. */
function whyNot({ plan }: OwnShare): string | undefined {
  if (plan.ended)
    return `shares/${plan.share} ended on ${plan.until}. Give it a later date under until: to seal it again.`;
  if (plan.reels.length === 0) return `shares/${plan.share} shows no reel, so there is nothing to seal.`;
  if (plan.refused.length > 0)
    return `shares/${plan.share} would show what is private: ${plan.refused.join(', ')}. Take it out of shows:, or write it under shows-private: if you mean to.`;
  if (plan.unknown.length > 0)
    return `shares/${plan.share} names what is no fact of an entry: ${plan.unknown.join(', ')}.`;
  if (plan.missingReels.length > 0)
    return `shares/${plan.share} names reels that aren’t there: ${plan.missingReels.join(', ')}.`;
  return undefined;
}

interface SealValues {
  readonly out: string;
  readonly collection: string;
  readonly base?: string | undefined;
  readonly 'passphrase-file'?: string | undefined;
}

async function sealShare({ catalogue, cache }: Loaded, own: OwnShare, values: SealValues, io: Io): Promise<number> {
  const share = catalogue.entries.shares.find((one) => one.id === own.plan.share);
  const { opensBy } = own.plan;
  const guessable = [
    own.dossier.title,
    own.dossier.to ?? '',
    own.plan.share,
    ...own.plan.reels.flatMap(({ id, title }) => [id, title]),
  ];
  const by: Opener =
    opensBy === 'link'
      ? { key: await freshKey() }
      : { words: await wordsToSeal(values['passphrase-file'], io, guessable) };
  const { page, styleHash } = await makeDossierPage(own, { collection: values.collection, cache });
  const free = share === undefined ? undefined : valueOf(share.front);
  const front = await frontPage({ sealed: await sealed(page, by), made: catalogue.today, free, opensBy, styleHash });
  await writeWhole(values.out, front);
  io.err(`${values.out}: sealed, ${(front.length / 1e6).toFixed(1)} MB.\n`);
  const name = basename(values.out);
  const address = values.base === undefined ? name : `${values.base.replace(/\/?$/, '/')}${encodeURIComponent(name)}`;
  if (values.base !== undefined) {
    io.err(`For ${address}\n`);
    const { share, until } = own.plan;
    await rememberAsHosted({ collection: values.collection, share, file: values.out, until }, front, io);
  }
  if ('key' in by) {
    io.err('The link, shown this once. Whoever has it can open the file; what follows # is never sent to a host.\n');
    io.out(`${address}#${by.key}\n`);
  }
  return DONE;
}

const SEALED_TEXT = /-----BEGIN AGE ENCRYPTED FILE-----[\s\S]+?-----END AGE ENCRYPTED FILE-----/;

/** Decrypts a sealed file, so that its owner sees what was sent. */
async function openFile(file: string, out: string | undefined, words: string | undefined, io: Io): Promise<number> {
  if (out === undefined) throw new UsageError('Say where the opened page is to go: --out open.html.');
  const bytes = await readFile(resolve(io.cwd, file)).catch((error: unknown) => {
    throw new UsageError(`${file} can’t be read: ${error instanceof Error ? error.message : String(error)}`);
  });
  const text = SEALED_TEXT.exec(bytes.toString('latin1'))?.[0];
  const given = await wordsToOpen(words, io);
  const key = /AGE-SECRET-KEY-1[0-9A-Z]+/i.exec(given)?.[0];
  try {
    const sealedBytes = text === undefined ? bytes : fromText(text);
    const opened = await unseal(sealedBytes, key === undefined ? { words: given } : { key: key.toUpperCase() });
    await writeWhole(resolve(io.cwd, out), opened);
    io.err(`${out}: opened. It isn’t encrypted: delete it when you have looked.\n`);
    return DONE;
  } catch (error) {
    if (error instanceof WrongWords) io.err('These words don’t open it.\n');
    else if (error instanceof Damaged) io.err(`${file} is damaged, or no sealed file.\n`);
    else throw error;
    return PROBLEMS;
  }
}
