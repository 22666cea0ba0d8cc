import type { Basis, Known } from '#model/fact.ts';
import type { Given } from '#model/given.ts';
import type { Measure, Millimetres } from '#model/units.ts';

/** A stated fact, handed to a calculation under the name that its page shows. */
export function givenOf<Q extends number>(name: string, fact: Known<Q>, basis: Basis = 'stated'): Given<Q> {
  return { name, value: fact.value, written: fact.written, basis, place: fact.place };
}

/** A measured fact, with the error that it was written with, if it was. */
export function givenOfMeasure<Q extends number>(name: string, fact: Known<Measure<Q>>, basis: Basis): Given<Q> {
  const { value, plusMinus } = fact.value;
  const given = { name, value, written: fact.written, basis, place: fact.place };
  return plusMinus === undefined ? given : { ...given, plusMinus };
}

/** A diameter that someone held a rule to. */
export const measured = (name: string, fact: Known<Measure<Millimetres>>): Given<Millimetres> =>
  givenOfMeasure(name, fact, 'measured');
