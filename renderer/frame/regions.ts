/** Moves the focus to the next (1) or previous (-1) part of the window that has something to focus. */
export function goToNextRegion(by: 1 | -1): void {
  const regions = [...document.querySelectorAll<HTMLElement>('[data-region]')];
  // A part may lie within another: the innermost counts, or one would never get out of it.
  const here = regions.findLastIndex((region) => region.contains(document.activeElement));
  for (let step = 1; step <= regions.length; step++) {
    const region = regions[(here + by * step + regions.length * (step + 1)) % regions.length];
    const target = region && firstFocusable(region);
    if (target) {
      target.focus();
      return;
    }
  }
}

function firstFocusable(region: HTMLElement): HTMLElement | null {
  return (
    region.querySelector<HTMLElement>('[data-first-focus]') ??
    region.querySelector<HTMLElement>(
      'button:not(:disabled):not([tabindex="-1"]), [tabindex="0"], input, select, textarea',
    )
  );
}
