/** Values of the content contract as structures of our extension (`src/catalogue/gedcom/extensions.ts`). */
import type { Written } from './lines.ts';

/** The keys of a mapping, those without a value left out. */
export function keysOf(value: Readonly<Record<string, unknown>>): Written[] {
  return Object.entries(value).flatMap(([key, item]) => {
    if (isEmpty(item)) return [];
    if (typeof item !== 'object' || item === null) return [{ tag: '_KEY', value: `${key} ${scalar(item)}` }];
    return [
      {
        tag: '_KEY',
        value: key,
        under: Array.isArray(item) ? itemsOf(item) : keysOf(item as Record<string, unknown>),
      },
    ];
  });
}

function itemsOf(list: readonly unknown[]): Written[] {
  return list.map((item) => {
    if (typeof item !== 'object' || item === null) return { tag: '_ITEM', value: scalar(item) };
    return {
      tag: '_ITEM',
      under: Array.isArray(item) ? itemsOf(item) : keysOf(item as Record<string, unknown>),
    };
  });
}

function scalar(value: unknown): string {
  return typeof value === 'string' && !/^[#\s]|\s$/.test(value) ? value : `#${JSON.stringify(value)}`;
}

function isEmpty(value: unknown): boolean {
  if (value === undefined || value === null) return true;
  if (Array.isArray(value)) return value.length === 0;
  return typeof value === 'object' && Object.values(value).every(isEmpty);
}
