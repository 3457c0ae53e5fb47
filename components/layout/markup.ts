/** Small pieces of HTML made as text where a page has hundreds of them: a component of its own costs each far more. */

const escapes: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  "'": '&#39;',
  '"': '&quot;',
};

/** A text as HTML, escaped as components escape it. */
export function textHtml(text: string): string {
  return text.replace(/[&<>'"]/g, (sign) => escapes[sign]!);
}

/** An attribute with the space before it, or nothing where it has no value, as components set it. */
export function attributeHtml(name: string, value: string | undefined): string {
  if (value === undefined) return '';
  return value === '' ? ` ${name}` : ` ${name}="${value.replace(/[&"]/g, (sign) => escapes[sign]!)}"`;
}

/** A link to a page. */
export function linkHtml(text: string, href: string, lang?: string): string {
  return `<a${attributeHtml('href', href)}${attributeHtml('lang', lang)}>${textHtml(text)}</a>`;
}
