import { z } from 'zod';
import type { AcceptedCode, EntryBase, Loose, Photo } from '#model/entry.ts';
import { PHOTO_SUBJECTS } from '#model/words.ts';
import type { Node } from '#read/tree.ts';
import { type Complete, listOf, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { known, plainMany } from '../leaf.ts';
import { parseFileName } from '../scalars/file-name.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';

/** What the file itself gives to an entry; the rest of it comes from its schema. */
type FromFile = 'folder' | 'id' | 'file' | 'place' | 'keys' | 'body' | 'bodyLine';

/** What a schema makes of an entry's front matter. */
export type Facts<E extends EntryBase> = Omit<E, FromFile>;

const photo = mapOf(
  {
    file: known(parseFileName, 'file: box-front.jpg'),
    shows: known(wordOf(PHOTO_SUBJECTS, 'something that a photograph shows')).optional(),
    note: known(parseText).optional(),
    on: known(parsePartialDate).optional(),
  },
  ({ file, shows, note, on }, place): Complete<Photo> => ({ place, file, shows, note, on }),
  'file',
);

const accepted = mapOf(
  {
    code: known(parseText, 'code: number/sides-differ'),
    why: known(parseText).optional(),
    on: known(parsePartialDate).optional(),
  },
  ({ code, why, on }, place): Complete<AcceptedCode> => ({ place, code, why, on }),
);

/** Keys that every kind of entry has. */
export const baseShape = {
  title: known(parseText, 'title: Saltwater Almanac, side 1'),
  photos: listOf(photo).optional(),
  accepted: listOf(accepted).optional(),
  private: plainMany(parseText).optional(),
  also: z.transform<unknown, Loose>((input) => loose(input as Node)).optional(),
};

type BaseFields = z.output<z.ZodObject<typeof baseShape, z.core.$strict>>;

/** The facts that every kind of entry has. */
export function baseFacts(fields: BaseFields) {
  const { title, photos, accepted, private: hidden, also } = fields;
  return {
    title,
    photos,
    accepted: accepted?.is === 'known' ? accepted.value : [],
    private: hidden ?? [],
    also,
  };
}

/** Free facts, as texts. */
function loose(node: Node | undefined): Loose {
  if (node === undefined) return '';
  if (node.is === 'scalar') return node.text;
  if (node.is === 'list') return node.items.map(loose);
  const free: Record<string, Loose> = Object.create(null);
  for (const [key, value] of Object.entries(node.fields)) free[key] = loose(value);
  return free;
}
