/**
 * What a change of the patch costs. All figures are ours: no published ones were found. Plugging is more than
 * the plug, it is finding the line and carrying its tail; a line that is patched while another act plays is
 * still work, but nobody waits for it. Re-check them against a crew's own times before quoting percentages.
 */
export const patchCosts = {
  /** Units for one line into one socket, before walking. */
  plug: 10,
  /** Units for each metre between the line and its box. */
  perMetre: 2,
  /** Share of the cost of a line that is patched in peace, while its socket is idle. */
  preparedShare: 0.4,
} as const;

/** Units of one entry in the changeover, whole numbers so that a bound can prove a plan. */
export function hotCost(width: number, distanceM: number): number {
  return width * Math.round(patchCosts.plug + patchCosts.perMetre * distanceM);
}

/** Units of the same entry prepared in peace. */
export function coldCost(hot: number): number {
  return Math.round(hot * patchCosts.preparedShare);
}
