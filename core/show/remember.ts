/**
 * Remembers what a pure function made of the value it was last given, which must never be changed in place: several
 * rules ask the same of one act in turn. Only the last, so that nothing piles up.
 */
export function remembered<K extends object, V>(make: (key: K) => V): (key: K) => V {
  let last: { key: K; value: V } | null = null;
  return (key) => {
    if (last?.key !== key) last = { key, value: make(key) };
    return last.value;
  };
}
