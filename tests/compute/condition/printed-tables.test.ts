import { expect, test } from 'vitest';
import { ACID_STRIP_LEVELS } from '#compute/condition/acid-strips.ts';
import { MOULD_DORMANCY, MOULD_SIGNS } from '#compute/condition/mould-activity.ts';
import { WEAR_BY_PLAYING } from '#compute/condition/wear.ts';
import { rows } from '../../tables/published.ts';

test.each(rows('C-391', 'C-392', 'C-393', 'C-394', 'C-395'))('$id $title ($source)', ({ inputs, expected }) => {
  const level = ACID_STRIP_LEVELS.find((row) => row.level === inputs['level']);
  expect(`${level?.says}: ${level?.action}`).toBe(expected['meaning']);
});

test.each(rows('C-396', 'C-397'))('$id $title: both stand ($source)', ({ expected }) => {
  const under = expected['mostBelow_percent'] ?? expected['commonWisdomBelow_percent'];
  expect(MOULD_DORMANCY.map((row) => [row.mostDormantUnderPercent, row.someActiveDownToPercent])).toContainEqual([
    under,
    expected['someActiveDownTo_percent'],
  ]);
});

test.each(rows('C-398'))('$id $title ($source)', ({ expected }) => expect(MOULD_SIGNS).toMatchObject(expected));

test.each(rows('C-399'))('$id $title ($source)', ({ expected }) => {
  expect(expected['isolate']).toBe(true);
  expect(MOULD_SIGNS.protection).toBe(`${expected['wear']}; isolate; do not ${expected['doNot']}`);
});

test.each(rows('C-380'))('$id $title ($source)', ({ expected }) =>
  expect(WEAR_BY_PLAYING.says.replace(' plays', '')).toBe(expected['plays']),
);
