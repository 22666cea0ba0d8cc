import type { Given } from '#model/given.ts';
import { type Worked, type WorkedInput, worstBasis } from '#model/worked.ts';
import { type Band, extremes } from './extremes.ts';

/** What a calculation says of itself, the same for any inputs. */
export interface Recipe {
  readonly name: string;
  readonly unit: string;
  readonly formula: string;
  readonly source: string;
}

type GivenEach<Quantities extends readonly number[]> = readonly Given[] & {
  readonly [Index in keyof Quantities]: Given<Quantities[Index]>;
};

/** A figure with all that it rests on: value, the band that the inputs' errors leave, inputs, formula and source.
 *
 * An error that the program supplied stands among the inputs by itself, as `assumed`; it widens the band and doesn't
 * make the value worse. `low` and `high` are left out when every input is exact.
 *
 * @param figure  takes the inputs' values in their order; no size goes below 0 at the low end of its band.
 * @param show    from our unit to the unit that is shown.
 */
export function workOut<Quantities extends readonly number[]>(
  recipe: Recipe,
  inputs: GivenEach<Quantities>,
  figure: (...values: Quantities) => number,
  show: (value: number) => number = (value) => value,
): Worked {
  // The values come in the order of the inputs, each in its own unit.
  const worth = (...values: number[]) => show(figure(...(values as unknown as Quantities)));
  const value = worth(...inputs.map((input) => input.value));
  const [low, high] = extremes(inputs.map(bandOf), worth);
  const banded = inputs.some((input) => (input.plusMinus ?? 0) > 0) && Number.isFinite(low) && Number.isFinite(high);
  const stated = inputs.map(asInput);
  return {
    name: recipe.name,
    value,
    ...(banded ? { low, high } : {}),
    unit: recipe.unit,
    basis: worstBasis(stated),
    inputs: [...stated, ...inputs.flatMap(assumedError)],
    formula: recipe.formula,
    source: recipe.source,
  };
}

function bandOf({ value, plusMinus = 0 }: Given): Band {
  return [value >= 0 ? Math.max(0, value - plusMinus) : value - plusMinus, value + plusMinus];
}

const asInput = ({ name, written, basis, place }: Given): WorkedInput =>
  place === undefined ? { name, written, basis } : { name, written, basis, place };

const assumedError = ({ name, errorAssumed }: Given): WorkedInput[] =>
  errorAssumed === undefined ? [] : [{ name: `error of ${name}`, written: errorAssumed, basis: 'assumed' }];
