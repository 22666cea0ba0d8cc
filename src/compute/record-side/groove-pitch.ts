import type { Given } from '#model/given.ts';
import { asInches, type Millimetres, millimetres, type RevolutionsPerMinute, type Seconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { durationWithError } from '../figure/assumed-error.ts';
import { workOut } from '../figure/work-out.ts';

/** Turns of the groove in a side: minutes × rpm. The same at half speed, where both are halved and doubled. */
export const grooves = (durationS: Seconds, rpm: RevolutionsPerMinute): number => (durationS / 60) * rpm;

/** Mean grooves to the inch across the band that a side is cut on. A lathe that varies its pitch has more room in quiet
 * passages. Source: geometry. */
export const linesPerInch = (durationS: Seconds, bandMm: Millimetres, rpm: RevolutionsPerMinute): number =>
  grooves(durationS, rpm) / asInches(bandMm);

/** Mean distance from one groove to the next. */
export const groovePitch = (durationS: Seconds, bandMm: Millimetres, rpm: RevolutionsPerMinute): Millimetres =>
  millimetres(bandMm / grooves(durationS, rpm));

const SOURCE = 'geometry: grooves = minutes × rpm; lines per inch = grooves / width of the cut';

export interface WorkedPitch {
  readonly linesPerInch: Worked;
  readonly grooves: Worked;
  readonly pitch: Worked;
}

export function workedPitch(
  side: Given<Seconds>,
  width: Given<Millimetres>,
  speed: Given<RevolutionsPerMinute>,
): WorkedPitch {
  const duration = durationWithError(side);
  const recipe = { name: 'groove-pitch', source: SOURCE };
  return {
    linesPerInch: workOut(
      { ...recipe, unit: 'lines per inch', formula: 'n = t·rpm; lines per inch = n / width' },
      [duration, width, speed],
      linesPerInch,
    ),
    grooves: workOut({ ...recipe, unit: 'grooves', formula: 'n = t·rpm' }, [duration, speed], grooves),
    pitch: workOut({ ...recipe, unit: 'mm', formula: 'pitch = width / n' }, [duration, width, speed], groovePitch),
  };
}
