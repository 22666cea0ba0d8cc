import { el } from './element.ts';
import { type DrawnRegion, fitted, moved, regionWarnings, spanning } from './region.ts';

/** A region that is on the plate already. */
export interface PlateRegion {
  /** The number of its reading. */
  readonly name: string;
  readonly region: DrawnRegion;
  readonly put: (region: DrawnRegion) => void;
}

/** A photograph on which regions are drawn, moved and sized, by mouse, finger or keys. */
export class Plate {
  readonly element: HTMLElement;
  readonly #stage: HTMLElement;
  readonly #image: HTMLImageElement;
  readonly #warnings = el('ul', { class: 'small', role: 'status' });
  readonly #onDrawn: (region: DrawnRegion) => void;
  #regions: { current: DrawnRegion; readonly from: PlateRegion }[] = [];

  constructor(address: string, name: string, onDrawn: (region: DrawnRegion) => void) {
    this.#onDrawn = onDrawn;
    this.#image = el('img', {
      src: address,
      alt: `The photograph ${name}`,
      draggable: 'false',
      onload: () => this.#warn(),
    });
    this.#stage = el('div', { class: 'stage' }, this.#image);
    this.#stage.addEventListener('pointerdown', (event) => this.#draw(event));
    this.element = el('div', {}, this.#stage, this.#warnings);
  }

  /** On a phone a finger on the photograph scrolls, unless drawing is on. */
  set drawing(on: boolean) {
    this.#stage.classList.toggle('drawing', on);
  }

  show(regions: readonly PlateRegion[]): void {
    for (const old of this.#stage.querySelectorAll('.region')) old.remove();
    this.#regions = regions.map((from) => ({ current: from.region, from }));
    for (const one of this.#regions) this.#stage.append(this.#box(one));
    this.#warn();
  }

  focus(name: string): void {
    this.#stage.querySelector<HTMLElement>(`[data-region="${name}"]`)?.focus();
  }

  #box(one: { current: DrawnRegion; readonly from: PlateRegion }): HTMLElement {
    const { name, put } = one.from;
    const label = `Region ${name}: arrows move it, with Shift they size it, with Alt by a tenth of a percent`;
    const box = el(
      'button',
      { type: 'button', class: 'region', 'data-region': name, 'aria-label': label },
      el('span', {}, name),
    );
    const set = (region: DrawnRegion) => {
      one.current = region;
      lay(box, region);
      put(region);
      this.#warn();
    };
    lay(box, one.current);
    box.addEventListener('keydown', (event) => {
      const next = moved(one.current, event.key, event.shiftKey, event.altKey);
      if (next === undefined) return;
      event.preventDefault();
      set(next);
    });
    box.addEventListener('pointerdown', (event) => {
      event.stopPropagation();
      const from = this.#percent(event);
      const start = one.current;
      this.#follow(event, (x, y) => set(fitted({ ...start, x: start.x + x - from.x, y: start.y + y - from.y })));
    });
    return box;
  }

  #draw(event: PointerEvent): void {
    if (event.pointerType !== 'mouse' && !this.#stage.classList.contains('drawing')) return;
    if (event.button !== 0) return;
    event.preventDefault();
    const from = this.#percent(event);
    const draft = el('button', {
      type: 'button',
      class: 'region draft',
      tabindex: '-1',
      'aria-label': 'The region being drawn',
    });
    let region = spanning(from.x, from.y, from.x, from.y);
    this.#stage.append(draft);
    this.#follow(
      event,
      (x, y) => {
        region = spanning(from.x, from.y, x, y);
        lay(draft, region);
      },
      () => {
        draft.remove();
        // A click by itself draws nothing.
        if (region.w >= 1 && region.h >= 1) this.#onDrawn(region);
      },
    );
  }

  #follow(event: PointerEvent, move: (x: number, y: number) => void, end: () => void = () => undefined): void {
    const onMove = (next: PointerEvent) => {
      if (next.pointerId !== event.pointerId) return;
      const { x, y } = this.#percent(next);
      move(x, y);
    };
    const onEnd = (next: PointerEvent) => {
      if (next.pointerId !== event.pointerId) return;
      window.removeEventListener('pointermove', onMove);
      window.removeEventListener('pointerup', onEnd);
      window.removeEventListener('pointercancel', onEnd);
      end();
    };
    window.addEventListener('pointermove', onMove);
    window.addEventListener('pointerup', onEnd);
    window.addEventListener('pointercancel', onEnd);
  }

  #percent({ clientX, clientY }: PointerEvent) {
    const { left, top, width, height } = this.#image.getBoundingClientRect();
    return { x: ((clientX - left) / width) * 100, y: ((clientY - top) / height) * 100 };
  }

  #warn(): void {
    const { naturalWidth, naturalHeight } = this.#image;
    const known = naturalWidth > 0 && naturalHeight > 0;
    const warnings = known
      ? regionWarnings(
          this.#regions.map(({ current, from }) => ({ name: from.name, region: current })),
          naturalHeight / naturalWidth,
        )
      : [];
    this.#warnings.replaceChildren(...warnings.map((warning) => el('li', { class: 'query' }, warning)));
  }
}

/** Set by script and not as an attribute, which the page's policy refuses. */
function lay(box: HTMLElement, { x, y, w, h }: DrawnRegion): void {
  box.style.left = `${x}%`;
  box.style.top = `${y}%`;
  box.style.width = `${w}%`;
  box.style.height = `${h}%`;
}
