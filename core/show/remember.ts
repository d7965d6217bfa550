/**
 * Remembers what a pure function made of a value that never changes, as long as the value lives: several rules ask
 * the same of one act.
 */
export function remembered<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const made = new WeakMap<K, { value: V }>();
  return (key) => {
    const known = made.get(key);
    if (known) return known.value;
    const value = make(key);
    made.set(key, { value });
    return value;
  };
}
