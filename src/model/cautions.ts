/** What must be printed wherever the advice stands that it belongs to. Local codes and licensed or experienced practice
 * come before any of it. */
export const CAUTIONS = {
  heat: 'Heat: never heat acetate, paper or PVC base, nor a tape whose base isn’t known. A domestic oven overshoots, has hot spots and open elements, and can set tape or box alight or burn a person. Use an incubator or food dehydrator with its own tested thermostat and an independent thermometer at the tape, keep a smoke alarm and a clear way out, and never leave it unattended. Mains equipment follows local codes. Bake only what must be played, after an experienced transfer engineer has agreed. Heat is a way to make one copy, not a cure, and it raises print-through.',
  mould:
    'Mould: spores harm lungs. Don’t open, wind, brush or blow a mouldy tape. Isolate it in a paper-lined bag, wear a fitted respirator and gloves, and give it to a specialist. People with asthma or weak immunity keep away.',
  vinegar:
    'Acetic vapour: decaying acetate gives off acid that attacks other tapes and irritates eyes, skin and airways. Ventilate, set it apart from other reels, keep it cool, copy it soon.',
  solvents:
    'Solvents: isopropyl and others are flammable and can dissolve binder, rubber, inks and acetate. Small amounts, ventilation, gloves, no flame, and never on the tape itself without advice.',
  blades:
    'Blades: splicing blades are scalpels. Cut away from the tape and the hand, cap them, and put the knife down when the box is open.',
  playing:
    'Playing: don’t fast-wind or “just try” a tape that squeals, sticks or sheds. Stop, and leave it as it lies. What may be the only copy is played once, by the most experienced hands at hand, and captured.',
  pancake:
    'Pancake: no flanges hold it. Carry it flat, between rigid plates, hub supported, never by the edge and never on edge. A dropped pancake is a heap.',
  handling: 'Handling: clean dry hands or lint-free gloves. Hold a reel by its hub, and never squeeze the flanges.',
  lifting: 'Lifting: a carton of fifteen 10½ in reels weighs over 15 kg. Lift with two, store low.',
  cold: 'From a cold store to a warm room: leave it in its closed bag until it has the room’s temperature, so that no water forms on it. A few hours to a day; sources differ.',
  mains: 'Mains: machines hold dangerous voltages after the plug is out. Covers stay on unless you are qualified.',
} as const satisfies Readonly<Record<string, string>>;

export type Caution = keyof typeof CAUTIONS;
