import { listInWords, withArticle } from '../../figure/in-words.ts';
import { type PairProposal, pairSides } from '../../identifiers/pair.ts';
import { between, crossCheck, type Doubt } from '../check.ts';
import type { NumberedSide } from '../set-sides.ts';

/** More ways to choose a number for each side than this, and none that pairs: the first of each is looked at. */
const MOST_CHOICES = 32;
/** Readings named where several would do. */
const MOST_NAMED = 4;

/** The matrix numbers of a set's sides, which pair when they are consecutive, or equal with side letters. */
export const sidesDiffer = crossCheck({
  code: 'number/sides-differ',
  title: 'The sides’ matrix numbers don’t pair',
  severity: 'note',
  scope: 'set',
  reads: ['numberedSides'],
  judge: ({ numberedSides }): readonly Doubt[] => {
    const choices = choicesOf(numberedSides);
    const pairings = choices.map((sides) => ({ sides, pairing: pairSides(sides.map(asNumber)) }));
    if (pairings.some(({ pairing }) => pairing.pairs)) return [];
    const [first] = pairings;
    if (first === undefined || first.pairing.pairs) return [];
    const { sides, pairing } = first;
    const { proposal } = pairing;
    const views = between(...sides.map((side, index) => viewOf(side, index, sides, proposal)));
    if (proposal !== undefined) {
      return [{ ...views, message: MESSAGE, action: proposedAction(proposal, sides), severity: 'warning' }];
    }
    return [{ ...views, message: MESSAGE, action: openAction(pairing.readings) }];
  },
});

const MESSAGE = 'The sides’ matrix numbers are not a pair.';

const asNumber = ({ side, read }: NumberedSide) => ({ side: side.value, written: read });

/** Every way to take one number for each side. */
function choicesOf(bySide: readonly (readonly NumberedSide[])[]): readonly (readonly NumberedSide[])[] {
  let choices: NumberedSide[][] = [[]];
  for (const numbers of bySide) {
    choices = choices.flatMap((choice) => numbers.map((number) => [...choice, number])).slice(0, MOST_CHOICES);
  }
  return choices;
}

function viewOf(
  { reel, number }: NumberedSide,
  index: number,
  sides: readonly NumberedSide[],
  proposal: PairProposal | undefined,
) {
  const others = sides.filter((_, other) => other !== index);
  const beside = listInWords(others.map((other) => `${other.number.written} on side ${other.side.written}`));
  const changed = proposal === undefined ? undefined : sides[proposal.index];
  const expected =
    proposal === undefined || changed === undefined
      ? `the number after or before, or the same with another side letter, to go with ${beside}`
      : proposal.index === index
        ? `${proposal.gives}, to go with ${beside}`
        : `${number.written} as it is, if ${changed.number.written} on side ${changed.side.written} is ${proposal.gives}`;
  return {
    place: number.place,
    message: `${reel.title.written}: ${number.written}`,
    found: number.written,
    expected,
  };
}

function proposedAction(proposal: PairProposal, sides: readonly NumberedSide[]): string {
  const { read, meant, reason, gives, doubt } = proposal;
  const side = sides[proposal.index]?.side.written ?? '';
  const written = sides[proposal.index]?.number.written ?? '';
  if (doubt === 'unread') {
    return `Look at the photograph of side ${side} again: ${withArticle(meant)} in place of the character that couldn’t be read would make the sides a pair, ${gives}.`;
  }
  return `Look at the photograph of side ${side} again: ${withArticle(meant)} read as ${withArticle(read)} would account for it (${reason}), and make it ${gives}. If the label does say ${written}, accept this with a reason: some houses number sides otherwise.`;
}

function openAction(readings: readonly PairProposal[]): string {
  const gives = [...new Set(readings.map((reading) => reading.gives))];
  if (gives.length === 0) {
    return 'Look at both photographs again. No single misread character would make them a pair, and many houses number sides otherwise: if the labels do say so, accept this with a reason.';
  }
  const named = listInWords(gives.slice(0, MOST_NAMED), 'or');
  return `Look at both photographs again: more than one misread character would make them a pair, such as ${named}. Many houses number sides otherwise: if the labels do say so, accept this with a reason.`;
}
