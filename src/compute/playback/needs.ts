import type { Fact } from '#model/fact.ts';
import type { MachineNeeds, PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { constantsInWords } from '../equalisation/time-constants.ts';
import { tapeCurve } from './curve-fit.ts';
import { NOT_RECORDED } from './reason.ts';

/** What any machine must have to play this reel; a fact that isn't recorded is named as such, never left out. */
export function machineNeeds(reel: Reel): MachineNeeds['needs'] {
  const { width, tracks, speed, equalisation, noiseReduction, direction } = reel.format;
  const { woundOn, reelSize, outsideDiameter } = reel.pack;
  const bare = woundOn?.is === 'known' && woundOn.value === 'bare hub';
  const curve = tapeCurve(reel);
  const constants = 'why' in curve ? '' : `, ${constantsInWords(curve)}`;
  const both = direction?.is === 'known' && direction.value === 'both' ? ', recorded in both directions' : '';
  return [
    need('width', width),
    need('tracks', tracks, both),
    need('speed', speed),
    { ...need('equalisation', equalisation, constants), known: !('why' in curve) },
    need('carrier', woundOn, bare ? ', with a plate and adaptor' : ''),
    need('size', bare ? outsideDiameter : reelSize),
    noiseReduction?.is === 'none'
      ? { of: 'noise reduction', needs: 'none', known: true }
      : need('noise reduction', noiseReduction),
  ];
}

function need(of: PlayingReason['of'], fact: Fact<unknown> | undefined, more = ''): MachineNeeds['needs'][number] {
  return fact?.is === 'known'
    ? { of, needs: `${fact.written}${more}`, known: true }
    : { of, needs: NOT_RECORDED, known: false };
}
