/** What a person’s or a family’s structures tell, one by one. */
import { familyFacts, individualFacts, type FactKind } from '../../catalogue/gedcom/facts.ts';
import type { SaidDate } from '../../model/interchange-date.ts';
import type { ImportLog } from './log.ts';
import {
  ageUnder,
  associatesUnder,
  citationsUnder,
  dateUnder,
  notesUnder,
  placeUnder,
  type Associate,
  type Citation,
  type NoteText,
  type PlaceSaid,
} from './said.ts';
import { all, one, textLines, textUnder, useAll, type Structure } from './structure.ts';
import type { Tree } from './tree.ts';

/** One thing told of somebody. */
export interface Fact {
  line: number;
  tag: string;
  /** The word for it: an event’s kind, or the name of an attribute. */
  kind: string;
  attribute: boolean;
  /** Said to have happened, by the payload Y: without it, a date or a place, an event is not asserted (GEDCOM 5.5.1 and 7.0). */
  happened: boolean;
  /** Of an attribute, what it says. */
  value: string | undefined;
  date: SaidDate;
  place: PlaceSaid | undefined;
  age: { age?: number | string; words?: string };
  /** The ages of the partners in a fact of a family. */
  ages: { husband?: ReturnType<typeof ageUnder>; wife?: ReturnType<typeof ageUnder> };
  /** Whatever else it says, by a name under `says`. */
  says: Record<string, string>;
  notes: NoteText[];
  citations: Citation[];
  associates: Associate[];
  media: Structure[];
}

const ofPeople = new Map(individualFacts.map((kind) => [kind.tag, kind]));
const ofFamilies = new Map(familyFacts.map((kind) => [kind.tag, kind]));

export interface FactContext {
  tree: Tree;
  log: ImportLog;
  form: readonly string[];
}

/** The facts under a person. */
export function factsOfPerson(person: Structure, context: FactContext): Fact[] {
  return factsUnder(person, ofPeople, context);
}

/** The facts under a family. */
export function factsOfFamily(family: Structure, context: FactContext): Fact[] {
  return factsUnder(family, ofFamilies, context);
}

function factsUnder(of: Structure, kinds: ReadonlyMap<string, FactKind>, context: FactContext): Fact[] {
  const facts: Fact[] = [];
  for (const structure of of.children) {
    const kind = kinds.get(structure.tag);
    // A structure with nothing under it and nothing in it says nothing (GEDCOM 7.0, on the payload Y).
    if (!kind || structure.pointer) continue;
    const restriction = structure.children.find(({ tag }) => tag === 'RESN');
    if (restriction && /CONFIDENTIAL|PRIVACY/i.test(restriction.value)) {
      context.log.doubts.add(
        structure.line,
        `This ${kind.kind} is marked ${restriction.value.trim().toLowerCase()}, so it was left out.`,
      );
      continue;
    }
    structure.used = true;
    facts.push(readFact(structure, kind, context));
  }
  for (const structure of all(of, 'NO')) facts.push(never(structure, context));
  return facts;
}

function readFact(structure: Structure, kind: FactKind, { tree, log, form }: FactContext): Fact {
  const type = textUnder(structure, 'TYPE');
  const plain = structure.value.trim();
  const value = plain === '' || (plain === 'Y' && !kind.attribute) ? undefined : plain;
  const named = structure.tag === 'EVEN' || structure.tag === 'FACT';
  const says: Record<string, string> = {};
  if (type !== undefined && !named) says.type = type;
  for (const [tag, name] of [
    ['CAUS', 'cause'],
    ['AGNC', 'agency'],
    ['RELI', 'denomination'],
  ] as const) {
    const text = textUnder(structure, tag);
    if (text !== undefined) says[name] = text;
  }
  const address = addressUnder(structure);
  if (address !== undefined) says.address = address;
  if (value !== undefined && !kind.attribute) says[named ? 'words' : 'told'] = value;
  return {
    line: structure.line,
    tag: structure.tag,
    kind: named && type !== undefined ? type.toLowerCase() : kind.kind,
    attribute: kind.attribute,
    happened: !kind.attribute && plain === 'Y',
    value: kind.attribute ? value : undefined,
    date: dateUnder(structure),
    place: placeUnder(structure, form),
    age: ageUnder(structure),
    ages: partnersAges(structure),
    says,
    notes: notesUnder(structure, tree, log),
    citations: citationsUnder(structure, tree, log),
    associates: associatesUnder(structure, tree, log),
    media: all(structure, 'OBJE'),
  };
}

function partnersAges(structure: Structure): Fact['ages'] {
  const husband = one(structure, 'HUSB');
  const wife = one(structure, 'WIFE');
  return { ...(husband ? { husband: ageUnder(husband) } : {}), ...(wife ? { wife: ageUnder(wife) } : {}) };
}

/** `NO NATU`: somebody says that it never happened. */
function never(structure: Structure, { tree, log }: FactContext): Fact {
  const kind = ofPeople.get(structure.value.trim()) ?? ofFamilies.get(structure.value.trim());
  return {
    line: structure.line,
    tag: 'NO',
    kind: 'never',
    attribute: true,
    happened: false,
    value: kind?.kind ?? structure.value.trim(),
    date: dateUnder(structure),
    place: undefined,
    age: {},
    ages: {},
    says: {},
    notes: notesUnder(structure, tree, log),
    citations: citationsUnder(structure, tree, log),
    associates: [],
    media: [],
  };
}

const addressParts = ['ADR1', 'ADR2', 'ADR3', 'CITY', 'STAE', 'POST', 'CTRY'];

/** An address in one line. */
export function addressUnder(of: Structure): string | undefined {
  const address = one(of, 'ADDR');
  if (!address) return undefined;
  const parts = addressParts.map((tag) => textUnder(address, tag)).filter((part) => part !== undefined);
  const whole = textLines(address.value).join(', ');
  useAll(address);
  return whole || parts.join(', ') || undefined;
}
