import { casesOf } from '../cases.ts';
import { windowClosed } from './window-closed.ts';

const then = (what: string, on: string) => ({
  'stocks/brown': 'base: polyester',
  'reels/a': `stock: brown\nhandling:\n  - { what: bake, on: "2026-03-10", ended: "2026-03-11T22:00" }\n  - { what: ${what}, on: "${on}" }`,
});

/** Common practice, no source: 7 to 10 h. Published: one to two weeks (UNESCO RAMP study r9704e). */
export const cases = casesOf(windowClosed, [
  {
    when: 'it was transferred three days later',
    given: then('transfer', '2026-03-14'),
    then: 'fires',
    severity: 'note',
    says: ['common practice', 'two weeks'],
  },
  {
    when: 'it was played a month later',
    given: then('play', '2026-04-12'),
    then: 'fires',
    severity: 'warning',
    says: 'UNESCO',
    today: '2026-06-01',
  },
  { when: 'it was played on the next day, at an hour nobody wrote', given: then('play', '2026-03-12'), then: 'silent' },
  { when: 'it was played in the year before the bake', given: then('play', '2025-03-14'), then: 'silent' },
  {
    when: 'it was baked again before it was played again',
    given: {
      'reels/a':
        'handling:\n  - { what: bake, ended: "2020-03-11T22:00" }\n  - { what: bake, ended: "2026-03-11T22:00" }\n  - { what: play, on: "2026-03-12" }',
    },
    then: 'silent',
  },
  { when: 'it was only rewound', given: then('rewind', '2026-04-12'), then: 'silent' },
  {
    when: 'nobody recorded when the bake ended',
    given: { 'reels/a': 'handling: [{ what: bake, on: "2026-03-10" }, { what: play, on: "2026-05" }]' },
    then: 'silent',
  },
  {
    when: 'nobody recorded when it was played',
    given: { 'reels/a': 'handling: [{ what: bake, ended: "2026-03-11T22:00" }, { what: play }]' },
    then: 'silent',
  },
]);
