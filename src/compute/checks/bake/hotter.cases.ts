import { casesOf } from '../cases.ts';
import { hotter } from './hotter.ts';

const bake = (temperature: string) => ({
  'stocks/brown': 'base: polyester',
  'reels/a': `stock: brown\nhandling: [{ what: bake, on: "2026-03-10", temperature: ${temperature} }]`,
});

/** 60 °C is the hottest published (an engineer's articles; a maker's "never above"), 65 is past it: published rows. */
export const cases = casesOf(hotter, [
  {
    when: 'it was 65 °C',
    given: bake('65 °C'),
    then: 'fires',
    severity: 'warning',
    says: ['65 °C', '60 °C', 'domestic oven'],
  },
  {
    when: 'a Fahrenheit figure was written as Celsius',
    given: bake('130 °C'),
    then: 'fires',
    says: '°F written as °C',
  },
  {
    when: 'a hot one is planned',
    given: { 'reels/a': 'handling: [{ what: bake, temperature: 70 °C, planned: yes }]' },
    then: 'fires',
    says: 'planned',
  },
  { when: 'it was 60 °C, the hottest practice', given: bake('60 °C'), then: 'silent' },
  { when: 'it was 130 °F', given: bake('130 °F'), then: 'silent' },
  {
    when: 'its heat wasn’t recorded',
    given: { 'reels/a': 'handling: [{ what: bake, duration: 8 h }]' },
    then: 'silent',
  },
  { when: 'it was never baked', given: { 'reels/a': 'handling: [{ what: play, on: "2025" }]' }, then: 'silent' },
]);
