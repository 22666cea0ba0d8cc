import type { Photo } from '#model/entry.ts';
import { itemsOf } from '#model/fact.ts';
import { photographPath } from '#model/photograph-path.ts';
import { type PublishedPhotograph, type PublishedPicture, regionKey } from '#model/published-photograph.ts';
import type { Reading, Reel } from '#model/reel.ts';
import type { Sureness } from '#model/words.ts';
import type { Site } from '../site.ts';

/** A reading with its number on the sheet, the photograph's own, and the crop that shows it. */
export interface NumberedReading {
  readonly number: number;
  readonly reading: Reading;
  readonly crop: PublishedPicture | undefined;
}

/** A photograph of an entry with what was read from it. */
export interface Plate {
  readonly photo: Photo;
  readonly published: PublishedPhotograph | undefined;
  readonly readings: readonly NumberedReading[];
}

/** Readings are numbered in the order in which the entry has them. */
export function platesOf(
  reel: Reel,
  { photographs }: Site,
): { readonly plates: readonly Plate[]; readonly loose: readonly NumberedReading[] } {
  const photos = itemsOf(reel.photos);
  const files = new Map(
    photos.map((photo) => [photo.file.value, photographs.get(photographPath(reel.file, photo.file.value) ?? '')]),
  );
  const numbered = itemsOf(reel.readings).map((reading, index) => {
    const region = reading.region?.value;
    const published = files.get(reading.photo?.value ?? '');
    return { number: index + 1, reading, crop: region && published?.crops.get(regionKey(region)) };
  });
  const plates = photos.map((photo) => ({
    photo,
    published: files.get(photo.file.value),
    readings: numbered.filter((one) => one.reading.photo?.value === photo.file.value),
  }));
  return { plates, loose: numbered.filter((one) => !files.has(one.reading.photo?.value ?? '')) };
}

const WEAKEST_FIRST: readonly Sureness[] = ['guess', 'likely', 'certain'];

/** How sure a fact is: as its weakest reading; undefined where none says. */
export function surenessOf(readings: readonly Reading[]): (key: string) => Sureness | undefined {
  const said = Map.groupBy(readings, (reading) => reading.of.value.replace(/\[\d+\]$/, ''));
  return (key) => {
    const words = (said.get(key) ?? []).flatMap((reading) => reading.sure?.value ?? []);
    return WEAKEST_FIRST.find((one) => words.includes(one));
  };
}

/** The number of the reading that speaks for a key of the entry, if there is one. */
export function regionOf(readings: readonly Reading[]): (key: string) => number | undefined {
  const first = new Map<string, number>();
  for (const [index, reading] of readings.entries()) {
    const key = reading.of.value.replace(/\[\d+\]$/, '');
    if (!first.has(key)) first.set(key, index + 1);
  }
  return (key) => first.get(key);
}
