/** Moves through a list of options from the box above it, as the WAI-ARIA combobox pattern has it: the box keeps the
 *  focus, and says which option is at hand. */
export class OptionsList {
  readonly #box: HTMLInputElement;
  readonly #list: HTMLElement;
  #active = -1;

  constructor(box: HTMLInputElement, list: HTMLElement) {
    this.#box = box;
    this.#list = list;
  }

  get options(): readonly HTMLElement[] {
    return [...this.#list.querySelectorAll<HTMLElement>('[role=option]')];
  }

  get open(): boolean {
    return !this.#list.hidden;
  }

  get active(): HTMLElement | undefined {
    return this.options[this.#active];
  }

  show(content: readonly Node[]): void {
    this.#list.replaceChildren(...content);
    for (const [at, option] of this.options.entries()) option.id = `${this.#list.id}-${at}`;
    this.#list.hidden = content.length === 0;
    this.#box.setAttribute('aria-expanded', String(this.open));
    this.activate(-1);
  }

  close(): void {
    this.show([]);
  }

  /** One down or up; past either end is the box itself. */
  move(by: 1 | -1): void {
    const count = this.options.length + 1;
    this.activate(((this.#active + 1 + by + count) % count) - 1);
  }

  activate(at: number): void {
    this.active?.setAttribute('aria-selected', 'false');
    this.#active = at;
    const { active } = this;
    active?.setAttribute('aria-selected', 'true');
    active?.scrollIntoView({ block: 'nearest' });
    if (active === undefined) this.#box.removeAttribute('aria-activedescendant');
    else this.#box.setAttribute('aria-activedescendant', active.id);
  }
}
