/** Lights a region on the photograph when its reading or its fact is pointed at or reached by keyboard, and the other
 * way round. Without this the numbers still lead both ways. */
function lightTogether(): void {
  const parts = document.querySelectorAll('[data-region]');
  const light = (region: string | null, on: boolean) => {
    for (const part of parts) if (part.getAttribute('data-region') === region) part.classList.toggle('lit', on);
  };
  for (const part of parts) {
    part.addEventListener('pointerenter', () => light(part.getAttribute('data-region'), true));
    part.addEventListener('pointerleave', () => light(part.getAttribute('data-region'), false));
  }
  // Of the whole document: a drawn region that listened for the focus itself would take it, link or not.
  const regionAt = ({ target }: Event) =>
    target instanceof Element ? (target.closest('[data-region]')?.getAttribute('data-region') ?? null) : null;
  document.addEventListener('focusin', (event) => light(regionAt(event), true));
  document.addEventListener('focusout', (event) => light(regionAt(event), false));
}

/** Paper has no later: photographs that wait until they are scrolled to are asked for before it is printed, and what is
 * folded is opened. */
addEventListener('beforeprint', () => {
  for (const image of document.images) image.loading = 'eager';
  // Style sheets open what is folded, but for browsers that don't know the part.
  if (!CSS.supports('selector(::details-content)'))
    for (const folded of document.querySelectorAll('details')) folded.open = true;
});

lightTogether();
