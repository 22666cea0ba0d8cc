import { casesOf } from '../cases.ts';
import { gapConflict } from './gap-conflict.ts';

export const cases = casesOf(gapConflict, [
  {
    // C-553
    when: '“no gaps” stands beside a gap that is listed',
    given: {
      'reels/a': `
        gaps: none
        contents:
          - { title: Low Water, length: "4:10", gap-after: 4 s }
          - { title: Marram, length: "3:36" }`,
    },
    then: 'fires',
    says: ['gap-after: 4 s', 'Low Water'],
    severity: 'warning',
  },
  {
    when: 'the stated length has just room for the gaps that the label denies',
    given: {
      'reels/a': `
        length: "19:26"
        gaps: none
        run-out-sound: { holds: rain, length: 6 s, counted: yes }
        contents:
          - { title: One, length: "4:10" }
          - { title: Two, length: "3:36" }
          - { title: Three, length: "5:02" }
          - { title: Four, length: "3:04" }
          - { title: Five, length: "3:16" }`,
    },
    then: 'fires',
    says: ['gaps: 3 s', '19:14'],
  },
  {
    when: 'titles run on without gaps and add up',
    given: {
      'reels/a': `
        length: "7:46"
        gaps: none
        contents:
          - { title: Low Water, length: "4:10" }
          - { title: Marram, length: "3:36" }`,
    },
    then: 'silent',
  },
  {
    when: 'only some of the titles run on, and the entry says so',
    given: {
      'reels/a': `
        gaps: mixed
        contents:
          - { title: Low Water, length: "4:10", gap-after: none }
          - { title: Marram, length: "3:36", gap-after: 5 s }
          - { title: Ebb, length: "3:00" }`,
    },
    then: 'silent',
  },
  {
    when: 'one gap is longer than the rest, for the break between two parts of a programme',
    given: {
      'reels/a': `
        gaps: 3 s
        contents:
          - { title: Low Water, length: "4:10", gap-after: 8 s }
          - { title: Marram, length: "3:36" }`,
    },
    then: 'silent',
  },
  {
    when: 'the difference is no whole number of seconds a gap',
    given: {
      'reels/a': `
        length: "18:57"
        gaps: none
        contents:
          - { title: One, length: "4:10" }
          - { title: Two, length: "3:36" }
          - { title: Three, length: "5:02" }
          - { title: Four, length: "2:59" }
          - { title: Five, length: "3:05" }`,
    },
    then: 'silent',
  },
  {
    when: 'gaps would account for it, and so would two figures of one title the other way round',
    given: {
      'reels/a': `
        length: "18:52"
        gaps: none
        contents:
          - { title: One, length: "4:01" }
          - { title: Two, length: "3:36" }
          - { title: Three, length: "5:33" }
          - { title: Four, length: "5:33" }`,
    },
    then: 'fires',
    says: ['gaps: 3 s', '4:10 for One'],
  },
]);
