import type { RoomAir } from '#model/condition-facts.ts';
import { casesOf } from '../cases.ts';
import { storage } from './storage.ts';

const YEAR = 8760;
const GOOD: RoomAir = {
  coveredHours: YEAR,
  outsideOuterHours: 0,
  disputedHours: 0,
  outsideMediumHours: 0,
  lowC: 19,
  highC: 22,
  lowPercent: 35,
  highPercent: 45,
};

export const cases = casesOf(storage, [
  { when: 'the air stays inside both', given: { roomAir: GOOD }, then: 'clear' },
  {
    when: 'it is outside for just as long as is tolerated',
    given: { roomAir: { ...GOOD, outsideOuterHours: 24, outsideMediumHours: 24 } },
    then: 'clear',
  },
  {
    when: 'it is outside for longer',
    given: { roomAir: { ...GOOD, outsideOuterHours: 24.5, highPercent: 66 } },
    then: 'at-risk',
    says: 'outer bounds',
  },
  {
    when: 'a warm summer goes past the medium-term bounds',
    given: { roomAir: { ...GOOD, outsideMediumHours: 840, highC: 25 } },
    then: 'at-risk',
    says: '35 days',
  },
  {
    when: 'it is dry enough for one source only',
    given: { roomAir: { ...GOOD, disputedHours: 100, lowPercent: 22 } },
    then: 'at-risk',
    says: 'inside one source’s bounds',
  },
  { when: 'no log was kept', given: { stored: 'upright' }, then: 'not-recorded' },
]);
