/** Lights a region on the photograph when its reading or its fact is pointed at or reached by keyboard, and the other
 * way round. Without this the numbers still lead both ways. */
function lightTogether(): void {
  const parts = document.querySelectorAll('[data-region]');
  const light = (region: string | null, on: boolean) => {
    for (const part of parts) if (part.getAttribute('data-region') === region) part.classList.toggle('lit', on);
  };
  for (const part of parts) {
    const region = part.getAttribute('data-region');
    for (const event of ['pointerenter', 'focusin']) part.addEventListener(event, () => light(region, true));
    for (const event of ['pointerleave', 'focusout']) part.addEventListener(event, () => light(region, false));
  }
}

/** Paper has no later: photographs that wait until they are scrolled to are asked for before it is printed. */
addEventListener('beforeprint', () => {
  for (const image of document.images) image.loading = 'eager';
});

lightTogether();
