/** What got out of its context in a file of the site: found by parsing the file as whoever opens it would. */
import { parseXml, XmlElement, XmlText, type XmlDocument } from '@rgrove/parse-xml';
import { parse } from 'csv-parse/sync';
import { Parser } from 'htmlparser2';
import { Script } from 'node:vm';
import { withheldMark } from './every-key.ts';

/** Elements no page has a use for. */
const unwanted =
  /^(?:zq.*|iframe|frame|object|embed|applet|base|style|marquee|plaintext|xmp|template|slot|audio|video)$/;
const addresses = new Set(['href', 'src', 'action', 'formaction', 'poster', 'data', 'xlink:href', 'srcset']);
/** Elements that ask for an address by themselves. */
const asking = new Set(['img', 'script', 'source', 'image', 'use', 'input', 'link']);
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/;

/** Everything wrong with a file of the site, in words. */
export function escapesIn(path: string, bytes: Uint8Array): string[] {
  const ending = path.slice(path.lastIndexOf('.') + 1);
  if (/^(?:png|jpg|woff2?|ico|pdf)$/.test(ending)) return [];
  const text = Buffer.from(bytes).toString('utf8');
  const found = judge(ending, text);
  return found.map((what) => `${path}: ${what}`);
}

/** Whether a file says what only the withheld person’s name has in it. */
export function saysWithheld(path: string, bytes: Uint8Array): boolean {
  const mark = withheldMark.toLowerCase();
  return (
    path.toLowerCase().includes(mark) || Buffer.from(bytes).toString('latin1').toLowerCase().includes(mark)
  );
}

function judge(ending: string, text: string): string[] {
  switch (ending) {
    case 'html':
      return [
        ...inHtml(text),
        ...(controls.test(text) ? [`the control character ${controls.exec(text)![0].charCodeAt(0)}`] : []),
      ];
    case 'svg':
    case 'xml':
      return inXml(text);
    case 'json':
    case 'webmanifest':
      return inJson(text);
    case 'csv':
      return inCsv(text);
    case 'js':
      return inScript(text);
    case 'bib':
      return inBibtex(text);
    default:
      return [];
  }
}

function inHtml(html: string): string[] {
  const found: string[] = [];
  const parser = new Parser({
    onopentag(name, attributes) {
      if (unwanted.test(name)) found.push(`the element <${name}>`);
      if (
        name === 'script' &&
        attributes['src'] === undefined &&
        attributes['type'] !== 'application/ld+json'
      )
        found.push('a script written into the page');
      for (const [attribute, value] of Object.entries(attributes)) {
        if (/^(?:zq|on|style$|srcdoc$|autofocus$)/i.test(attribute))
          found.push(`the attribute ${attribute} of <${name}>`);
        if (/["'<>`=\u0000-\u0020]/.test(attribute))
          found.push(`an attribute named ${JSON.stringify(attribute)}`);
        if (!addresses.has(attribute)) continue;
        const plain = value.replaceAll(/[\u0000-\u0020\u007f-\u00a0]/g, '');
        if (/^(?:javascript|vbscript|data|blob|file|view-source):/i.test(plain))
          found.push(`${attribute}="${value}" of <${name}>`);
        const outside = /^(?:[a-z][a-z0-9+.-]*:|[\\/]{2})/i.test(plain);
        const rel = attributes['rel'] ?? '';
        if (outside && asking.has(name) && !/^(?:canonical|alternate)$/.test(rel))
          found.push(`<${name} ${attribute}> asks ${value}`);
        if (
          /^(?:https?:|[\\/]{2})/i.test(plain) &&
          name === 'a' &&
          !(/noreferrer/.test(rel) && /noopener/.test(rel))
        )
          found.push(`a link to ${value} that says where it came from`);
      }
    },
  });
  parser.end(html);
  if (!/http-equiv="content-security-policy"/i.test(html)) found.push('no content security policy');
  return found;
}

function inXml(text: string): string[] {
  try {
    const found: string[] = [];
    const visit = (node: XmlElement | XmlDocument) => {
      for (const child of node.children) {
        if (child instanceof XmlElement) {
          if (/^zq/i.test(child.name) || child.name === 'script') found.push(`the element <${child.name}>`);
          for (const name of Object.keys(child.attributes))
            if (/^(?:on|zq)/i.test(name)) found.push(`the attribute ${name}`);
          visit(child);
        } else if (child instanceof XmlText && child.text.includes('root:x:0'))
          found.push('a file of the machine');
      }
    };
    visit(parseXml(text));
    return found;
  } catch (error) {
    return [`no XML: ${(error as Error).message.split('\n')[0]}`];
  }
}

function inJson(text: string): string[] {
  try {
    JSON.parse(text);
    return [];
  } catch (error) {
    return [`no JSON: ${(error as Error).message}`];
  }
}

function inCsv(text: string): string[] {
  try {
    const rows = parse(text, { relax_column_count: false }) as string[][];
    return rows
      .flat()
      .filter((cell) => /^[\s\u00a0]*[=+@＝＋－＠-]/u.test(cell) && !/^-?\d+(?:\.\d+)?$/.test(cell))
      .map((cell) => `the cell ${JSON.stringify(cell)} begins a formula`);
  } catch (error) {
    return [`no table: ${(error as Error).message}`];
  }
}

function inScript(text: string): string[] {
  try {
    new Script(text);
    return /zqran\(1\)/.test(text.replaceAll(/"(?:[^"\\]|\\.)*"/g, '""'))
      ? ['words of the content outside of a text']
      : [];
  } catch (error) {
    return /import|export/.test((error as Error).message) ? [] : [`no script: ${(error as Error).message}`];
  }
}

/** Every brace of an entry is paired, and an entry ends where its line says so. */
function inBibtex(text: string): string[] {
  const found: string[] = [];
  for (const entry of text.split(/^(?=@)/m)) {
    if (entry.trim() === '') continue;
    let depth = 0;
    for (let i = 0; i < entry.length; i++) {
      if (entry[i] === '\\') i++;
      else if (entry[i] === '{') depth++;
      else if (entry[i] === '}' && --depth === 0 && entry.slice(i + 1).trim() !== '')
        found.push(`an entry that ends too early: ${entry.slice(0, 40)}`);
    }
    if (depth !== 0) found.push(`braces that don’t pair in ${entry.slice(0, 40)}`);
  }
  return found;
}
