import type { ClimateSummary } from '#model/climate.ts';
import { notRecorded } from '../marks.ts';
import { html, type Markup } from '../markup.ts';
import { decimal } from './number.ts';

/** What a log comes to, in a line: means and extremes of both. */
export function climateWords(climate: ClimateSummary | undefined): Markup {
  if (climate === undefined) return notRecorded('no log');
  const { meanC, lowC, highC, meanPercent, lowPercent, highPercent } = climate;
  return html`${decimal(meanC, 1)} °C (${decimal(lowC, 1)} to ${decimal(highC, 1)}), ${decimal(meanPercent, 0)} % (${decimal(lowPercent, 0)} to ${decimal(highPercent, 0)})`;
}
