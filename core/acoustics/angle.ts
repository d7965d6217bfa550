/** Whole turns are taken off first: they say nothing, and a huge angle would overflow. */
export function radians(degrees: number): number {
  return ((degrees % 360) * Math.PI) / 180;
}

export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
