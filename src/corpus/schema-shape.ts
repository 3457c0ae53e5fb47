/** What a schema allows at a path: the questions that a helpful message asks of it. */
import type { z } from 'zod';
import { decimal, edtfDate, id, mentionRef, text, textOrNumber, word } from '../model/common.ts';
import type { ValuePath } from '../model/finding.ts';

type Schema = z.core.$ZodType;
type Def = z.core.$ZodTypeDef & {
  innerType?: Schema;
  in?: Schema;
  options?: Schema[];
  element?: Schema;
  valueType?: Schema;
  shape?: Record<string, Schema>;
};

function defOf(schema: Schema): Def {
  return schema._zod.def as Def;
}

/** The schemas a value may be judged by once defaults, options and transforms are taken off; unions give several. */
export function alternatives(schema: Schema): Schema[] {
  if (nouns.has(schema)) return [schema];
  const def = defOf(schema);
  if (def.type === 'union') return def.options!.flatMap(alternatives);
  if (def.type === 'pipe') return alternatives(def.in!);
  if (def.innerType) return alternatives(def.innerType);
  return [schema];
}

/** The schemas of the value at a path. A list that may be written as one bare value can be stepped over. */
export function schemasAt(root: Schema, path: ValuePath): Schema[] {
  let current = alternatives(root);
  for (const step of path) {
    current = current.flatMap((schema) => {
      const def = defOf(schema);
      if (def.type === 'object') {
        const inner = Object.hasOwn(def.shape!, step) ? def.shape![step] : undefined;
        return inner ? alternatives(inner) : [];
      }
      if (def.type === 'record') return alternatives(def.valueType!);
      if (def.type === 'array' && typeof step === 'number') return alternatives(def.element!);
      if (def.type === 'array')
        return alternatives(def.element!).flatMap((inner) => schemasAt(inner, [step]));
      return [];
    });
  }
  return current;
}

/** The keys that may stand in the mapping at a path. */
export function keysAt(root: Schema, path: ValuePath): string[] {
  const keys = schemasAt(root, path).flatMap((schema) => Object.keys(defOf(schema).shape ?? {}));
  return [...new Set(keys)];
}

/** Keys of the mappings one step further in, each with the key it stands under. */
export function keysInside(root: Schema, path: ValuePath): { under: string; key: string }[] {
  return keysAt(root, path).flatMap((under) =>
    schemasAt(root, [...path, under])
      .flatMap((schema) => (defOf(schema).type === 'array' ? alternatives(defOf(schema).element!) : [schema]))
      .flatMap((schema) => Object.keys(defOf(schema).shape ?? {}).map((key) => ({ under, key }))),
  );
}

const nouns = new Map<Schema, string>([
  [id, 'an id'],
  [word, 'one plain word'],
  [text, 'text'],
  [textOrNumber, 'text or a number'],
  [edtfDate, 'a date'],
  [decimal, 'a number'],
  [mentionRef, 'a mention, such as declaration-1871#m1'],
]);

/** What a value may be, in words: `text`, `a date`, `a list` … Each once, in the order of the schema. */
export function formsAt(root: Schema, path: ValuePath): string[] {
  const forms = schemasAt(root, path).map((schema) => {
    const named = nouns.get(schema);
    if (named) return named;
    switch (defOf(schema).type) {
      case 'string':
        return 'text';
      case 'number':
        return 'a number';
      case 'boolean':
        return 'true or false';
      case 'array':
        return 'a list';
      case 'enum':
        return 'one word';
      default:
        return 'keys with values';
    }
  });
  return [...new Set(forms)];
}

/** Whether text may stand at a path, so that quotes around a value would mend it. */
export function takesText(root: Schema, path: ValuePath): boolean {
  return schemasAt(root, path).some(
    (schema) => (nouns.has(schema) && schema !== decimal) || ['string', 'enum'].includes(defOf(schema).type),
  );
}
