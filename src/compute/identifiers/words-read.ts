import type { CurveName } from '#model/equalisation.ts';
import type { Kind, TrackFormat } from '#model/words.ts';
import { likeliestText, parseReading, type ReadPart } from './reading-pattern.ts';

/** What a label's text says where it counts: of a printed form only what stands by a ticked box, up to the next box or
 * line, else the whole. Lower case, points left out, so that `I.E.C.` is `iec`. Undefined where it can't be told: an
 * unread character, a form with no box ticked, or a "not" that turns the rest about. */
export function saidOnLabel(read: string): string | undefined {
  const pattern = parseReading(read);
  if (!pattern.ok || pattern.parts.some((part) => part.is === 'character' && part.doubt !== 'none')) return undefined;
  const texts = countingTexts(pattern.parts);
  const text = texts.join(' | ').toLowerCase().replaceAll('.', '');
  return text.trim() === '' ? undefined : text;
}

/** The stretches of a reading that count, each on its own. */
export function countingTexts(parts: readonly ReadPart[]): readonly string[] {
  if (!parts.some((part) => part.is === 'box')) return [likeliestText(parts)];
  return parts.flatMap((part, at) => {
    if (part.is !== 'box' || !part.ticked) return [];
    const end = parts.findIndex((next, index) => index > at && next.is !== 'character');
    return [likeliestText(parts.slice(at + 1, end < 0 ? undefined : end))];
  });
}

const NEGATED = /\b(not|no|non|without|never)\b/;
const has = (text: string, words: RegExp) => words.test(text);

/** Any copy may be called a copy: the word alone says no more. */
const COPIES: readonly Kind[] = ['copy master', 'safety copy', 'cutting master', 'production master', 'running master'];

const KIND_WORDS: readonly (readonly [RegExp, readonly Kind[]])[] = [
  [/\bsession\b|\bmulti-?track\b/, ['session tape']],
  [/\boriginal\b/, ['original master', 'session tape']],
  [/\bproduction\b/, ['production master']],
  [/\bcutting\b|\blacquer\b|\bdisc master\b/, ['cutting master']],
  [/\bsafety\b/, ['safety copy']],
  [/\brunning\b|\bduplicating\b/, ['running master']],
  [/\bcopy\b|\bdub\b|\bdubbing\b/, COPIES],
];

/** Whether a label's words can mean this kind of tape. "Master" alone allows any. */
export function kindIsRead(read: string, kind: Kind): boolean {
  const text = saidOnLabel(read);
  if (text === undefined || has(text, NEGATED)) return true;
  const named = KIND_WORDS.filter(([words]) => has(text, words)).flatMap(([, kinds]) => kinds);
  return named.length === 0 || named.includes(kind);
}

/** Names that one label and another give one curve, at one speed or another: those are never held against each other. */
const ONE_CURVE: readonly (readonly CurveName[])[] = [
  ['IEC', 'IEC1', 'CCIR', 'DIN'],
  ['IEC', 'IEC2', 'AES'],
  ['NAB', 'IEC2', 'DIN'],
  ['NAB', 'IEC'],
];

/** Whether a label's words can mean the curve of this name. */
export function curveIsRead(read: string, name: CurveName, speedHasNabAsIec: boolean): boolean {
  const text = saidOnLabel(read);
  if (text === undefined || has(text, NEGATED)) return true;
  const named = [...text.matchAll(/\b(aes|iec[\s-]?[12]?|nab|ccir|din)\b/g)].map(([word]) =>
    word.replaceAll(/[\s-]/g, '').toUpperCase(),
  );
  const families = speedHasNabAsIec ? ONE_CURVE : ONE_CURVE.slice(0, 3);
  return (
    named.length === 0 ||
    named.some(
      (other) => other === name || families.some((row) => row.includes(name) && row.some((one) => one === other)),
    )
  );
}

const MONO: readonly TrackFormat[] = ['full-track mono', 'half-track mono'];

/** Whether a label's words can mean this track format: mono against stereo, full track against quarter. */
export function tracksAreRead(read: string, tracks: TrackFormat): boolean {
  const text = saidOnLabel(read);
  if (text === undefined || tracks === 'other' || has(text, NEGATED)) return true;
  const [mono, stereo] = [has(text, /\bmono(phonic|aural)?\b/), has(text, /\bstereo(phonic)?\b/)];
  const isMono = MONO.includes(tracks);
  if (mono !== stereo && mono !== isMono) return false;
  const full = has(text, /\bfull[\s-]?track\b/);
  const quarter = has(text, /\b(quarter|1\/4|¼|four|4)[\s-]?track\b/);
  if (full && !quarter && tracks !== 'full-track mono') return false;
  return full || !quarter || tracks === 'quarter-track stereo' || tracks === 'half-track mono';
}

const NONE = /^\W*(none|nil|no(ne)?\W*n\W?r|no noise reduction|without)\W*$/;

/** Whether a label's words can mean noise reduction of this name, or none where it is undefined. A name that the label
 * shortens or spells its own way is never held against the entry. */
export function noiseReductionIsRead(read: string, name: string | undefined): boolean {
  const text = saidOnLabel(read);
  if (text === undefined) return true;
  const saysNone = text.split('|').some((part) => NONE.test(part.trim()));
  if (name !== undefined) return !saysNone;
  const ticked = /[☑☒✓✔]|\[x\]/iu.test(read);
  return !ticked || saysNone || has(text, NEGATED);
}
