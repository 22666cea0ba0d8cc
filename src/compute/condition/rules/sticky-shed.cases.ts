import { casesOf } from '../cases.ts';
import { stickyShed } from './sticky-shed.ts';

const PRESENT = {
  are: 'present',
  marks: ['polyester base', 'back coat', 'polyurethane binder', 'made about 1970 to 1985'],
} as const;

export const cases = casesOf(stickyShed, [
  {
    when: 'the stock has all the marks',
    given: { shedMarks: PRESENT },
    then: 'at-risk',
    says: 'back coat',
    observed: false,
  },
  {
    when: 'the stock has all the marks and the last look found nothing',
    given: { shedMarks: PRESENT, looked: '2026-03' },
    then: 'at-risk',
  },
  {
    when: 'a mark is absent',
    given: { shedMarks: { are: 'absent', because: 'no back coat' } },
    then: 'clear',
    says: 'no back coat',
  },
  {
    when: 'it has all the marks, and its entry says that it isn’t known to shed',
    given: { shedMarks: { ...PRESENT, against: 'its own entry says that it isn’t known to shed' } },
    then: 'at-risk',
    says: 'both stand here',
  },
  {
    when: 'it is known to shed, and lacks a mark',
    given: { shedMarks: { are: 'present', marks: ['polyester base'], known: true, against: 'no back coat' } },
    then: 'at-risk',
    says: 'known to shed',
  },
  { when: 'the marks aren’t known', given: {}, then: 'not-recorded' },
  {
    when: 'it squealed, and nothing is known of the stock',
    given: { signs: [{ sign: 'squeal', on: '2025-11-03', notFoundOn: undefined }] },
    then: 'at-risk',
    says: 'squeal on 2025-11-03',
    observed: true,
  },
  {
    when: 'it was sticky once, and a later look did not find it',
    given: {
      signs: [{ sign: 'sticky', on: '2019', notFoundOn: '2026-03' }],
      shedMarks: { are: 'absent', because: 'no back coat' },
    },
    then: 'at-risk',
    says: 'inspection of 2026-03 did not find it again',
    observed: true,
  },
]);
