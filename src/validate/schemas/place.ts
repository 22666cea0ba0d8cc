import { z } from 'zod';
import type { ClimateLogRef, StoragePlace } from '#model/storage-place.ts';
import type { Node } from '#read/tree.ts';
import { type Complete, listOf, mapOf } from '../branch.ts';
import { fact, known } from '../leaf.ts';
import { parseFileName } from '../scalars/file-name.ts';
import { parseText } from '../scalars/text.ts';
import { parseZone } from '../scalars/zone.ts';
import { textMap } from '../text-map.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

const log = mapOf(
  {
    file: known(parseFileName, 'file: climate.csv'),
    columns: z.transform<unknown, ReturnType<typeof textMap>>((input, ctx) => textMap(input as Node, ctx)).optional(),
    zone: known(parseZone).optional(),
  },
  ({ file, columns, zone }, place): Complete<ClimateLogRef> => ({ place, file, columns, zone }),
  'file',
);

/** A places/ entry. */
export const storagePlace = mapOf(
  { ...baseShape, address: fact(parseText).optional(), climate: listOf(log).optional() },
  (fields): Complete<Facts<StoragePlace>> => ({
    ...baseFacts(fields),
    address: fields.address,
    climate: fields.climate,
  }),
);
