import { CAUTIONS } from '#model/cautions.ts';
import type { ConditionFacts } from '#model/condition-facts.ts';
import type { Outcome } from '#model/finding.ts';
import { shedInWords } from './shed-marks.ts';

/** Whether a tape may be baked at all. There is no answer that says “bake it”: that is for someone who has done it. */
export interface BakePermission {
  readonly answer: 'never' | 'may be considered' | 'no reason to' | 'not known';
  readonly outcome: Outcome;
  readonly because: string;
  readonly action: string;
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
}

const NEVER_SOURCES: Readonly<Record<'acetate' | 'paper' | 'PVC', string>> = {
  acetate: 'IASA-TC 05; ARSC list, June 2005: bake only polyester tapes, not acetates',
  paper: 'from memory',
  PVC: 'from memory',
};

const SHED_SIGNS = new Set(['sticky', 'shedding', 'squeal']);
const ASK = 'Ask an experienced transfer engineer, with this sheet in hand, before anything is heated.';

/** May this tape be baked? An unknown base is a no: find the base first. A polyester tape may be considered for it when
 * it sheds, or has the marks of those that do.
 * Source: on the row of each base; the marks in shed-marks.ts. */
export function bakePermission(facts: Pick<ConditionFacts, 'base' | 'shedMarks' | 'signs'>): BakePermission {
  const { base, shedMarks, signs } = facts;
  const cautions = [CAUTIONS.heat, CAUTIONS.playing];
  if (base === undefined) {
    return {
      answer: 'never',
      outcome: 'not-recorded',
      because: 'Its base isn’t known, and heat destroys every base but polyester.',
      action: 'Find the base first: from the box, from the stock, or by someone who can tell it from the tape’s end.',
      cautions,
      sources: ['follows from the rules for acetate and paper; common practice'],
    };
  }
  if (base !== 'polyester') {
    return {
      answer: 'never',
      outcome: 'at-risk',
      because: `Its base is ${base}: heat destroys it.`,
      action: 'Leave it unheated, and ask a specialist for another way to a copy.',
      cautions,
      sources: [NEVER_SOURCES[base]],
    };
  }
  const sources = ['a trade column of October 1995, two makers’ engineers', 'IASA-TC 05, marks of stocks that shed'];
  const seen = signs.find((one) => SHED_SIGNS.has(one.sign));
  if (seen !== undefined) {
    return {
      answer: 'may be considered',
      outcome: 'at-risk',
      because: `Its base is polyester, and it was found ${inWords(seen.sign)}.`,
      action: ASK,
      cautions,
      sources,
    };
  }
  if (shedMarks === undefined) {
    return {
      answer: 'not known',
      outcome: 'not-recorded',
      because:
        'Its base is polyester; whether its stock is of those that shed isn’t recorded, and no sign of it was seen.',
      action: 'Record the stock’s binder, back coat and years, or have the tail end looked at.',
      cautions,
      sources,
    };
  }
  if (shedMarks.are === 'absent') {
    return {
      answer: 'no reason to',
      outcome: 'clear',
      because: `It has no mark of the stocks that shed (${shedMarks.because}), and no sign of it was seen.`,
      action: 'Leave it unbaked. If it squeals all the same, stop and ask: other troubles squeal too.',
      cautions,
      sources,
    };
  }
  return {
    answer: 'may be considered',
    outcome: 'at-risk',
    because: shedInWords(shedMarks),
    action: ASK,
    cautions,
    sources,
  };
}

const inWords = (sign: string) => (sign === 'squeal' ? 'to squeal' : sign);
