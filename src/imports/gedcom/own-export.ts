/**
 * What a file holds in the extensions of our own exports (`src/catalogue/gedcom/extensions.ts`): records, places and the
 * parts of people for which the standard has no place. Where the standard part of a file says something else by now,
 * because another program changed it, the standard part is taken in beside it.
 */
import { extensionTags, idType } from '../../catalogue/gedcom/extensions.ts';
import { idPattern } from '../../model/common.ts';
import { personFile } from '../../model/person.ts';
import { placeEntry, type PlaceEntry } from '../../model/place.ts';
import { recordFile, type RecordFile } from '../../model/record.ts';
import type { MentionDraft, PersonDraft, RecordDraft } from './drafts.ts';
import type { ImportLog } from './log.ts';
import type { Citation, PlaceSaid } from './said.ts';
import { useAll, type Structure } from './structure.ts';
import type { Tree } from './tree.ts';

export class OwnExport {
  readonly records: RecordDraft[] = [];
  /** Places by the identifier of their record. */
  readonly places = new Map<string, PlaceEntry>();
  readonly #bySource = new Map<string, RecordDraft>();
  readonly #byId = new Map<string, RecordDraft>();
  readonly #tree: Tree;
  readonly #known: boolean;

  constructor(tree: Tree, log: ImportLog) {
    this.#tree = tree;
    this.#known = Object.entries(extensionTags).every(([tag, uri]) => tree.extensions.get(tag) === uri);
    if (!this.#known) return;
    for (const structure of tree.others) if (structure.tag === '_PLACE') this.#place(structure, log);
    for (const [xref, structure] of tree.sources) this.#record(xref, structure, log);
  }

  /** Gives people the mentions that an export says are theirs. */
  attach(persons: ReadonlyMap<string, PersonDraft>): void {
    if (!this.#known) return;
    for (const [xref, person] of persons) {
      const own = this.#tree.individuals.get(xref)!.children.find(({ tag }) => tag === '_PERSON');
      if (!own) continue;
      useAll(own);
      const value = valueOf(own) as Record<string, unknown>;
      const judged = personFile.partial().safeParse(value);
      if (!judged.success) continue;
      person.rest = value;
      for (const ref of judged.data.mentions ?? []) {
        const [id = '', mention = ''] = ref.split('#');
        const record = this.#byId.get(id);
        if (record?.mentions.some((one) => one.id === mention)) person.mentions.push({ record, mention });
      }
      if (judged.data.living !== undefined) person.living = judged.data.living;
      if (judged.data.placeholder) person.placeholder = true;
    }
  }

  /** Takes a person’s biography from the note that holds it. */
  person(person: PersonDraft, structure: Structure, log: ImportLog): void {
    if (!this.#known) return;
    const at = structure.children.findIndex(({ tag, children }) => tag === 'NOTE' && isBody(children));
    if (at >= 0) person.body = structure.children.splice(at, 1)[0]!.value;
    // How a case stands is worked out here; what an export told of it is not brought in again.
    for (const note of structure.children.filter(
      ({ tag, children }) => tag === 'NOTE' && isKept(children, 'case'),
    )) {
      structure.children.splice(structure.children.indexOf(note), 1);
      log.leave(note, 'INDI.NOTE of a case');
    }
  }

  /** The id of a place record, if the place as written still begins with its name. */
  place(xref: string, said: PlaceSaid): string | undefined {
    const place = this.places.get(xref);
    return place && (place.name === undefined || place.name.replaceAll(',', ' ').trim() === said.parts[0])
      ? place.id
      : undefined;
  }

  /** The record that a citation is of, where an export of ours has it. */
  recordOf(citation: Citation): RecordDraft | undefined {
    return citation.source === undefined ? undefined : this.#bySource.get(citation.source);
  }

  /** Whether a citation only tells again what a mention says. */
  holds(citation: Citation): boolean {
    return (
      citation.mention !== undefined &&
      this.recordOf(citation)?.mentions.some(({ id }) => id === citation.mention) === true
    );
  }

  #place(structure: Structure, log: ImportLog): void {
    useAll(structure);
    const judged = placeEntry.safeParse(valueOf(structure));
    if (judged.success && structure.xref !== undefined) this.places.set(structure.xref, judged.data);
    else
      log.doubts.add(
        structure.line,
        'This place of an earlier export can’t be read any more; what the standard says was taken.',
      );
  }

  #record(xref: string, structure: Structure, log: ImportLog): void {
    const own = structure.children.find(({ tag }) => tag === '_RECORD');
    if (!own) return;
    useAll(structure);
    for (const { tag, value: xref } of structure.children) {
      const beside =
        tag === 'REPO'
          ? this.#tree.repositories.get(xref)
          : tag === 'OBJE'
            ? this.#tree.media.get(xref)
            : undefined;
      if (beside) useAll(beside);
    }
    const value = valueOf(own) as Record<string, unknown>;
    const judged = recordFile.safeParse(value);
    if (!judged.success) {
      log.doubts.add(
        structure.line,
        'This record of an earlier export can’t be read any more; what the standard says was taken.',
      );
      return;
    }
    const {
      mentions,
      media,
      title: ownTitle,
      form,
      cite,
      derivedFrom,
      seen,
      made,
      place,
      volume,
      ...rest
    } = value as unknown as RecordFile;
    // What the standard says goes before: another program may have changed it.
    const title = structure.children.find(({ tag }) => tag === 'TITL')?.value.trim() || ownTitle;
    const id = idOf(structure) ?? '';
    const body = structure.children.find(({ tag, children }) => tag === 'TEXT' && isBody(children));
    const record: RecordDraft = {
      id: '',
      key: `own|${id || xref}`,
      wishes: [id],
      plainTitle: title,
      title,
      ...(cite ? { cite: cite as RecordDraft['cite'] & object } : {}),
      form,
      ...((derivedFrom as unknown) === undefined ? {} : { derivedFrom: [derivedFrom].flat() }),
      ...(seen === undefined ? {} : { seen }),
      ...(made === undefined ? {} : { made: String(made) }),
      ...(place === undefined ? {} : { place }),
      ...(volume === undefined ? {} : { volume }),
      mentions: ((mentions as unknown as MentionDraft[] | undefined) ?? []).map((mention) => ({
        ...mention,
      })),
      media: ((media as { file: string; alt: string }[] | undefined) ?? []).map((one) => ({ ...one })),
      passages: body ? [{ line: body.line, text: body.value, quoted: false, markdown: true }] : [],
      line: structure.line,
      rest: rest as Record<string, unknown>,
    };
    this.records.push(record);
    this.#bySource.set(xref, record);
    if (id !== '') this.#byId.set(id, record);
  }
}

/** The id that an export of ours gave a person, a record or a place. */
export function idOf(structure: Structure): string | undefined {
  const reference = structure.children.find(
    ({ tag, children }) =>
      tag === 'REFN' && children.some((child) => child.tag === 'TYPE' && child.value === idType),
  );
  return reference && idPattern.test(reference.value) ? reference.value : undefined;
}

function isBody(children: readonly Structure[]): boolean {
  return isKept(children, 'body');
}

function isKept(children: readonly Structure[], key: string): boolean {
  return children.some(({ tag, value }) => tag === '_KEY' && value === key);
}

/** The value that the structures under one spell out. */
function valueOf({ children }: Structure): unknown {
  const items = children.filter(({ tag }) => tag === '_ITEM');
  if (items.length > 0) return items.map((item) => scalar(item.value) ?? valueOf(item));
  const value: Record<string, unknown> = {};
  for (const child of children) {
    if (child.tag !== '_KEY') continue;
    const at = child.value.search(/\s/);
    const key = at < 0 ? child.value : child.value.slice(0, at);
    if (key === '__proto__') continue;
    value[key] = at < 0 ? valueOf(child) : scalar(child.value.slice(at + 1));
  }
  return value;
}

function scalar(text: string): unknown {
  if (text === '') return undefined;
  if (!text.startsWith('#')) return text;
  try {
    return JSON.parse(text.slice(1));
  } catch {
    return text;
  }
}
