/** The tones of the site as its style sheet has them, in light and dark, and how well one stands out from another. */

export type Scheme = 'light' | 'dark';
export interface Token {
  name: string;
  value: string;
}

/** The custom properties set in the first block of a style sheet that begins so. */
export function tokensIn(css: string, opening: string): Token[] {
  const start = css.indexOf(opening);
  if (start < 0) return [];
  const body = css.slice(start + opening.length, css.indexOf('}', start));
  return body
    .replace(/\/\*[^*]*\*\//g, '')
    .split(';')
    .flatMap((line) => {
      const colon = line.indexOf(':');
      const name = line.slice(0, colon).trim();
      return colon > 0 && name.startsWith('--') ? [{ name, value: line.slice(colon + 1).trim() }] : [];
    });
}

/** The tones of both schemes by their names, without the dashes. */
export function tonesIn(css: string): Map<string, Record<Scheme, string>> {
  const isTone = ({ value }: Token) => /^#[0-9a-f]{6}$|^#[0-9a-f]{3}$/.test(value);
  const light = tokensIn(css, '\n:root {').filter(isTone);
  const dark = new Map(
    tokensIn(css, '(prefers-color-scheme: dark) {\n  :root {').map(({ name, value }) => [name, value]),
  );
  return new Map(
    light.map(({ name, value }) => [name.slice(2), { light: value, dark: dark.get(name) ?? value }]),
  );
}

/** Contrast of two tones, from 1 to 21. Source: WCAG 2.2, relative luminance and contrast ratio. */
export function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((one, other) => other - one) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(tone: string): number {
  const digits = tone.slice(1);
  const parts = digits.length === 3 ? [...digits].map((d) => d + d) : (digits.match(/../g) ?? []);
  const [r = 0, g = 0, b = 0] = parts.map((part) => {
    const value = parseInt(part, 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
