/** Bodies that refer to nothing, so that what they become depends on their own text alone. */
import { inEnglish } from './notes.ts';
import { plainBody } from './plain.ts';
import { renderBody } from './render.ts';
import type { BodyContext, Rendered } from './types.ts';

/**
 * Whether a body becomes the same wherever it stands: it can hold no citation, no evidence reference, no tag, no
 * component and no image. Says no to some that would.
 */
export function standsAlone(body: string, ctx: Pick<BodyContext, 'mdx'>): boolean {
  return !ctx.mdx && !/[<{]|!\[/.test(body) && !(body.includes('[') && /[@#]/.test(body));
}

/** Renders a body that stands alone, or finds it among those rendered before. A `Map` will do for these. */
export function renderedBefore(
  body: string,
  ctx: BodyContext,
  before: { get(body: string): Rendered | undefined; set(body: string, rendered: Rendered): unknown },
): Rendered {
  const plain = plainBody(body, ctx.voice ?? inEnglish);
  if (plain) return plain; // made sooner than it is found
  const key = bodyKey(body, ctx.voice);
  let rendered = before.get(key);
  if (!rendered) before.set(key, (rendered = renderBody(body, ctx).rendered));
  return rendered;
}

/** What a body that stands alone is kept under: what the site adds to it, the number of a note, is in its own language. */
export function bodyKey(body: string, voice: BodyContext['voice']): string {
  return voice ? `${voice.tag}\0${voice.ownLang ?? ''}\0${body}` : body;
}
