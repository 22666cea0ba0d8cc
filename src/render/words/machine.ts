import type { MachineState } from '#model/words.ts';
import { mark, notRecorded } from '../marks.ts';
import type { Markup } from '../markup.ts';

export function machineState(state: MachineState | undefined): Markup {
  if (state === undefined) return notRecorded();
  if (state === 'working') return mark('clear', state);
  return state === 'needs work' ? mark('cannot', state) : notRecorded(state);
}
