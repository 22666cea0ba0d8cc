import { casesOf } from '../cases.ts';
import { overReel } from './over-reel.ts';

const STOCK = { 'stocks/norda': 'thickness: 52 µm' };

export const cases = casesOf(overReel, [
  {
    when: 'forty minutes at 30 in/s are said to be on a 10½ in reel',
    given: {
      ...STOCK,
      'reels/a':
        'length: "40:00"\nformat: { speed: 30 in/s }\npack: { wound-on: reel, reel-size: 10.5 in }\nstock: norda',
    },
    then: 'fires',
    says: ['10.5 in', '15 in/s'],
    severity: 'warning',
  },
  {
    when: 'an hour at 15 in/s is said to be on a 7 in reel, of any tape ever made',
    given: { 'reels/a': 'length: "1:00:00"\nformat: { speed: 15 in/s }\npack: { wound-on: reel, reel-size: 7 in }' },
    then: 'fires',
    says: [/thinnest tape made/],
  },
  {
    when: 'a long programme is on a 14 in reel',
    given: {
      ...STOCK,
      'reels/a':
        'length: "32:00"\nformat: { speed: 30 in/s }\npack: { wound-on: reel, reel-size: 14 in }\nstock: norda',
    },
    then: 'silent',
  },
  {
    when: 'a pancake has no reel at all',
    given: {
      ...STOCK,
      'reels/a':
        'length: "40:00"\nformat: { speed: 30 in/s }\npack: { wound-on: bare hub, outside-diameter: 330 mm }\nstock: norda',
    },
    then: 'silent',
  },
  {
    when: 'thin tape puts an hour and a half on a 7 in reel at 3¾',
    given: {
      'stocks/thin': 'thickness: 26 µm',
      'reels/a':
        'length: "1:30:00"\nformat: { speed: 3.75 in/s }\npack: { wound-on: reel, reel-size: 7 in }\nstock: thin',
    },
    then: 'silent',
  },
  {
    when: 'a quarter-track tape runs both ways, and its label states both together',
    given: {
      ...STOCK,
      'reels/a':
        'length: "1:04:00"\nformat: { speed: 7.5 in/s, tracks: quarter-track stereo, direction: both }\npack: { wound-on: reel, reel-size: 7 in }\nstock: norda',
    },
    then: 'silent',
  },
  {
    when: 'the pack is wider than the reel it is on',
    given: { 'reels/a': 'pack: { wound-on: reel, reel-size: 7 in, outside-diameter: 252 mm }' },
    then: 'fires',
    says: ['252 mm', '7 in', '178 mm', '10.5 in'],
  },
  {
    when: 'the pack fills its reel to the edge of the flange',
    given: { 'reels/a': 'pack: { wound-on: reel, reel-size: 10½ in, outside-diameter: 267 mm }' },
    then: 'silent',
  },
  {
    when: 'a pancake is wider than the reel that came in its box',
    given: { 'reels/a': 'pack: { wound-on: bare hub, reel-size: 7 in, outside-diameter: 260 mm }' },
    then: 'silent',
  },
]);
