/** Anchors of headings: the words in lower case with hyphens, each once. */
export class Slugs {
  readonly #used = new Set<string>();

  next(text: string): string {
    const words = text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[’'ʼ]/g, '')
      .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
      .replace(/^-|-$/g, '');
    const base = words === '' || taken.test(words) ? `section-${words}`.replace(/-$/, '') : words;
    let slug = base;
    for (let n = 2; this.#used.has(slug); n++) slug = `${base}-${n}`;
    this.#used.add(slug);
    return slug;
  }
}

/** Anchors that pages use themselves: marks, notes, evidence, and the parts of the page. */
const taken =
  /^(?:(?:note|ref)-\d+(?:-\d+)?|[a-z]?\d+|contents?|evidence|main|map|media|mentions|nav|navigation|notes|points|reviews|search|sources|standing|top|transcription)$/;
