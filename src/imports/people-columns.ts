/** Columns of a comparison, coded: equal texts have one number, and what is not stated has none. */
import {
  noNumber,
  noText,
  type Column,
  type NumberColumn,
  type TextColumn,
} from '../reasoning/identity/bulk/columns.ts';
import { foldName } from '../reasoning/names/fold.ts';
import type { Side, Values } from './people-side.ts';

/** A column of the comparison, and the columns of the files that it was made from. */
export interface TakenColumn {
  column: Column;
  from: readonly [a: string, b: string];
}

/** A column of texts, where every side has it. */
export function texts(
  kind: TextColumn['kind'],
  sides: readonly Side[],
  read: (side: Side) => Values<string> | undefined,
  taken: TakenColumn[],
  name: string,
): void {
  const values = sides.map(read);
  if (values.some((one) => one === undefined)) return;
  const numbers = new Map<string, number>();
  const coded = values.map((one, at) => {
    const cells = new Int32Array(sides[at]!.file.rows);
    for (let row = 0; row < cells.length; row++) {
      const text = one!.at(row);
      if (text === undefined || foldName(text) + text.replace(/\D/g, '') === '') {
        cells[row] = noText;
        continue;
      }
      let number = numbers.get(text);
      if (number === undefined) numbers.set(text, (number = numbers.size));
      cells[row] = number;
    }
    return cells;
  });
  if (numbers.size === 0) return;
  taken.push({
    column: { kind, name, values: [...numbers.keys()], a: coded[0]!, b: coded[1] ?? coded[0]! },
    from: [values[0]!.heading, (values[1] ?? values[0])!.heading],
  });
}

/** A column of numbers, where every side has it. */
export function numbers(
  kind: NumberColumn['kind'],
  name: string,
  sides: readonly Side[],
  read: (side: Side) => Values<number> | undefined,
  taken: TakenColumn[],
): void {
  const values = sides.map(read);
  if (values.some((one) => one === undefined)) return;
  let stated = 0;
  const coded = values.map((one, at) => {
    const cells = new Int16Array(sides[at]!.file.rows);
    for (let row = 0; row < cells.length; row++) {
      const value = one!.at(row);
      cells[row] = value ?? noNumber;
      if (value !== undefined) stated++;
    }
    return cells;
  });
  if (stated === 0) return;
  taken.push({
    column: { kind, name, a: coded[0]!, b: coded[1] ?? coded[0]! },
    from: [values[0]!.heading, (values[1] ?? values[0])!.heading],
  });
}
