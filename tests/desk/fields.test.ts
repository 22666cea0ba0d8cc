import { expect, test } from 'vitest';
import { ENTRY_KINDS } from '#model/words.ts';
import { edition } from '#validate/schemas/edition.ts';
import { machine } from '#validate/schemas/machine.ts';
import { note } from '#validate/schemas/note.ts';
import { person } from '#validate/schemas/person.ts';
import { storagePlace } from '#validate/schemas/place.ts';
import { reel } from '#validate/schemas/reel.ts';
import { share } from '#validate/schemas/share.ts';
import { stock } from '#validate/schemas/stock.ts';
import { keyOrder } from '../../src/desk/fields/kinds.ts';

const SCHEMAS = {
  reels: reel,
  editions: edition,
  machines: machine,
  stocks: stock,
  places: storagePlace,
  people: person,
  shares: share,
  notes: note,
};

test.each(ENTRY_KINDS)('the desk asks for every key of %s that is read, and for no other', (kind) => {
  expect([...keyOrder(kind)].sort()).toEqual([...SCHEMAS[kind].keysBelow].sort());
});
