import { casesOf } from '../cases.ts';
import { editionSideLength } from './edition-side-length.ts';

const LP = 'made-as: LP\nsides: [{ side: A, length: "18:52" }, { side: B, length: "19:10" }]';

export const cases = casesOf(editionSideLength, [
  {
    when: 'a reel’s figures are swapped against its edition’s',
    given: { 'editions/lp': LP, 'reels/a': 'edition: lp\nside: "1"\nlength: "18:25"' },
    then: 'fires',
    says: ['18:25', '18:52', /2 and 5 swapped/],
    severity: 'note',
    file: 'reels/a.md',
  },
  {
    when: 'a reel is a title shorter than its side',
    given: { 'editions/lp': LP, 'reels/a': 'edition: lp\nside: B\nlength: "15:40"' },
    then: 'fires',
    says: [/3 min 30 s shorter/],
  },
  {
    when: 'a stopwatch and a lathe differ by some seconds',
    given: { 'editions/lp': LP, 'reels/a': 'edition: lp\nside: "1"\nlength: "18:46"' },
    then: 'silent',
  },
  {
    when: 'a long side is split over two reels',
    given: {
      'editions/lp': LP,
      'reels/a': 'edition: lp\nside: "1"\nlength: "9:20"',
      'reels/b': 'edition: lp\nside: "1"\nlength: "9:32"',
    },
    then: 'silent',
  },
  {
    when: 'a session tape for the side runs on',
    given: { 'editions/lp': LP, 'reels/a': 'edition: lp\nside: "1"\nkind: session tape\nlength: "32:00"' },
    then: 'silent',
  },
  {
    when: 'the reel is for the other side',
    given: { 'editions/lp': LP, 'reels/a': 'edition: lp\nside: "2"\nlength: "19:12"' },
    then: 'silent',
  },
]);
