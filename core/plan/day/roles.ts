/** Names roles as they come: "keys 1", "keys 2". The same kind in the same place of two acts is the same role. */
export function roleCounter(): (kind: string) => string {
  const seen = new Map<string, number>();
  return (kind) => {
    const count = (seen.get(kind) ?? 0) + 1;
    seen.set(kind, count);
    return `${kind} ${count}`;
  };
}
