import { collection } from '#validate/schemas/collection.ts';
import { edition } from '#validate/schemas/edition.ts';
import { machine } from '#validate/schemas/machine.ts';
import { note } from '#validate/schemas/note.ts';
import { person } from '#validate/schemas/person.ts';
import { storagePlace } from '#validate/schemas/place.ts';
import { reel } from '#validate/schemas/reel.ts';
import { share } from '#validate/schemas/share.ts';
import { stock } from '#validate/schemas/stock.ts';

/** By the kind of entry that each is of. */
export const SCHEMAS = {
  reels: reel,
  editions: edition,
  machines: machine,
  stocks: stock,
  places: storagePlace,
  people: person,
  shares: share,
  notes: note,
  collection,
};
