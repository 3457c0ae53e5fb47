/** Structures that every part of an export has. */
import { idType } from '../../catalogue/gedcom/extensions.ts';
import { writeInterchangeDate } from '../../model/interchange-date.ts';
import type { Written } from './lines.ts';

/** A structure with a text, where there is one. */
export function text(tag: string, value: string | undefined): Written | undefined {
  return value === undefined || value === '' ? undefined : { tag, value };
}

/** A date of EDTF. */
export function date(edtf: string): Written {
  const { payload, phrase } = writeInterchangeDate(edtf);
  return { tag: 'DATE', value: payload, under: [text('PHRASE', phrase)] };
}

/** The id in our content, by which an import knows again what this is. */
export function reference(id: string): Written {
  return { tag: 'REFN', value: id, under: [{ tag: 'TYPE', value: idType }] };
}
