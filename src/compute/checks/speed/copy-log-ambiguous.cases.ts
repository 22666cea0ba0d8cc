import { casesOf } from '../cases.ts';
import { copyLogAmbiguous } from './copy-log-ambiguous.ts';

const MASTER = (speed: string, line: string) =>
  `kind: production master\nformat: { speed: ${speed} }\ncopy-log:\n  - { ${line} }`;

export const cases = casesOf(copyLogAmbiguous, [
  {
    // C-552
    when: 'the log of a 15 in/s master says 30 in/s, and no copy is known',
    given: { 'reels/a': MASTER('15 in/s', 'on: "1978-02-09", for: Hollin Overseas, speed: 30 in/s') },
    then: 'fires',
    says: ['run at twice real time', 'Measure the copy'],
    severity: 'note',
  },
  {
    when: 'the copy’s measured pack agrees with the log’s speed as its own',
    given: {
      'stocks/norda': 'thickness: 52 µm',
      'reels/a': MASTER('15 in/s', 'on: "1978-02-09", speed: 30 in/s, reel: b'),
      'reels/b':
        'title: Marram, side 1\nlength: "18:52"\npack: { outside-diameter: 260 mm, hub-diameter: 100 mm }\nstock: norda',
    },
    then: 'fires',
    says: [/pack of Marram, side 1 agrees with 30 in\/s/],
  },
  {
    when: 'the copy’s measured pack is too short for the log’s speed',
    given: {
      'stocks/norda': 'thickness: 52 µm',
      'reels/a': MASTER('15 in/s', 'on: "1978-02-09", speed: 30 in/s, reel: b'),
      'reels/b':
        'title: Marram, side 1\nlength: "18:52"\npack: { outside-diameter: 195 mm, hub-diameter: 100 mm }\nstock: norda',
    },
    then: 'fires',
    says: [/too short for 30 in\/s: it was recorded at 15 in\/s/],
  },
  {
    when: 'the log gives half of the master’s speed',
    given: { 'reels/a': MASTER('15 in/s', 'on: "1975-06-05", speed: 7.5 in/s, kind: running master') },
    then: 'fires',
    says: ['half of real time'],
  },
  {
    when: 'the log gives the master’s own speed',
    given: { 'reels/a': MASTER('15 in/s', 'on: "1978-02-09", speed: 38 cm/s') },
    then: 'silent',
  },
  {
    when: 'the copy’s own label says that it has the master’s speed, so it was run fast',
    given: {
      'reels/a': MASTER('15 in/s', 'on: "1978-02-09", speed: 30 in/s, reel: b'),
      'reels/b': 'format: { speed: 15 in/s }',
    },
    then: 'silent',
  },
  {
    when: 'the log gives no speed',
    given: { 'reels/a': MASTER('15 in/s', 'on: "1978-02-09", for: Hollin Overseas') },
    then: 'silent',
  },
]);
