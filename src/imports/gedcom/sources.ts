/**
 * Sources, and citations of them, → records.
 *
 * A record of the content contract is one document; a source of GEDCOM may be a whole series of books. So each source
 * and page cited becomes a record, and, where no page is named, each source and whoever it is cited for: standing in
 * one source is not standing on one page. All records of a source name it under `volume`, so that none of them is taken
 * as independent of another until somebody argues it. What the file has is not the document but somebody’s word for
 * it: the record is a derivative of an exemplar that was not examined, and all it is said to state is `inferred`.
 */
import { mediumTypes } from '../../catalogue/gedcom/facts.ts';
import { cslTypes } from '../../model/citation.ts';
import type { RecordDraft } from './drafts.ts';
import { addressUnder } from './facts.ts';
import { slug } from './ids.ts';
import type { ImportLog } from './log.ts';
import { dateUnder, notesUnder, type Citation } from './said.ts';
import { all, one, textUnder, type Structure } from './structure.ts';
import { pointed, type Tree } from './tree.ts';

/** A page with more people on it than this is no page. */
const mostOnPage = 250;

interface Source {
  /** How it is remembered: its title, or its words. */
  key: string;
  title: string;
  cite: RecordDraft['cite'] & object;
  volume: string;
  structure: Structure | undefined;
}

export class Sources {
  readonly records: RecordDraft[] = [];
  readonly #tree: Tree;
  readonly #log: ImportLog;
  readonly #name: string;
  readonly #sources = new Map<string, Source>();
  readonly #volumes = new Map<string, string>();
  readonly #byKey = new Map<string, RecordDraft>();

  /** `name` is that of the import, for volumes of its own. */
  constructor(tree: Tree, log: ImportLog, name: string) {
    this.#tree = tree;
    this.#log = log;
    this.#name = name;
  }

  /** The record that a citation is of; `subject` is whoever it is cited for. */
  recordOf(citation: Citation, subject: string): RecordDraft {
    const source = this.#source(citation);
    const page = citation.page ?? '';
    let key = page === '' ? `${source.key}||${subject}` : `${source.key}|${page}`;
    const there = this.#byKey.get(key);
    if (there && page !== '' && there.mentions.length >= mostOnPage) key = `${key}|${subject}`;
    return this.#byKey.get(key) ?? this.#make(key, source, citation, page, subject);
  }

  /** Sources that nothing cites become records too. */
  uncited(): void {
    for (const [xref, structure] of this.#tree.sources) {
      if (this.#sources.has(xref) || structure.used) continue;
      const source = this.#source({ source: xref, words: '' });
      this.#make(`${source.key}|`, source, { line: structure.line, made: {} }, '', '');
    }
  }

  #make(
    key: string,
    source: Source,
    citation: Pick<Citation, 'line' | 'made'>,
    page: string,
    subject: string,
  ): RecordDraft {
    const title = page === '' ? source.title : `${source.title}, ${page.replace(/\s+/g, ' ')}`;
    const record: RecordDraft = {
      id: '',
      key,
      ...(subject !== '' && key.endsWith(`|${subject}`) ? { subject } : {}),
      wishes: [
        page === '' && subject !== ''
          ? [slug(source.title, 40), slug(subject)].filter(Boolean).join('-')
          : slug(title, 70),
        slug(`${this.#name} ${title}`, 80),
      ],
      plainTitle: `A source of ${this.#tree.file}, line ${source.structure?.line ?? citation.line}`,
      title: title.length > 300 ? `${title.slice(0, 299)}…` : title,
      cite: { ...source.cite, ...(page === '' ? {} : locatorOf(page)) },
      form: 'derivative',
      derivedFrom: [{ unseen: title.length > 300 ? `${title.slice(0, 299)}…` : title }],
      seen: 'report',
      volume: source.volume,
      mentions: [],
      media: [],
      passages: [],
      line: citation.line,
      rest: {},
    };
    if (source.structure && !this.#said.has(source.structure)) {
      // What the source record says at length stands with the first record of it, once.
      this.#said.add(source.structure);
      for (const text of all(source.structure, 'TEXT'))
        if (text.value.trim() !== '')
          record.passages.push({ line: text.line, text: text.value.trim(), quoted: true });
      for (const note of notesUnder(source.structure, this.#tree, this.#log))
        record.passages.push({ ...note, quoted: false });
    }
    this.#byKey.set(key, record);
    this.records.push(record);
    return record;
  }

  readonly #said = new Set<Structure>();

  /** Pictures of the source itself go with the first record of it. */
  mediaOf(citation: Citation): Structure[] {
    const structure = citation.source === undefined ? undefined : this.#tree.sources.get(citation.source);
    return structure ? all(structure, 'OBJE') : [];
  }

  #source({ source: xref, words }: Pick<Citation, 'source' | 'words'>): Source {
    const own = xref ?? `words ${words}`;
    let source = this.#sources.get(own);
    if (source) return source;
    const structure = xref === undefined ? undefined : this.#tree.sources.get(xref);
    source = structure ? this.#read(xref!, structure) : this.#inWords(words);
    this.#sources.set(own, source);
    return source;
  }

  #inWords(words: string): Source {
    const title = words.replace(/\s+/g, ' ').trim() || 'A source without a name';
    const short = title.length > 200 ? `${title.slice(0, 199)}…` : title;
    return {
      key: title,
      title: short,
      cite: { type: 'document', title: short },
      volume: this.#volume(short),
      structure: undefined,
    };
  }

  #read(xref: string, structure: Structure): Source {
    structure.used = true;
    const full = textUnder(structure, 'TITL')?.replace(/\s+/g, ' ');
    const short = textUnder(structure, 'ABBR')?.replace(/\s+/g, ' ');
    const title = full ?? short ?? `Source ${xref} of ${this.#tree.file}`;
    const author = textUnder(structure, 'AUTH')?.replace(/\s+/g, ' ');
    const publication = textUnder(structure, 'PUBL')?.replace(/\s+/g, ' ');
    const data = one(structure, 'DATA');
    const agency = data && textUnder(data, 'AGNC');
    const held = one(structure, 'REPO');
    const repository = held && pointed(this.#tree.repositories, held);
    const calls = held ? all(held, 'CALN') : [];
    const medium = calls.map((call) => one(call, 'MEDI')).find((found) => found !== undefined);
    const kind = mediumTypes[medium?.value.trim().toUpperCase() ?? ''];
    const cite: Source['cite'] = {
      type: cslTypes.find((type) => type === kind?.type) ?? (publication ? 'book' : 'document'),
      title,
      ...(short && full ? { 'title-short': short } : {}),
      ...(author ? { author: [{ literal: author }] } : {}),
      ...(publication ? { publisher: publication } : {}),
      ...(agency ? { authority: agency } : {}),
      ...(kind?.medium ? { medium: kind.medium } : {}),
    };
    if (repository) this.#hold(cite, repository);
    const call = calls.map(({ value }) => value.trim()).filter(Boolean);
    if (call.length > 0) cite['call-number'] = call.join('; ');
    if (held)
      for (const note of notesUnder(held, this.#tree, this.#log))
        cite.note = [cite.note, note.text.replace(/\s+/g, ' ')].filter(Boolean).join(' ');
    return {
      key: title,
      title: title.length > 200 ? `${title.slice(0, 199)}…` : title,
      cite,
      volume: this.#volume(title),
      structure,
    };
  }

  #hold(cite: Source['cite'], repository: Structure): void {
    repository.used = true;
    const name = textUnder(repository, 'NAME');
    if (name) cite.archive = name.replace(/\s+/g, ' ');
    const place = addressUnder(repository);
    if (place) cite['archive-place'] = place;
  }

  #volume(title: string): string {
    let volume = this.#volumes.get(title);
    if (volume === undefined) {
      const taken = new Set(this.#volumes.values());
      const stem = `${this.#name}-${slug(title, 40) || 'source'}`;
      volume = stem;
      for (let n = 2; taken.has(volume); n++) volume = `${stem}-${n}`;
      this.#volumes.set(title, volume);
    }
    return volume;
  }
}

/** Where in the source: a bare number is a page, words are kept as they stand. */
function locatorOf(page: string): Record<string, string> {
  const number = /^(?:p{1,2}\.?|pages?)?\s*(\d+(?:\s*[-–]\s*\d+)?)$/i.exec(page.trim())?.[1];
  return number === undefined ? { section: page.replace(/\s+/g, ' ').trim() } : { page: number };
}

/** When a source’s own header says it was made, for records of the file itself. */
export function fileDate(header: Structure | undefined): string | undefined {
  return header && dateUnder(header).date;
}
