/** Ids made of words that somebody wrote. */

const longestId = 60;

/** Words as an id. */
export function idOf(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[øØ]/g, 'o')
    .replace(/[æÆ]/g, 'ae')
    .replace(/[åÅ]/g, 'a')
    .replace(/ß/g, 'ss')
    .replace(/['’`]/g, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean)
    .join('-')
    .slice(0, longestId)
    .replace(/-$/, '');
}

/** An id that no other has; `taken` are those given before. */
export function unique(id: string, taken: Set<string>): string {
  const plain = id || 'record';
  let own = plain;
  for (let n = 2; taken.has(own); n++) own = `${plain}-${n}`;
  taken.add(own);
  return own;
}
