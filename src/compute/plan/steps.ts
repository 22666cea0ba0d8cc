import type { PlanMachine, PlanReel } from '#model/plan.ts';

/** What to do with a reel, in the order of the bench. */
export function stepsFor(reel: PlanReel, machine: PlanMachine | undefined): readonly string[] {
  return [
    ...splices(reel),
    ...(reel.carrier === 'bare hub'
      ? ['Pancake: flat between rigid plates, hub supported, from box to machine and back; never by the edge.']
      : []),
    ...wind(reel),
    ...tones(reel),
    ...noise(reel),
    ...(reel.runs === 2 ? ['Recorded in both directions: two runs, turned over between them.'] : []),
    ...(machine?.verdict === 'plays with care' ? machine.says : []),
  ];
}

function splices({ splices: { says, known } }: PlanReel): readonly string[] {
  if (!known) return ['Splices aren’t recorded: look for them on the slow wind, and stop at each.'];
  return says === 'none'
    ? []
    : [`Look at these splices first: ${says}. A dry one is mended before it runs, by someone who does it weekly.`];
}

function wind({ wind: { says, known } }: PlanReel): readonly string[] {
  if (!known) return ['Which end is outside isn’t recorded: look at leader and tones before it is threaded.'];
  if (says === 'tail out')
    return ['Tail out: wind it to its head once, slowly and just before it is played; play, and leave it tail out.'];
  return ['Head out: play, and leave it tail out; don’t rewind.'];
}

function tones({ tones: own, level }: PlanReel): readonly string[] {
  const level_ = level.known ? level.says : 'level not recorded';
  if (!own.known) return [`Whether it has tones isn’t recorded: listen for them; else a calibration tape, ${level_}.`];
  if (own.says === 'none')
    return [
      `No tones: line up from a calibration tape of the same curve; ${level_}. Azimuth by ear, at the tape’s own top end.`,
    ];
  return [`Line up to its own tones (${own.says}; ${level_}); azimuth by the highest.`];
}

function noise({ noiseReduction: { says, known } }: PlanReel): readonly string[] {
  if (!known) return ['Noise reduction isn’t recorded: capture undecoded, and write that down.'];
  return says === 'none' ? [] : [`${says}: capture undecoded; decode afterwards, at the level of its tones.`];
}
