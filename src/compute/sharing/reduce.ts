import type { Catalogue, PhotographFact, ReelSheet } from '#model/catalogue.ts';
import type { ClimateSummary } from '#model/climate.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import { photographPath } from '#model/photograph-path.ts';
import type { Reel } from '#model/reel.ts';
import type { Share } from '#model/share.ts';
import { machinesFor } from '../plan/machines-for.ts';
import { below, reduceEdition, reduceMachine, reducePlace, reduceStock } from './beside.ts';
import { Copier } from './copier.ts';
import { NeutralNames, reelsOf } from './neutral-names.ts';
import { outsideReels, reduceOutside } from './outside.ts';
import { reduceReel } from './reel.ts';
import { keyOf } from './reel-lists.ts';
import { type Allows, scopeOf } from './scope.ts';

/** What a share's dossier is computed from. */
export interface Reduced {
  readonly entries: Entries;
  readonly names: NeutralNames;
  /** The reels shown, as the collection has them. */
  readonly shown: readonly Reel[];
  /** By the collection's ids. */
  readonly scopes: ReadonlyMap<string, Allows>;
  /** Of those that go along, under their neutral paths. */
  readonly photographs: ReadonlyMap<string, PhotographFact>;
  /** Neutral paths to those in the collection. Never handed to a page. */
  readonly originals: ReadonlyMap<string, string>;
  readonly heldBack: number;
  readonly climate: ReadonlyMap<string, ClimateSummary>;
  /** Machines that the plan names, by their neutral names; others are only named. */
  readonly players: ReadonlySet<string>;
}

type ScopeFor = (share: Share, ownPrivate: readonly string[]) => Allows;

/** A collection with what a share allows and nothing else, made by copying: reels of the share under neutral names,
 * those that they come from or led to by kind and date, and of other entries what the reels' own facts name.
 *
 * @param scopeFor  what may be shown of an entry. */
export function reduceEntries(
  {
    entries,
    reels: sheets,
    lineage,
    photographs,
    climate,
  }: Pick<Catalogue, 'entries' | 'reels' | 'lineage' | 'photographs' | 'climate'>,
  share: Share,
  scopeFor: ScopeFor = scopeOf,
): Reduced {
  const names = new NeutralNames();
  const shown = reelsOf(share, entries);
  for (const reel of shown) names.of('reel', reel.id);
  const common = entries.collection.private.map((key) => keyOf(key.value));
  const privateOf = (entry: { readonly private: readonly { readonly value: string }[] }) => [
    ...common,
    ...entry.private.map((key) => keyOf(key.value)),
  ];
  const scopes = new Map(shown.map((reel) => [reel.id, scopeFor(share, privateOf(reel))] as const));
  const everywhere = scopeFor(share, common);
  const some = (key: string) => [...scopes.values()].some((allows) => allows(key));

  const outside = some('lineage') ? outsideReels(shown, entries, lineage) : [];
  for (const reel of outside) names.of('outside', reel.id);
  const players = bestMachines(
    sheets.filter(({ reel }) => scopes.get(reel.id)?.('playing') === true),
    entries.machines,
  );
  for (const machine of players) names.of('machine', machine.id);
  const taken = numbersOutside(entries.reels, scopes);
  const others = { shared: (id: string) => scopes.has(id), taken };
  const files = new Map<string, string>();
  const opened = new Map<string, PhotographFact>();
  let heldBack = 0;
  const reels = shown.map((reel) => {
    const id = names.of('reel', reel.id);
    const file = `reels/${id}/index.md`;
    const reduced = reduceReel(reel, id, new Copier(scopes.get(reel.id) ?? everywhere, names, file, entries), others);
    heldBack += reduced.heldBack;
    for (const [name, written] of reduced.photographs) {
      const path = `reels/${id}/${name}`;
      const original = photographPath(reel.file, written);
      const fact = original === undefined ? undefined : photographs.get(original);
      if (original === undefined || fact?.opens !== true) continue;
      files.set(path, original);
      opened.set(path, { path, opens: true, widthPx: fact.widthPx, heightPx: fact.heightPx });
    }
    return reduced.reel;
  });
  const kindAndDate: Allows = (key) => !common.some((one) => key === one || key.startsWith(`${one}.`));
  const stubs = outside.map((reel) => {
    const id = names.of('outside', reel.id);
    const own: Allows = (key) =>
      kindAndDate(key) && !reel.private.some((one) => key === one.value || key.startsWith(`${one.value}.`));
    return reduceOutside(reel, id, new Copier(own, names, `reels/${id}/index.md`, entries));
  });

  /** Entries that a reel's copied facts name. */
  const named = <E extends { readonly id: string }>(kind: string, list: readonly E[]) =>
    list.filter((entry) => names.has(kind, entry.id));
  const copier = (
    kind: string,
    entry: { readonly id: string; readonly private: readonly { readonly value: string }[] },
  ) =>
    new Copier(
      below(keyFor(kind, playing.has(entry.id)), some, privateOf(entry)),
      names,
      `${kind}s/${names.of(kind, entry.id)}.md`,
      entries,
    );
  const playing = new Set(players.map((machine) => machine.id));
  const rooms = named('place', entries.places);
  return {
    names,
    players: new Set(players.map((machine) => names.of('machine', machine.id))),
    shown,
    scopes,
    photographs: opened,
    originals: files,
    heldBack,
    climate: new Map(
      rooms.flatMap((room) => {
        const summary = climate.get(room.id);
        return summary !== undefined && some('place') ? [[names.of('place', room.id), summary] as const] : [];
      }),
    ),
    entries: {
      // Nothing of the owner's own, but how they write amounts.
      collection: {
        currency: everywhere('valuations') ? entries.collection.currency : undefined,
        units: entries.collection.units,
        language: entries.collection.language,
        private: [],
        body: '',
        bodyLine: 0,
      },
      reels: [...reels, ...stubs],
      editions: named('edition', entries.editions).map((edition) =>
        reduceEdition(edition, names.of('edition', edition.id), copier('edition', edition), shown, some('cuts')),
      ),
      machines: named('machine', entries.machines).map((machine) =>
        reduceMachine(machine, names.of('machine', machine.id), copier('machine', machine), playing.has(machine.id)),
      ),
      stocks: named('stock', entries.stocks).map((stock) =>
        reduceStock(stock, names.of('stock', stock.id), copier('stock', stock)),
      ),
      places: rooms.map((room) =>
        reducePlace(room, names.of('place', room.id), copier('place', room), some('address')),
      ),
      people: [],
      shares: [],
      notes: [],
      unusable: new Set(),
    },
  };
}

/** What an entry beside the reels is shown by; a machine of the plan by another key than one that is only named. */
const keyFor = (kind: string, plays: boolean) =>
  kind === 'place' ? 'place.at' : kind === 'machine' ? (plays ? 'playing' : 'handling.machine') : kind;

/** For each reel the machine that a plan would name: the best one, or the nearest to it where none plays it. */
function bestMachines(sheets: readonly ReelSheet[], machines: readonly Machine[]): readonly Machine[] {
  const best = new Set(sheets.map((sheet) => machinesFor(sheet.playing, machines)[0]?.id));
  return machines.filter((machine) => best.has(machine.id));
}

/** Whether a number, in plain characters, is that of a reel that isn't shown. */
function numbersOutside(reels: readonly Reel[], shown: ReadonlyMap<string, unknown>): (number: string) => boolean {
  const plain = (number: string) =>
    number
      .normalize('NFKC')
      .toUpperCase()
      .replace(/[^\p{L}\p{N}]/gu, '');
  const of = ({ numbers }: Reel) =>
    [numbers.catalogue, numbers.matrix, numbers.job, numbers.other].flatMap((list) =>
      itemsOf(list).map((one) => plain(one.value)),
    );
  const own = new Set(reels.filter((reel) => shown.has(reel.id)).flatMap(of));
  const others = new Set(reels.filter((reel) => !shown.has(reel.id)).flatMap(of));
  return (number) => number !== '' && others.has(plain(number)) && !own.has(plain(number));
}
