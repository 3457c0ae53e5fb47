/** `lastResidence` as “last residence”, `fellow-passenger` as “fellow passenger”. */
export function plainWords(key: string): string {
  return key
    .replace(/^says\./, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/-/g, ' ')
    .toLowerCase();
}
