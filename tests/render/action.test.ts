import { expect, test } from 'vitest';
import { CAUTIONS } from '#model/cautions.ts';
import { actionParts } from '#render/words/action.ts';

test('the cautions in what a problem asks for stand apart from it, each once', () => {
  const action = `Look at it first. ${CAUTIONS.heat} ${CAUTIONS.playing} Source: a handbook. ${CAUTIONS.heat}`;
  expect(actionParts(action)).toEqual({
    advice: 'Look at it first. Source: a handbook.',
    cautions: [CAUTIONS.heat, CAUTIONS.playing],
  });
});
test('what has no caution in it stays as it is', () => {
  expect(actionParts('Look again.')).toEqual({ advice: 'Look again.', cautions: [] });
});
