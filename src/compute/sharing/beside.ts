import type { Edition } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { StoragePlace } from '#model/storage-place.ts';
import { type Copier, sameSide } from './copier.ts';
import { type Allows, covers } from './scope.ts';

/** What may be shown of an entry beside the reels: its facts are asked for below the reel's own key, `stock.base`; what
 * the entry itself makes private stays out, and so do its body and its own keys, whatever the share names. */
export function below(prefix: string, allows: Allows, own: readonly string[]): Allows {
  return (key) =>
    !NEVER.includes(key) &&
    !own.some((one) => covers(one, key) || covers(key, one)) &&
    allows(key === '' ? prefix : `${prefix}.${key}`);
}
const NEVER: readonly string[] = ['body', 'also', 'accepted'];

/** A record, with the sides that were made from the reels shown and no other. */
export function reduceEdition(
  edition: Edition,
  id: string,
  copy: Copier,
  reels: readonly Reel[],
  cuts: boolean,
): Edition {
  const letters = reels
    .filter((reel) => itemsOf(reel.editions).some((one) => one.value === edition.id))
    .flatMap((reel) => itemsOf(reel.sides).map((side) => side.value));
  const shown = (side: string | undefined, reel?: string) =>
    reels.some((one) => one.id === reel) || (side !== undefined && letters.some((letter) => sameSide(letter, side)));
  return {
    ...copy.base('editions', edition, id, 'A record'),
    artist: copy.fact('artist', edition.artist),
    label: copy.fact('label', edition.label),
    catalogue: copy.texts('catalogue', edition.catalogue),
    madeAs: copy.fact('made-as', edition.madeAs),
    territory: copy.fact('territory', edition.territory),
    issued: copy.fact('issued', edition.issued),
    speed: copy.fact('speed', edition.speed),
    sides: copy.list('sides', edition.sides, (one) =>
      shown(one.side.value, one.reel?.value)
        ? {
            place: copy.place(one.place),
            side: { is: 'known', value: one.side.value, written: one.side.written, place: copy.place(one.side.place) },
            durationS: copy.known('sides.length', one.durationS),
            matrix: copy.fact('sides.matrix', one.matrix),
            reel: one.reel && reels.some((reel) => reel.id === one.reel?.value) ? copy.id('reel', one.reel) : undefined,
          }
        : undefined,
    ),
    reissueOf: copy.list('reissue-of', edition.reissueOf, (one) =>
      copy.names.has('edition', one.value) ? copy.id('edition', one) : undefined,
    ),
    runOuts: cuts
      ? copy.list('run-outs', edition.runOuts, (one) =>
          shown(one.side?.value)
            ? {
                place: copy.place(one.place),
                side: copy.known('run-outs.side', one.side),
                written: {
                  is: 'known',
                  value: one.written.value,
                  written: one.written.written,
                  place: copy.place(one.written.place),
                },
                cut: copy.known('run-outs.cut', one.cut),
                copy: copy.known('run-outs.copy', one.copy),
                note: copy.known('run-outs.note', one.note),
              }
            : undefined,
        )
      : undefined,
  };
}

export function reduceStock(stock: Stock, id: string, copy: Copier): Stock {
  return {
    ...copy.base('stocks', stock, id, 'A stock'),
    base: copy.fact('base', stock.base),
    binder: copy.fact('binder', stock.binder),
    backCoated: copy.fact('back-coated', stock.backCoated),
    thickness: copy.fact('thickness', stock.thickness),
    made: copy.fact('made', stock.made),
    knownToShed: copy.fact('known-to-shed', stock.knownToShed),
    source: copy.fact('source', stock.source),
  };
}

/** A room by its name; its address only where the share means to. */
export function reducePlace(place: StoragePlace, id: string, copy: Copier, address: boolean): StoragePlace {
  return {
    ...copy.base('places', place, id, 'A place'),
    address: address ? copy.fact('', place.address) : undefined,
  };
}

/** A machine: one that a reel was played on, by its name alone; one that the plan names, with what it can play. Whose it
 * is stays out. */
export function reduceMachine(machine: Machine, id: string, copy: Copier, inPlan: boolean): Machine {
  const named = copy.base('machines', machine, id, 'A machine');
  if (!inPlan) return named;
  return {
    ...named,
    speeds: copy.texts('speeds', machine.speeds),
    equalisations: copy.list('equalisations', machine.equalisations, (one) => ({
      place: copy.place(one.place),
      speed: copy.known('equalisations.speed', one.speed),
      curve: copy.known('equalisations.curve', one.curve),
    })),
    tracks: copy.texts('tracks', machine.tracks),
    largestReel: copy.fact('largest-reel', machine.largestReel),
    takes: copy.texts('takes', machine.takes),
    widths: copy.texts('width', machine.widths),
    noiseReduction: copy.texts('noise-reduction', machine.noiseReduction),
    state: copy.fact('state', machine.state),
  };
}
