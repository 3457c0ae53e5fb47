/** Values as the YAML that an author would write: block style, short things on one line, quotes only where needed. */

const widest = 100;

/** Lines of a mapping, each indented by so many spaces. */
export function yamlMapping(value: Readonly<Record<string, unknown>>, indent = 0): string {
  const space = ' '.repeat(indent);
  let text = '';
  for (const [key, item] of Object.entries(value)) {
    if (item === undefined) continue;
    text += `${space}${key}:${yamlValue(item, indent, key)}\n`;
  }
  return text;
}

/** One entry of a list at the left margin. */
export function yamlEntry(value: Readonly<Record<string, unknown>>): string {
  return `- ${yamlMapping(value, 2).slice(2)}`;
}

/** What stands behind the colon: on the same line, or on lines of its own. */
function yamlValue(value: unknown, indent: number, key: string): string {
  if (typeof value !== 'object' || value === null) return ` ${scalarText(value, false, key)}`;
  const flow = inFlow(value);
  const before = key.length;
  if (Array.isArray(value)) {
    const simple = value.every((item) => typeof item !== 'object' || item === null);
    if (value.length === 0 || (simple && flow.length + indent + before < widest)) return ` ${flow}`;
    const space = ' '.repeat(indent + 2);
    return value
      .map((item: unknown) => {
        if (typeof item !== 'object' || item === null || Array.isArray(item))
          return `\n${space}- ${typeof item === 'object' ? inFlow(item) : scalarText(item, false)}`;
        const short = inFlow(item);
        if (isFlat(item) && short.length + indent < widest && !short.includes('id: '))
          return `\n${space}- ${short}`;
        return `\n${space}- ${yamlMapping(item as Record<string, unknown>, indent + 4)
          .trimStart()
          .trimEnd()}`;
      })
      .join('');
  }
  if (isFlat(value) && flow.length + indent + before < widest) return ` ${flow}`;
  return `\n${yamlMapping(value as Record<string, unknown>, indent + 2).trimEnd()}`;
}

function isFlat(value: object): boolean {
  return Object.values(value).every(
    (item) =>
      typeof item !== 'object' ||
      item === null ||
      (Array.isArray(item) && item.every((one) => typeof one !== 'object')),
  );
}

function inFlow(value: unknown, key = ''): string {
  if (Array.isArray(value)) return `[${value.map((item) => inFlow(item)).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const parts = Object.entries(value).filter(([, item]) => item !== undefined);
    return parts.length === 0
      ? '{}'
      : `{ ${parts.map(([key, item]) => `${key}: ${inFlow(item, key)}`).join(', ')} }`;
  }
  return scalarText(value, true, key);
}

const reserved = /^(?:true|false|null|yes|no|on|off|y|n|~|\.inf|\.nan)$/i;
const plainInFlow = /^[\p{L}][\p{L}\p{M}\p{N} .’'()/;!?-]*$/u;
const plain = /^[\p{L}][\p{L}\p{M}\p{N} .,’'"()/;!?&+=#*@-]*$/u;
/** Ids, references, dates and numbers as the contract writes them. */
const plainWord = /^[\p{L}\p{N}][\p{L}\p{N}~#/.-]*$/u;
const number = /^-?(?:\d|\.\d)/;
const dateLike = /^\d{4}(?:-\d\d){0,2}[~?%]?(?:\/(?:\.\.|\d{4}(?:-\d\d){0,2}[~?%]?))?$/;

/** Keys whose value is a date, where a bare year may stand as a number. */
const dateKeys = new Set([
  'date',
  'born',
  'married',
  'made',
  'issued',
  'immigrated',
  'from',
  'to',
  'sailed',
  'arrived',
]);

/** One scalar, of a key. */
export function scalarText(value: unknown, flow: boolean, key = ''): string {
  if (typeof value !== 'string') return JSON.stringify(value);
  if (dateLike.test(value) && (value.length !== 4 || dateKeys.has(key))) return value;
  const safe =
    !reserved.test(value) &&
    !number.test(value) &&
    !value.endsWith(' ') &&
    !/\s#|:\s|:$/.test(value) &&
    ((flow ? plainInFlow : plain).test(value) || plainWord.test(value));
  if (safe) return value;

  if (/[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff\\]|[\ud800-\udfff]/.test(value))
    return doubleQuoted(value);
  return `'${value.replaceAll("'", "''")}'`;
}

function doubleQuoted(value: string): string {
  return JSON.stringify(value.toWellFormed()).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
