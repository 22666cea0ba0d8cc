import { expect, test } from 'vitest';
import { commonTitle } from '#render/views/shelf.ts';

test.each([
  [['Low Water, side 1', 'Low Water, side 2'], 'Low Water'],
  [['Low Water, side A', 'Low Water, safety copy'], 'Low Water'],
  [['Six Rooms, programme 1', 'Six Rooms, programme 2', 'Six Rooms, programme 3'], 'Six Rooms'],
  [['A white box'], 'A white box'],
  [['Tide', 'Ebb'], 'Tide'],
])('the set of %j is called %s', (titles, name) => expect(commonTitle(titles)).toBe(name));
