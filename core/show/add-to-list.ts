/** Adds a value to the list that a map holds under a key, and begins the list where there is none. */
export function addToList<K, V>(lists: Map<K, V[]>, key: K, value: V): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}
