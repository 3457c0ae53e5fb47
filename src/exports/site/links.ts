/**
 * Addresses within the site, made relative to the page they stand on, so that a site works under any path and
 * opened straight from a folder. Pages write them from the root: `/records/x.html#m1`.
 */

/** Rewrites one address. */
export type Relink = (href: string) => string;

/**
 * Makes the addresses on one file of the site relative. `file` is the file’s path in the site, such as
 * `cases/x/proof.html`. Addresses that don’t begin at the root (`#note-1`, `mailto:`, `https:`, `//host`) stay.
 */
export function relinkFrom(file: string): Relink {
  const here = file.split('/');
  return (href) => {
    if (!fromRoot(href)) return href;
    const [, path = '', rest = ''] = /^([^?#]*)((?:[?#].*)?)$/s.exec(href) ?? [];
    const target = (path.endsWith('/') ? `${path}index.html` : path).slice(1).split('/');
    if (target.join('/') === file && rest.startsWith('#')) return rest;
    let shared = 0;
    while (shared < here.length - 1 && shared < target.length - 1 && here[shared] === target[shared])
      shared++;
    const steps = [...Array<string>(here.length - 1 - shared).fill('..'), ...target.slice(shared)];
    // A first step with a colon would be read as a scheme.
    if (steps[0]!.includes(':')) steps.unshift('.');
    return steps.join('/') + rest;
  };
}

/** Puts the addresses of the page for what isn’t there under the site’s base: it is served at any depth. */
export function relinkUnder(base: string): Relink {
  return (href) => (fromRoot(href) ? base + href.slice(1) : href);
}

/** Whether an address begins at the root of the site. */
export function fromRoot(href: string): boolean {
  return /^\/(?![/\\])/.test(href);
}

/** Whether an address leads to another host. */
export function leavesTheSite(href: string): boolean {
  return /^[/\\]{2}/.test(href.trim()) || /^\s*(?!data:|blob:)[a-z][a-z0-9+.-]*:/i.test(href);
}

/** The addresses of a `srcset`, rewritten. */
export function relinkSrcset(srcset: string, relink: Relink): string {
  // An address that ends in a comma has no descriptor, and the next candidate follows.
  return srcset.replace(
    /([\s,]*)([^\s,]\S*?)(,+(?=\s|$)|(?=\s)[^,]*|$)/g,
    (_all, before: string, url: string, after: string) => before + relink(url) + after,
  );
}

/** The addresses of a `srcset`. */
export function urlsOfSrcset(srcset: string): string[] {
  const urls: string[] = [];
  relinkSrcset(srcset, (url) => (urls.push(url), url));
  return urls;
}

/** The address of a `<meta http-equiv="refresh">`, rewritten. */
export function relinkRefresh(content: string, relink: Relink): string {
  return content.replace(
    /^(\s*(?:[\d.]+\s*)?[;,]\s*(?:url\s*=\s*)?)(['"]?)([^'"]*)(\2)/i,
    (_all, before: string, quote: string, url: string) => {
      return before + quote + relink(url.trim()) + quote;
    },
  );
}

/** The addresses of a stylesheet, `url(…)` and `@import`, rewritten. */
export function relinkCss(css: string, relink: Relink): string {
  return css.replace(
    /\/\*[^]*?\*\/|\burl\(\s*(?:"((?:[^"\\]|\\.)*)"|'((?:[^'\\]|\\.)*)'|([^\s"')]*))\s*\)|(@import\s*)(?:"([^"]*)"|'([^']*)')/gi,
    (
      all,
      double?: string,
      single?: string,
      bare?: string,
      atImport?: string,
      imported1?: string,
      imported2?: string,
    ) => {
      if (all.startsWith('/*')) return all;
      if (atImport !== undefined) return `${atImport}"${relink(imported1 ?? imported2 ?? '')}"`;
      const url = double ?? single ?? bare ?? '';
      const relinked = relink(url);
      return relinked === url ? all : `url("${relinked.replace(/["\\\n]/g, encodeURIComponent)}")`;
    },
  );
}
