/**
 * Values as YAML in the style of the content contract: block style, small maps of plain values in braces. Text is
 * plain where YAML reads it back as the same text, and in double quotes everywhere else.
 */

/** Text that stands for itself: letters first, no sign that means something to YAML, not even in braces. */
const plain = /^\p{L}[\p{L}\p{M}\d .'’()/&;%+=_–—-]*$/u;
const meaning = /^(?:true|false|null|yes|no|on|off|y|n)$/i;
const date = /^\d{4}-\d\d(?:-\d\d)?[~?%]?$/;

/** Ages of infants. */
const age = /^\d{1,3}(?:[ymwd]|\/\d\d)(?: \d{1,3}[mwd])*$/;

/** A scalar; `flow` where it stands inside braces. */
function scalar(value: string | number | boolean, flow = false): string {
  if (typeof value !== 'string') return String(value);
  if (date.test(value) || age.test(value)) return value;
  const shown = flow ? value : value.replaceAll(/, (?=\S)/g, ' ');
  const safe = plain.test(shown) && !meaning.test(value) && !/\s$|\s\s/.test(value);
  return safe ? value : JSON.stringify(value).replace(/[\u007f-\u009f\u2028\u2029\ufeff]/g, escaped);
}

const escaped = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** A map as the lines of a block, its undefined values left out. */
export function block(map: Readonly<Record<string, unknown>>, indent = ''): string[] {
  return Object.entries(map).flatMap(([key, value]) => entry(key, value, indent));
}

function entry(name: string, value: unknown, indent: string): string[] {
  const key = /^[A-Za-z][\w-]*$/.test(name) && !meaning.test(name) ? name : JSON.stringify(name);
  if (value === undefined || value === null) return [];
  if (isScalar(value)) {
    if (typeof value === 'string' && value.length > 90 && foldable(value))
      return [`${indent}${key}: >-`, ...folded(value, `${indent}  `)];
    return [`${indent}${key}: ${scalar(value)}`];
  }
  if (Array.isArray(value)) {
    if (value.length === 0) return [`${indent}${key}: []`];
    if (value.every((one) => isShort(one) && (isScalar(one) || Object.keys(one as object).length < 3))) {
      const flow = `${indent}${key}: [${value.map((one) => inline(one)).join(', ')}]`;
      if (flow.length <= 110) return [flow];
    }
    return [`${indent}${key}:`, ...list(value, `${indent}  `)];
  }
  const map = value as Record<string, unknown>;
  const rest = Object.entries(map).filter(([, one]) => one !== undefined);
  if (rest.length === 0) return [`${indent}${key}: {}`];
  if (isShort(map)) {
    const flow = `${indent}${key}: ${inline(map)}`;
    if (flow.length <= 140) return [flow];
  }
  const lines = block(map, `${indent}  `);
  return lines.length === 0 ? [] : [`${indent}${key}:`, ...lines];
}

/** A list of values, one `-` each. */
export function list(values: readonly unknown[], indent = ''): string[] {
  return values.flatMap((value) => {
    if (isScalar(value)) return [`${indent}- ${scalar(value)}`];
    if (Array.isArray(value)) return [`${indent}- ${inline(value)}`];
    const [first = `${indent}  {}`, ...others] = block(value as Record<string, unknown>, `${indent}  `);
    return [`${indent}- ${first.slice(indent.length + 2)}`, ...others];
  });
}

const isScalar = (value: unknown): value is string | number | boolean =>
  ['string', 'number', 'boolean'].includes(typeof value);

/** A map of plain values, or a plain value. */
function isShort(value: unknown): boolean {
  if (isScalar(value)) return true;
  if (Array.isArray(value)) return value.every(isScalar);
  return Object.values(value as object).every(
    (one) =>
      one === undefined || isScalar(one) || (Array.isArray(one) && one.length > 0 && one.every(isScalar)),
  );
}

/** A value in one line, as it stands inside braces. */
export function inline(value: unknown): string {
  if (isScalar(value)) return scalar(value, true);
  if (Array.isArray(value)) return `[${value.map(inline).join(', ')}]`;
  const parts = Object.entries(value as object)
    .filter(([, one]) => one !== undefined)
    .map(([key, one]) => `${scalar(key, true)}: ${inline(one)}`);
  return parts.length === 0 ? '{}' : `{ ${parts.join(', ')} }`;
}

/** Only single spaces, so that folding the lines gives the same text again. */
const foldable = (text: string) => !/[^\P{C}]|[\n\r\u0085\u2028\u2029]|^\s|\s\s|\s$/u.test(text);

function folded(text: string, indent: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > 110) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(indent + line);
  return lines;
}
