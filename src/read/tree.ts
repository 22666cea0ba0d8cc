import type { Place } from '#model/place.ts';

/** A text in the front matter. Nothing in it is taken for a number, a date or a yes: the schemas decide. */
export interface Scalar {
  readonly is: 'scalar';
  readonly text: string;
  readonly place: Place;
}

/** A map. A key with nothing behind it has the value undefined, which is how a missing key looks too. */
export interface Branch {
  readonly is: 'map';
  /** Without a prototype, so that no key is taken for an inherited one. */
  readonly fields: Readonly<Record<string, Node | undefined>>;
  readonly keyPlaces: ReadonlyMap<string, Place>;
  readonly place: Place;
}

interface List {
  readonly is: 'list';
  readonly items: readonly (Node | undefined)[];
  readonly place: Place;
}

export type Node = Scalar | Branch | List;
