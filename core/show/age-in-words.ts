/** "4 minutes", "3 hours", "2 days": rounded down, as people say it. */
export function ageInWords(ageMs: number): string {
  const minutes = Math.max(0, Math.floor(ageMs / 60_000));
  const [count, unit] =
    minutes < 120
      ? [minutes, 'minute']
      : minutes < 2880
        ? [Math.floor(minutes / 60), 'hour']
        : [Math.floor(minutes / 1440), 'day'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
