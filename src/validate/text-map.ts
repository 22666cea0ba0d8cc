import type { z } from 'zod';
import type { Known } from '#model/fact.ts';
import type { Node } from '#read/tree.ts';
import { refuse } from './leaf.ts';

/** A map from any key to a text, such as a stock's sources or a logger's column names. */
export function textMap(node: Node, ctx: z.core.ParsePayload): ReadonlyMap<string, Known<string>> {
  const texts = new Map<string, Known<string>>();
  if (node.is !== 'map') {
    return refuse(ctx, {
      message: 'A list stands where texts under keys are read.',
      expected: 'a key, a colon and a text',
      action: 'Write a key for each text.',
    });
  }
  for (const [key, value] of Object.entries(node.fields)) {
    if (value === undefined) continue;
    if (value.is === 'scalar')
      texts.set(key, { is: 'known', value: value.text, written: value.text, place: value.place });
    else
      refuse(
        ctx,
        {
          message: 'More than one text stands under this key.',
          expected: 'one text',
          action: 'Write one text, in quotes if it begins with [ or {.',
        },
        [key],
      );
  }
  return texts;
}
