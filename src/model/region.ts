/** A part of a photograph, in percent of its width and height (W3C Media Fragments, `xywh=percent:`). */
export interface Region {
  readonly xPercent: number;
  readonly yPercent: number;
  readonly widthPercent: number;
  readonly heightPercent: number;
}
