import { casesOf } from '../cases.ts';
import { generationDiffers } from './generation-differs.ts';

const MASTER = 'kind: original master';

export const cases = casesOf(generationDiffers, [
  {
    when: 'a copy of a copy is labelled 2',
    given: {
      'reels/master': MASTER,
      'reels/copy': 'kind: safety copy\ncopied-from: [master]',
      'reels/second': 'kind: copy master\ncopied-from: [copy]\ngeneration: "2"',
    },
    then: 'fires',
    severity: 'warning',
    says: ['2', '3'],
    file: 'reels/second.md',
  },
  {
    when: 'an original master is copied from a copy master',
    given: { 'reels/copy': 'kind: copy master', 'reels/first': 'kind: original master\ncopied-from: [copy]' },
    then: 'fires',
    says: 'is called an original master, and was copied from a copy master',
  },
  {
    when: 'an original master was mixed from session tapes',
    given: {
      'reels/take': 'kind: session tape',
      'reels/master': 'kind: original master\ncopied-from: [take]\ngeneration: "1"',
    },
    then: 'silent',
  },
  {
    when: 'a production master assembled from originals is called 1, or 2',
    given: {
      'reels/one': MASTER,
      'reels/spliced': 'kind: production master\ncopied-from: [one]\ngeneration: "1"',
      'reels/copied': 'kind: production master\ncopied-from: [one]\ngeneration: "2"',
    },
    then: 'silent',
  },
  {
    when: 'the chain above it has a link that nobody knows',
    given: {
      'reels/copy': 'kind: copy master',
      'reels/second': 'kind: copy master\ncopied-from: [copy]\ngeneration: "4"',
    },
    then: 'silent',
  },
  {
    when: 'a production master was made overseas from a copy master',
    given: {
      'reels/master': MASTER,
      'reels/copy': 'kind: copy master\ncopied-from: [master]',
      'reels/overseas': 'kind: production master\ncopied-from: [copy]',
    },
    then: 'silent',
  },
  {
    when: 'no generation is stated',
    given: { 'reels/master': MASTER, 'reels/copy': 'copied-from: [master]' },
    then: 'silent',
  },
  {
    when: 'nothing is said of its parent',
    given: { 'reels/copy': 'kind: copy master\ngeneration: "5"' },
    then: 'silent',
  },
  {
    when: 'a tape copied from none is called a second generation',
    given: { 'reels/first': 'copied-from: none\ngeneration: "2"' },
    then: 'fires',
    says: '1',
  },
  {
    when: 'a copy is called a first tape, whatever its parent is',
    given: {
      'reels/parent': 'kind: production master',
      'reels/copy': 'kind: copy master\ncopied-from: [parent]\ngeneration: "1"',
    },
    then: 'fires',
    says: '2 or more',
  },
  {
    when: 'a first tape is called one',
    given: { 'reels/first': 'copied-from: none\ngeneration: "1"' },
    then: 'silent',
  },
]);
