import type { CalculationForm } from '#model/calculation-form.ts';
import type { Day } from '#model/dates.ts';
import { CALCULATIONS_OF_VALUES } from './calculations.ts';
import { workOutForm } from './work-out-form.ts';

/** Headings, and what stands in a form at first where a key's own form won't do; `''` leaves it empty. */
const SHOWN: readonly {
  readonly name: string;
  readonly group: string;
  readonly title: string;
  readonly example?: Readonly<Record<string, string>>;
}[] = [
  { name: 'tape-length', group: 'Tape and time', title: 'How long is a pack?', example: { duration: '', speed: '' } },
  { name: 'pack-diameter', group: 'Tape and time', title: 'How wide will a pack be?' },
  { name: 'playing-time', group: 'Tape and time', title: 'How long does a length play?' },
  {
    name: 'duration-sum',
    group: 'Tape and time',
    title: 'What do the titles come to?',
    example: { duration: '4:10; 3:36; 2:58', gap: '3 s' },
  },
  {
    name: 'replay-difference',
    group: 'Curves and cutting',
    title: 'Recorded with one curve, played with another',
    example: { recorded: '15 in/s NAB', replayed: '15 in/s IEC', frequency: '63', year: '' },
  },
  { name: 'transition-frequency', group: 'Curves and cutting', title: 'Where does a time constant turn?' },
  {
    name: 'half-speed',
    group: 'Curves and cutting',
    title: 'Cut at half speed',
    example: { equalisation: 'AES', year: '' },
  },
  { name: 'groove-pitch', group: 'Curves and cutting', title: 'Does the side fit?' },
  { name: 'print-through-frequency', group: 'Noise', title: 'Where is print-through worst?' },
  {
    name: 'noise-after-copies',
    group: 'Noise',
    title: 'Noise after copies',
    example: { 'signal-to-noise': '65; 65; 65' },
  },
  { name: 'storage-years', group: 'Keeping', title: 'Rooms compared' },
  { name: 'dew-point', group: 'Keeping', title: 'When does water form on a cold tape?' },
  { name: 'bake-window', group: 'Keeping', title: 'Until when after a bake?' },
  { name: 'number', group: 'What is written', title: 'A number taken apart' },
  { name: 'date', group: 'What is written', title: 'Which days can a date mean?' },
];

/** Every calculation as a form with an example that is worked out already, so that the page reads without a script.
 * On one day it is the same each time, and worked out once: a site that is being served asks after each edit.
 * @param today  stands for the clock, so that the same catalogue gives the same page. */
export function calculationForms(today: Day): Promise<readonly CalculationForm[]> {
  if (last?.today !== today) last = { today, forms: makeForms(today) };
  return last.forms;
}

let last: { readonly today: Day; readonly forms: Promise<readonly CalculationForm[]> } | undefined;

async function makeForms(today: Day): Promise<readonly CalculationForm[]> {
  const around = { cwd: '', now: new Date(`${today}T06:00:00`) };
  const byName = new Map(CALCULATIONS_OF_VALUES.map((calculation) => [calculation.name, calculation]));
  return await Promise.all(
    SHOWN.map(async ({ name, group, title, example = {} }) => {
      const calculation = byName.get(name);
      if (calculation === undefined) throw new Error(`fault: there is no calculation ${name} to show`);
      const keys = calculation.keys.map((key) => ({
        name: key.name,
        form: key.form,
        optional: key.optional === true,
        together: key.together === true,
        example: example[key.name] ?? key.form,
      }));
      const typed = new Map(keys.map((key) => [key.name, key.example]));
      return { name, group, title, keys, answer: await workOutForm(calculation, typed, around) };
    }),
  );
}
