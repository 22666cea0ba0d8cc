import { CAUTIONS } from '#model/cautions.ts';
import { crossCheck } from '../check.ts';

/** A pancake of a tape without a back coat: its turns slide, and nothing holds them. */
export const bareHub = crossCheck({
  code: 'stock/bare-hub',
  title: 'A pancake of a stock without a back coat',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'stock', 'woundOn', 'backCoated'],
  judge: ({ reel, stock, woundOn, backCoated }) => {
    if (woundOn.value !== 'bare hub' || backCoated.value) return [];
    return [
      {
        place: woundOn.place,
        message: 'The tape is on a bare hub, and its stock has no back coat to hold the turns.',
        found: `${woundOn.written}; back-coated: ${backCoated.written}`,
        expected: 'a reel with flanges, or a back-coated stock (AES49-2005 section 4.5.5, from memory)',
        action: `Leave it lying flat, and have it put on a reel by someone who does this weekly, when it is next played. Check the stock first: a back coat shows as a dull dark side. ${CAUTIONS.pancake}`,
        related:
          stock.file <= reel.file ? [{ message: `${stock.title.written}: no back coat`, place: backCoated.place }] : [],
      },
    ];
  },
});
