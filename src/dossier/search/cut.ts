/** Cuts rows into parts of about a size. A row is never cut, so that a word that is everywhere makes a large part. */
export interface Part {
  first: string;
  json: string;
}

/** Each row as its key and its JSON, in the order of the keys. */
export function cut(rows: Iterable<readonly [key: string, json: string]>, size: number): Part[] {
  const parts: Part[] = [];
  let first = '';
  let held: string[] = [];
  let length = 0;
  const close = () => {
    if (held.length > 0) parts.push({ first, json: `[${held.join(',')}]` });
    held = [];
    length = 0;
  };
  for (const [key, json] of rows) {
    if (length > 0 && length + json.length > size) close();
    if (held.length === 0) first = key;
    held.push(json);
    length += json.length + 1;
  }
  close();
  return parts;
}
