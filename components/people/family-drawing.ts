/**
 * The family of one person as a drawing: forebears above and below the person from whom they are sighted, or
 * descendants under those they come from. Every generation is a step to the right, everybody a station with the name
 * beside it, so that a drawing is as narrow as a phone however large the family is. Nobody is drawn twice: where lines
 * meet again (cousins who married), the second place refers to the first.
 */
import { widthOf } from '../proof/lettering.ts';

/** The family as the drawing asks for it. People who are not shown are left out by whoever answers. */
export interface Kinfolk {
  parents(person: string): readonly string[];
  marriages(person: string): readonly Marriage[];
  label(person: string): { name: string; years: string; placeholder: boolean };
}

/** The children of one marriage, eldest first; of the children by nobody named there is no spouse. */
export interface Marriage {
  spouse: string | undefined;
  /** An entry says that they married; else they are only known to have had children. */
  married: boolean;
  /** “married 1866”, or nothing. */
  note: string;
  children: readonly string[];
}

export type Direction = 'ascending' | 'descending';

/** The words that stand in the drawing itself. */
export interface DrawingWords {
  /** Behind a name that is drawn elsewhere: “drawn above”. */
  drawnAbove: string;
  drawnBelow: string;
  otherParentNotKnown: string;
  /** Where children are left out: “3 more children”. */
  moreChildren(n: number): string;
  /** Where the drawing ends and the family goes on: “2 children”. */
  furtherChildren(n: number): string;
}

export interface DrawnLine {
  text: string;
  /** Baseline. */
  x: number;
  y: number;
  size: number;
  role: 'name' | 'fact';
}

export interface Row {
  kind: 'person' | 'spouse' | 'other-parent' | 'again' | 'again-spouse' | 'no-parent' | 'more';
  /** Whom the row is about; absent for children left out and a parent not known. */
  person: string | undefined;
  generation: number;
  /** The middle of the station. */
  x: number;
  y: number;
  lines: DrawnLine[];
  /** What the row fills, station and lettering. */
  box: { left: number; top: number; right: number; bottom: number };
  isRoot: boolean;
  placeholder: boolean;
}

export interface Stroke {
  d: string;
  /** A line of descent, one that breaks off since nobody is known there, or one that goes on undrawn. */
  kind: 'line' | 'broken';
}

export interface FamilyDrawing {
  direction: Direction;
  width: number;
  height: number;
  rows: Row[];
  strokes: Stroke[];
  /** The generations drawn, the person’s own first, each with where its stations stand. */
  columns: number[];
  /** What the drawing says, as lists: by generation, in the order of the rows, with those drawn beside each. */
  generations: { person: string; beside: string[] }[][];
  /** Known within the generations of the drawing and left out of it. */
  left: number;
  /** Somebody of the last generation has parents, or children, who are not drawn. */
  goesOn: boolean;
}

/** Generations beside the person’s own. */
export const generationsDrawn = 4;
/** People drawn at most; the nearer generations go first. */
export const mostDrawn = 40;

/** The width of every drawing: what a page has on a phone of 390 px, with a little to spare. */
export const drawingWidth = 326;

const first = 9;
const step = 21;
const gap = 11;
const size = { name: 15, fact: 12.5 } as const;
const lead = { name: 19, fact: 16 } as const;
const rowGap = 9;
const head = 26;
const foot = 10;
const stub = 8;
const stubRoom = 5;

interface Chosen {
  /** Whom there is room for, with the person from whom their line is drawn. */
  from: ReadonlyMap<string, string | undefined>;
  left: number;
  goesOn: boolean;
}

/** The forebears of a person, at most four generations. */
export function ascendingDrawing(kinfolk: Kinfolk, root: string, words: DrawingWords): FamilyDrawing {
  const chosen = choose(root, (id) => kinfolk.parents(id));
  const pen = new Pen(kinfolk, chosen, words, root);
  const place = (id: string, generation: number): number => {
    const x = columnOf(generation);
    const inDrawing = generation < generationsDrawn;
    const parents = inDrawing ? kinfolk.parents(id) : [];
    const shown = parents.filter((parent) => chosen.from.has(parent));
    const sight = (parent: string) =>
      chosen.from.get(parent) === id
        ? place(parent, generation + 1)
        : pen.again('again', parent, generation + 1);
    // Of two, one stands above and one below; an end that breaks off wants a little room of its own.
    const ends = shown.slice(0, 1).map(sight);
    if (inDrawing && parents.length === 0) pen.skip(stubRoom);
    const y = pen.person('person', id, generation);
    if (inDrawing && parents.length < 2) {
      pen.stroke(
        parents.length === 0 ? `M${x} ${y - 6}v${-stub}M${x} ${y + 6}v${stub}` : `M${x} ${y + 6}v${stub}`,
        'broken',
      );
      pen.skip(stubRoom);
    }
    ends.push(...shown.slice(1).map(sight));
    for (const end of ends) pen.stroke(`M${x} ${y}V${end}H${columnOf(generation + 1)}`, 'line');
    return y;
  };
  place(root, 0);
  return pen.drawing('ascending');
}

/** The descendants of a person with those they had them by, at most four generations. */
export function descendingDrawing(kinfolk: Kinfolk, root: string, words: DrawingWords): FamilyDrawing {
  const chosen = choose(root, (id) => kinfolk.marriages(id).flatMap(({ children }) => children));
  const pen = new Pen(kinfolk, chosen, words, root);
  const place = (id: string, generation: number): number => {
    const y = pen.person('person', id, generation);
    const x = columnOf(generation);
    let end = y;
    const marriages = kinfolk.marriages(id);
    for (const { spouse, married, note, children } of marriages) {
      const inDrawing = generation < generationsDrawn;
      const shown = inDrawing ? children.filter((child) => chosen.from.has(child)) : [];
      let isElsewhere = false;
      if (spouse !== undefined) {
        // Of kin who married each other both have a station of their own, and the couple’s children stand by one.
        isElsewhere = chosen.from.has(spouse) || pen.isDrawn(spouse);
        end = isElsewhere
          ? pen.again('again-spouse', spouse, generation)
          : pen.person(married ? 'spouse' : 'other-parent', spouse, generation, note, id);
      } else if (marriages.length > 1 && inDrawing)
        end = pen.note('no-parent', words.otherParentNotKnown, generation);
      if (isElsewhere && shown.every((child) => chosen.from.get(child) !== id)) continue;
      for (const child of shown) {
        end =
          chosen.from.get(child) === id
            ? place(child, generation + 1)
            : pen.again('again', child, generation + 1);
        pen.stroke(`M${x} ${end}H${columnOf(generation + 1)}`, 'line');
      }
      const missing = children.length - shown.length;
      if (missing > 0) {
        const say = shown.length > 0 ? words.moreChildren : words.furtherChildren;
        end = pen.note('more', say(missing), generation + 1);
        pen.stroke(`M${x} ${end}H${columnOf(generation + 1) + 4}`, 'broken');
      }
    }
    if (end > y) pen.stroke(`M${x} ${y}V${end}`, 'line');
    return y;
  };
  place(root, 0);
  return pen.drawing('descending');
}

const columnOf = (generation: number): number => first + generation * step;

/** Whom the drawing has room for: generation by generation, so that the nearest are never left out for the far. */
function choose(root: string, next: (id: string) => readonly string[]): Chosen {
  const from = new Map<string, string | undefined>([[root, undefined]]);
  const met = new Set([root]);
  let goesOn = false;
  let row = [root];
  for (let generation = 0; row.length > 0 && generation <= generationsDrawn; generation++) {
    const following: string[] = [];
    for (const id of row)
      for (const one of next(id)) {
        if (met.has(one)) continue;
        if (generation === generationsDrawn) {
          goesOn = true;
          continue;
        }
        met.add(one);
        following.push(one);
        if (from.size < mostDrawn && from.has(id)) from.set(one, id);
      }
    row = following;
  }
  return { from, left: met.size - from.size, goesOn };
}

/** Sets rows one under another and keeps the strokes between them. */
class Pen {
  readonly #kinfolk: Kinfolk;
  readonly #chosen: Chosen;
  readonly #words: DrawingWords;
  readonly #root: string;
  readonly #rows: Row[] = [];
  readonly #strokes: Stroke[] = [];
  readonly #drawn = new Set<string>();
  readonly #generations: FamilyDrawing['generations'] = [];
  #y = head;

  constructor(kinfolk: Kinfolk, chosen: Chosen, words: DrawingWords, root: string) {
    this.#kinfolk = kinfolk;
    this.#chosen = chosen;
    this.#words = words;
    this.#root = root;
  }

  isDrawn(id: string): boolean {
    return this.#drawn.has(id);
  }

  skip(height: number): void {
    this.#y += height;
  }

  stroke(d: string, kind: Stroke['kind']): void {
    this.#strokes.push({ d, kind });
  }

  /** Somebody with what is said beside the name: the years of their life, or of a husband or wife the marriage. */
  person(
    kind: 'person' | 'spouse' | 'other-parent',
    id: string,
    generation: number,
    fact?: string,
    partner?: string,
  ): number {
    const { name, years } = this.#kinfolk.label(id);
    this.#drawn.add(id);
    const level = (this.#generations[generation] ??= []);
    if (kind === 'person') level.push({ person: id, beside: [] });
    else level.findLast(({ person }) => person === partner)!.beside.push(id);
    return this.#set(kind, id, generation, name, fact ?? years);
  }

  /** Somebody who has a station of their own elsewhere in the drawing. */
  again(kind: 'again' | 'again-spouse', id: string, generation: number): number {
    const where = this.#drawn.has(id) ? this.#words.drawnAbove : this.#words.drawnBelow;
    return this.#set(kind, id, generation, this.#kinfolk.label(id).name, where);
  }

  note(kind: 'no-parent' | 'more', text: string, generation: number): number {
    return this.#set(kind, undefined, generation, '', text);
  }

  #set(
    kind: Row['kind'],
    person: string | undefined,
    generation: number,
    name: string,
    fact: string,
  ): number {
    const x = columnOf(generation);
    const left = x + gap;
    const room = drawingWidth - left - 2;
    const lines: DrawnLine[] = [];
    let y = this.#y + size.name;
    const set = (text: string, role: DrawnLine['role'], at = left) =>
      void lines.push({ text, x: at, y, size: size[role], role });
    const names = name === '' ? [] : broken(name, size.name, room);
    for (const [i, text] of names.entries()) {
      if (i > 0) y += lead.name;
      set(text, 'name');
    }
    if (fact !== '') {
      const after = names.length === 0 ? 0 : widthOf(names.at(-1)!, size.name) + 7;
      if (after + widthOf(fact, size.fact) <= room) set(fact, 'fact', left + after);
      else
        for (const text of broken(fact, size.fact, room)) {
          y += lead.fact;
          set(text, 'fact');
        }
    }
    const middle = this.#y + size.name - 5;
    const bottom = y + 4;
    this.#rows.push({
      kind,
      person,
      generation,
      x,
      y: middle,
      lines,
      box: {
        left: x - 7,
        top: this.#y,
        right: Math.max(...lines.map((line) => line.x + widthOf(line.text, line.size))),
        bottom,
      },
      isRoot: person === this.#root && kind === 'person',
      placeholder: person !== undefined && this.#kinfolk.label(person).placeholder,
    });
    this.#y = bottom + rowGap - 3;
    return middle;
  }

  drawing(direction: Direction): FamilyDrawing {
    return {
      direction,
      width: drawingWidth,
      height: Math.round(this.#y + foot),
      rows: this.#rows,
      strokes: this.#strokes,
      columns: this.#generations.map((_, generation) => columnOf(generation)),
      generations: this.#generations,
      left: this.#chosen.left,
      goesOn: this.#chosen.goesOn,
    };
  }
}

/** A text broken at its spaces, and where a word alone is too wide, within it: nothing is cut off. */
export function broken(text: string, size: number, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  let width = 0;
  const space = widthOf(' ', size);
  const close = () => {
    if (line !== '') lines.push(line);
    [line, width] = ['', 0];
  };
  for (const word of text.split(' ')) {
    let rest = word;
    let wide = widthOf(rest, size);
    if (line !== '' && width + space + wide <= room) {
      line += ` ${rest}`;
      width += space + wide;
      continue;
    }
    close();
    while (wide > room) {
      let [piece, taken] = ['', 0];
      for (const character of rest) {
        const more = widthOf(character, size);
        if (piece !== '' && taken + more > room) break;
        piece += character;
        taken += more;
      }
      lines.push(piece);
      rest = rest.slice(piece.length);
      wide = widthOf(rest, size);
    }
    [line, width] = [rest, wide];
  }
  close();
  return lines;
}
