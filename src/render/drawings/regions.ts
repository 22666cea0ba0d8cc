import { html, type Markup } from '../markup.ts';
import type { NumberedReading } from '../views/regions.ts';
import { keyWords } from '../words/keys.ts';
import { placeTags } from './region-tags.ts';

/** A link needs 24 px to be touched (WCAG 2.2, 2.5.8); on the narrowest screen a smaller region is only framed, and the
 * number in the list is the way in. */
const LEAST_PERCENT = 5;

/** The regions that were read, as frames over the photograph, each a link to its reading, with its number beside it.
 *
 * @param aspect  width over height of the photograph.
 */
export function drawRegions(readings: readonly NumberedReading[], aspect: number): Markup | undefined {
  const framed = readings.flatMap((one) => {
    const region = one.reading.region?.value;
    return region === undefined ? [] : [{ ...one, region }];
  });
  if (framed.length === 0) return undefined;
  const tags = placeTags(
    framed.map((one) => one.region),
    aspect,
  );
  const drawn = framed.map(({ number, reading, region }, index) => {
    const tag = tags[index];
    const [x, y, width, height] = [region.xPercent, region.yPercent, region.widthPercent, region.heightPercent].map(
      round,
    );
    const frame = html`<rect class="ln" x="${x}%" y="${y}%" width="${width}%" height="${height}%"/><rect class="fr" x="${x}%" y="${y}%" width="${width}%" height="${height}%"/><svg x="${tag?.xPercent}%" y="${tag?.yPercent}%" class="tag"><rect class="tg" width="18" height="16"/><text x="9" y="12">${number}</text></svg>`;
    if (region.heightPercent < LEAST_PERCENT || region.widthPercent < LEAST_PERCENT)
      return html`<g class="rg" id="r${number}" data-region="${number}">${frame}</g>`;
    return html`<a class="rg" id="r${number}" href="#e${number}" data-region="${number}" aria-label="Region ${number}, ${keyWords(reading.of.value)}: to its reading">${frame}</a>`;
  });
  return html`<svg class="regions" role="group" aria-label="Regions that were read">${drawn}</svg>`;
}

const round = (percent: number) => Math.round(percent * 1000) / 1000;
