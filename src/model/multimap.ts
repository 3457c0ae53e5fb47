/** Adds a value to the list that a map holds under a key, beginning the list where there is none. */
export function gather<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
