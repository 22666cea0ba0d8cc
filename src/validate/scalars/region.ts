import type { Region } from '#model/region.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';

const NUMBER = String.raw`(\d{1,6}(?:\.\d{1,6})?)`;
const PERCENT = new RegExp(`^xywh=percent:${NUMBER}, ?${NUMBER}, ?${NUMBER}, ?${NUMBER}$`, 'u');
const PIXELS = new RegExp(`^xywh=(?:pixel:)?${NUMBER},${NUMBER},${NUMBER},${NUMBER}$`, 'u');
const FORM = 'xywh=percent:12,40,30,8';

/** A hair over 100 may come from rounding at the desk and isn't outside. */
const SLACK = 1e-9;

/** A region of a photograph in percent: W3C Media Fragments 1.0, section 4.2.2; here decimals are read too. */
export function parseRegion(text: string): Parsed<Region> {
  const numbers = PERCENT.exec(text)?.slice(1).map(Number);
  if (numbers === undefined) return refuse(text);
  const [xPercent = 0, yPercent = 0, widthPercent = 0, heightPercent = 0] = numbers;
  if (widthPercent === 0 || heightPercent === 0) {
    return refused('The region has no width or no height.', FORM, 'Draw it again round what was read.');
  }
  if (xPercent + widthPercent > 100 + SLACK || yPercent + heightPercent > 100 + SLACK) {
    const edge = xPercent + widthPercent > 100 + SLACK ? 'right-hand' : 'lower';
    return refused(
      `The region goes past the picture's ${edge} edge.`,
      'a left edge and a width that together stay within 100, and a top edge and a height that do',
      'Draw it again within the picture: left edge, top edge, width and height, each in percent of the picture.',
      'photo/region-outside',
    );
  }
  return parsed({ xPercent, yPercent, widthPercent, heightPercent });
}

function refuse(text: string) {
  if (PIXELS.test(text)) {
    return refused(
      'Without "percent:" a region counts pixels, which change with the copy of the picture.',
      FORM,
      'Write it in percent of the width and height.',
    );
  }
  const action = 'Write xywh=percent: and then left edge, top edge, width and height, with commas between.';
  return refused(`${quoted(text)} isn't the form of a region.`, FORM, action);
}
