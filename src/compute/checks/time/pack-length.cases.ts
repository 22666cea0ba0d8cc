import { casesOf } from '../cases.ts';
import { packLength } from './pack-length.ts';

const STOCK = { 'stocks/norda': 'thickness: 52 µm' };
const THIN = { 'stocks/norda': 'thickness: 35 µm' };

export const cases = casesOf(packLength, [
  {
    when: 'the pack holds half of what the stated speed needs',
    given: {
      ...STOCK,
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        pack: { outside-diameter: 195 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'fires',
    says: ['862.6 m', '15 in/s', /pack agrees with 15 in\/s/],
    severity: 'warning',
  },
  {
    when: 'the pack is a third short, as it would be of thinner tape',
    given: {
      ...STOCK,
      'reels/a': `
        length: "30:00"
        format: { speed: 15 in/s }
        pack: { outside-diameter: 201 mm ± 1 mm, hub-diameter: 100 mm ± 1 mm }
        stock: norda`,
    },
    then: 'fires',
    says: [/36 µm|35 µm/, 'long play'],
  },
  {
    // C-218: 260 mm over 100 mm at 52 µm can hold 18:52 at 30 in/s.
    when: 'the pack agrees with the stated speed',
    given: {
      ...STOCK,
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        pack: { outside-diameter: 260 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
    when: 'the pack is short by less than a rule can tell',
    given: {
      ...STOCK,
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        pack: { outside-diameter: 258.5 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
    when: 'a long-play stock puts the same time on a smaller pack',
    given: {
      ...THIN,
      'reels/a': `
        length: "30:00"
        format: { speed: 15 in/s }
        pack: { outside-diameter: 201 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
    when: 'a half-track tape is recorded both ways, and its label states both sides together',
    given: {
      ...STOCK,
      'reels/a': `
        length: "64:00"
        side: ["1", "2"]
        format: { speed: 7.5 in/s, tracks: half-track mono, direction: both }
        pack: { outside-diameter: 178 mm, hub-diameter: 57 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
    when: 'the stock’s thickness isn’t recorded',
    given: {
      'stocks/norda': 'base: polyester',
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        pack: { outside-diameter: 195 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
    when: 'the hub is written as the pack and the pack as the hub',
    given: { 'reels/a': 'pack: { outside-diameter: 100 mm, hub-diameter: 260 mm }' },
    then: 'fires',
    says: ['changed places', '260 mm'],
  },
  {
    when: 'a few turns are all that is on the hub',
    given: { 'reels/a': 'pack: { outside-diameter: 104 mm, hub-diameter: 100 mm }' },
    then: 'silent',
  },
]);
