import type { Photo } from '#model/entry.ts';
import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Copier } from './copier.ts';
import * as lists from './reel-lists.ts';

export interface ReducedReel {
  readonly reel: Reel;
  /** Each photograph's neutral name and the name that its entry has for it. */
  readonly photographs: ReadonlyMap<string, string>;
  readonly heldBack: number;
}

/** A reel with what may be shown of it and nothing else, under a neutral name.
 *
 * @param shared  whether a reel is part of the share, by its id.
 * @param taken  numbers, in plain characters, of reels that are not. */
export function reduceReel(
  reel: Reel,
  id: string,
  copier: Copier,
  others: { readonly shared: (id: string) => boolean; readonly taken: (number: string) => boolean },
): ReducedReel {
  const copy = copier;
  const { photos, photographs, heldBack } = reducePhotos(reel, copier);
  const { format, numbers, pack } = reel;
  return {
    photographs,
    heldBack,
    reel: {
      ...copy.base('reels', reel, id, id.replace('reel-', 'Reel ')),
      // Only what is here is judged; a reader isn't told, unless the share names it.
      status: copy.known('status', reel.status) ?? {
        is: 'known',
        value: 'held',
        written: 'held',
        place: copy.place(reel.status.place),
      },
      photos,
      kind: copy.fact('kind', reel.kind),
      set: copy.fact('set', reel.set),
      sides: copy.texts('side', reel.sides),
      editions: copy.list('edition', reel.editions, (one) => copy.id('edition', one)),
      numbers: {
        catalogue: copy.texts('numbers.catalogue', numbers.catalogue),
        matrix: copy.texts('numbers.matrix', numbers.matrix),
        job: copy.texts('numbers.job', numbers.job),
        other: copy.texts('numbers.other', numbers.other),
      },
      client: copy.personFact('client', reel.client),
      durationS: copy.fact('length', reel.durationS),
      contents: lists.contents(copy, reel.contents),
      gaps: copy.fact('gaps', reel.gaps),
      runOutSound: lists.runOutSound(copy, reel.runOutSound),
      format: {
        width: copy.fact('format.width', format.width),
        tracks: copy.fact('format.tracks', format.tracks),
        speed: copy.fact('format.speed', format.speed),
        equalisation: copy.fact('format.equalisation', format.equalisation),
        direction: copy.fact('format.direction', format.direction),
        noiseReduction: copy.fact('format.noise-reduction', format.noiseReduction),
        level: copy.fact('format.level', format.level),
        tones: copy.texts('format.tones', format.tones),
      },
      pack: {
        woundOn: copy.fact('pack.wound-on', pack.woundOn),
        reelSize: copy.fact('pack.reel-size', pack.reelSize),
        outsideDiameter: copy.fact('pack.outside-diameter', pack.outsideDiameter),
        hubDiameter: copy.fact('pack.hub-diameter', pack.hubDiameter),
        wind: copy.fact('pack.wind', pack.wind),
      },
      stock: lists.reference(copy, 'stock', 'stock', reel.stock),
      recorded: lists.recorded(copy, reel.recorded),
      copiedFrom: copy.list('copied-from', reel.copiedFrom, (one) =>
        copy.id(others.shared(one.value) ? 'reel' : 'outside', one),
      ),
      generation: copy.known('generation', reel.generation),
      copyLog: lists.copyLog(copy, reel.copyLog, others),
      splices: lists.splices(copy, reel.splices),
      cuts: lists.cuts(copy, reel.cuts),
      readings: lists.readings(copy, reel.readings, new Map([...photographs].map(([name, file]) => [file, name]))),
      condition: lists.condition(copy, reel.condition),
      handling: lists.handling(copy, reel.handling),
      placeKept: lists.placeKept(copy, reel.placeKept),
      custody: lists.custody(copy, reel.custody),
      valuations: lists.valuations(copy, reel.valuations),
      rights: copy.fact('rights', reel.rights),
    },
  };
}

/** Photographs under neutral names. One on which a reading marks a fact that the owner made private stays out: the
 * fact can be read from it. */
function reducePhotos(reel: Reel, copy: Copier) {
  const own = new Set(reel.private.map((key) => lists.keyOf(key.value)));
  const telling = new Set(
    itemsOf(reel.readings)
      .filter(
        (reading) => isOwnPrivate(lists.keyOf(reading.of.value), own) && !copy.allows(lists.keyOf(reading.of.value)),
      )
      .map((reading) => reading.photo?.value),
  );
  const photographs = new Map<string, string>();
  let heldBack = 0;
  const photos = copy.list('photos', reel.photos, (photo): Photo | undefined => {
    if (telling.has(photo.file.value)) {
      heldBack += 1;
      return undefined;
    }
    const name = copy.names.of('photograph', `${reel.id} ${photo.file.value}`);
    photographs.set(name, photo.file.value);
    return {
      place: copy.place(photo.place),
      file: { is: 'known', value: name, written: name, place: copy.place(photo.file.place) },
      shows: copy.known('photos.shows', photo.shows),
      note: copy.known('photos.note', photo.note),
      on: copy.known('photos.on', photo.on),
    };
  });
  return { photos, photographs, heldBack };
}

const isOwnPrivate = (key: string, own: ReadonlySet<string>) =>
  [...own].some((one) => key === one || key.startsWith(`${one}.`) || one.startsWith(`${key}.`));
