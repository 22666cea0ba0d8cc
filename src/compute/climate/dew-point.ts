import type { Given } from '#model/given.ts';
import { type Celsius, celsius, type Percent } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';

/** Magnus constants over water. Source: WMO Guide to Meteorological Instruments (WMO-No. 8), Annex 4.B. Other published
 * pairs differ by 0.02 °C and less above freezing. */
const A = 17.62;
const B_CELSIUS = 243.12;

/** The temperature at which water begins to form on things in this air.
 *
 *      γ = ln(RH/100) + a·T/(b+T);   Td = b·γ/(a−γ)
 *
 * Over water also below 0 °C, where frost forms at a higher temperature than this (up to 3 K).
 *
 * @param humidityPercent  over 0; dry air has no dew point.
 */
export function dewPoint(temperatureC: Celsius, humidityPercent: Percent): Celsius {
  const gamma = Math.log(humidityPercent / 100) + (A * temperatureC) / (B_CELSIUS + temperatureC);
  return celsius((B_CELSIUS * gamma) / (A - gamma));
}

/** Whether water forms on a tape of this temperature when it is brought into the room: keep it in its closed bag. */
export const condensesOn = (tapeC: Celsius, roomC: Celsius, humidityPercent: Percent): boolean =>
  tapeC < dewPoint(roomC, humidityPercent);

export function workedDewPoint(temperature: Given<Celsius>, humidity: Given<Percent>): Worked {
  return workOut(
    {
      name: 'dew-point',
      unit: '°C',
      formula: 'γ = ln(RH/100) + 17.62·T/(243.12 + T); Td = 243.12·γ/(17.62 − γ)',
      source: 'Magnus formula over water, WMO-No. 8, Annex 4.B; other published constants differ by 0.02 to 0.05 °C',
    },
    [temperature, humidity],
    dewPoint,
  );
}
