import { z } from 'zod';
import type { Fact, Known } from '#model/fact.ts';
import type { Stock } from '#model/stock.ts';
import { BASE_FILMS, BINDERS } from '#model/words.ts';
import type { Node } from '#read/tree.ts';
import { type Complete, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, isNone, NONE } from '../leaf.ts';
import { parseThickness } from '../scalars/thickness.ts';
import { wordOf } from '../scalars/word.ts';
import { parseYesNo } from '../scalars/yes-no.ts';
import { textMap } from '../text-map.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

type Source = Fact<string | ReadonlyMap<string, Known<string>>>;

/** One source for all the facts, or a map from fact to source. */
const source = z.transform<unknown, Source>((input, ctx) => {
  const node = input as Node;
  const { place } = node;
  if (isNone(node)) return { is: 'none', written: NONE, place };
  if (node.is === 'scalar') return { is: 'known', value: node.text, written: node.text, place };
  return { is: 'known', value: textMap(node, ctx), written: '', place };
});

/** A stocks/ entry. */
export const stock = mapOf(
  {
    ...baseShape,
    base: fact(wordOf(BASE_FILMS, 'a base')).optional(),
    binder: fact(wordOf(BINDERS, 'a binder')).optional(),
    'back-coated': fact(parseYesNo).optional(),
    thickness: fact(parseThickness).optional(),
    made: fact(parsePartialDate).optional(),
    'known-to-shed': fact(parseYesNo).optional(),
    source: source.optional(),
  },
  (fields): Complete<Facts<Stock>> => ({
    ...baseFacts(fields),
    base: fields.base,
    binder: fields.binder,
    backCoated: fields['back-coated'],
    thickness: fields.thickness,
    made: fields.made,
    knownToShed: fields['known-to-shed'],
    source: fields.source,
  }),
);
