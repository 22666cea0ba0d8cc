import { casesOf } from '../cases.ts';
import { packLonger } from './pack-longer.ts';

const STOCK = { 'stocks/norda': 'thickness: 52 µm' };

export const cases = casesOf(packLonger, [
  {
    // C-218: at 15 in/s more than half of the pack is left unexplained; 30 in/s would agree.
    when: 'the pack is as long as twice the stated speed needs',
    given: {
      ...STOCK,
      'reels/a': `
        length: "18:52"
        format: { speed: 15 in/s, direction: one }
        pack: { outside-diameter: 260 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'fires',
    says: ['30 in/s', '431.3 m', /[Ll]eader, tones/],
    severity: 'note',
  },
  {
    when: 'the pack is as long as 15 in/s needs, and the label says 7½',
    given: {
      ...STOCK,
      'reels/a': `
        length: "20:00"
        format: { speed: 7.5 in/s, tracks: two-track stereo }
        pack: { outside-diameter: 200 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'fires',
    says: ['15 in/s'],
  },
  {
    when: 'tones, leader and a blank tail make the pack a third longer',
    given: {
      ...STOCK,
      'reels/a': `
        length: "14:00"
        format: { speed: 30 in/s, direction: one, tones: [1 kHz] }
        pack: { outside-diameter: 260 mm, hub-diameter: 100 mm }
        stock: norda`,
    },
    then: 'silent',
  },
  {
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
    when: 'a short single was left on a full reel of tape',
    given: {
      ...STOCK,
      'reels/a': `
        length: "3:10"
        format: { speed: 15 in/s, direction: one }
        pack: { outside-diameter: 252 mm, hub-diameter: 114.3 mm }
        stock: norda`,
    },
    then: 'silent',
  },
]);
