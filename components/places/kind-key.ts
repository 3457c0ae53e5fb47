/** A kind of place as a key for narrowing lists: lower-case words joined by hyphens. */
export function kindKey(kind: string): string {
  return kind
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}
