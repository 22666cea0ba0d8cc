import { casesOf } from '../cases.ts';
import { stickyShed } from './sticky-shed.ts';

const SHEDS = 'base: polyester\nbinder: polyurethane\nback-coated: yes\nmade: 1974/1979';

export const cases = casesOf(stickyShed, [
  {
    when: 'the stock has all the marks of those that shed',
    given: { 'stocks/brown': SHEDS, 'reels/a': 'stock: brown' },
    then: 'fires',
    severity: 'note',
    says: ['back coat', 'Leave it unplayed'],
    file: 'reels/a.md',
  },
  {
    when: 'it is known to shed, and nothing else is recorded of it',
    given: { 'stocks/brown': 'known-to-shed: yes', 'reels/a': 'stock: brown' },
    then: 'fires',
    severity: 'note',
    says: ['known to shed', 'Leave it unplayed'],
  },
  {
    when: 'it is known to shed, though it has no back coat',
    given: {
      'stocks/plain': `${SHEDS.replace('back-coated: yes', 'back-coated: no')}\nknown-to-shed: yes`,
      'reels/a': 'stock: plain',
    },
    then: 'fires',
    says: ['known to shed', 'no back coat', 'both stand here'],
  },
  {
    when: 'its entry says that it isn’t known to shed, and it has all the marks',
    given: { 'stocks/brown': `${SHEDS}\nknown-to-shed: no`, 'reels/a': 'stock: brown' },
    then: 'fires',
    says: ['every mark', 'isn’t known to shed', 'both stand here'],
  },
  {
    when: 'it squealed, and nothing is known of its stock',
    given: { 'reels/a': 'condition: [{ on: "2025-11-03", found: [squeal] }]' },
    then: 'fires',
    severity: 'warning',
    says: 'squeal on 2025-11-03',
  },
  {
    when: 'it was found sticky and has been baked since',
    given: {
      'stocks/brown': SHEDS,
      'reels/a':
        'stock: brown\ncondition: [{ on: "2024", found: [sticky] }, { on: "2026", found: [none] }]\nhandling: [{ what: bake, on: "2025" }]',
    },
    then: 'fires',
    severity: 'warning',
    says: 'did not find it again',
  },
  {
    when: 'a tape of the same years has no back coat',
    given: {
      'stocks/plain': 'base: polyester\nbinder: polyurethane\nback-coated: no\nmade: 1974/1979',
      'reels/a': 'stock: plain',
    },
    then: 'silent',
  },
  {
    when: 'a back-coated stock was first made after the trouble was cured',
    given: {
      'stocks/new': 'base: polyester\nbinder: polyurethane\nback-coated: yes\nmade: 1991/2004',
      'reels/a': 'stock: new',
    },
    then: 'silent',
  },
  {
    when: 'it isn’t known to shed, and lacks a mark',
    given: {
      'stocks/plain': 'base: polyester\nbinder: other\nmade: 1974/1979\nknown-to-shed: no',
      'reels/a': 'stock: plain',
    },
    then: 'silent',
  },
  {
    when: 'the back coat isn’t recorded',
    given: { 'stocks/brown': 'base: polyester\nmade: 1978', 'reels/a': 'stock: brown' },
    then: 'silent',
  },
  {
    when: 'the stock isn’t recorded',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [none] }]' },
    then: 'silent',
  },
  {
    when: 'somebody else has the reel',
    given: { 'stocks/brown': SHEDS, 'reels/a': 'status: elsewhere\nstock: brown' },
    then: 'silent',
  },
]);
