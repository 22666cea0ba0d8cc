import { casesOf } from '../cases.ts';
import { cycle } from './cycle.ts';

export const cases = casesOf(cycle, [
  {
    when: 'three reels are copied from each other',
    given: { 'reels/a': 'copied-from: [c]', 'reels/b': 'copied-from: [a]', 'reels/c': 'copied-from: [b]' },
    then: 'fires',
    says: 'a → b → c → a',
    file: 'reels/c.md',
  },
  {
    when: 'a reel is copied from itself',
    given: { 'reels/a': 'copied-from: [a]' },
    then: 'fires',
    says: 'copied from itself',
  },
  {
    when: 'a log names the reel that its own reel was copied from',
    given: { 'reels/a': 'copied-from: [b]', 'reels/b': 'copy-log: [{ reel: a }]\ncopied-from: [a]' },
    then: 'fires',
  },
  {
    when: 'two copies of one master went into one compilation',
    given: {
      'reels/master': 'copied-from: none',
      'reels/left': 'copied-from: [master]',
      'reels/right': 'copied-from: [master]',
      'reels/compiled': 'copied-from: [left, right]',
    },
    then: 'silent',
  },
  {
    when: 'a safety copy was made of a copy after the master was lost',
    given: {
      'reels/master': 'status: gone',
      'reels/copy': 'copied-from: [master]',
      'reels/safety': 'copied-from: [copy]',
    },
    then: 'silent',
  },
  {
    when: 'nothing is said of where they came from',
    given: { 'reels/a': 'set: x', 'reels/b': 'set: x' },
    then: 'silent',
  },
]);
