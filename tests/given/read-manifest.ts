/** The parts of a manifest that the tests follow, as a viewer would read them from the file (IIIF Presentation API 3.0,
 * section 5). What a test says of any other part it asks of the text. */
export interface ReadManifest {
  readonly id: string;
  readonly label: { readonly none: readonly string[] };
  readonly items: readonly [ReadCanvas, ReadCanvas];
  readonly rights?: string;
  readonly requiredStatement: { readonly value: { readonly en: readonly string[] } };
  readonly metadata: unknown;
}

interface ReadCanvas {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly [{ readonly items: readonly [object] }];
  readonly annotations: readonly [{ readonly items: readonly [ReadAnnotation, ReadAnnotation] }];
}

interface ReadAnnotation {
  readonly target: string;
  readonly body: readonly { readonly value: string }[];
}
