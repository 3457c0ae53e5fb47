/** Names of GEDCOM: `Maurice /Phelan/`, with their parts and their types. */
import { citationsUnder, notesUnder, type Citation, type NoteText } from './said.ts';
import type { FactContext } from './facts.ts';
import { all, one, textUnder, type Structure } from './structure.ts';

export interface Name {
  line: number;
  text: string;
  /** What stands between the slashes. */
  surname: string;
  /** `maiden`, `married`, `also known as` … */
  type: string | undefined;
  nickname: string | undefined;
  notes: NoteText[];
  citations: Citation[];
}

const types: Readonly<Record<string, string>> = {
  AKA: 'also known as',
  BIRTH: 'birth name',
  IMMIGRANT: 'name as an immigrant',
  MAIDEN: 'maiden name',
  MARRIED: 'married name',
  PROFESSIONAL: 'professional name',
  OTHER: 'other name',
};

/** The names of a person, the preferred one first; translations follow the name they translate. */
export function namesOf(person: Structure, context: FactContext): Name[] {
  return all(person, 'NAME').flatMap((structure) => {
    const name = readName(structure, context);
    const others = [...all(structure, 'TRAN'), ...all(structure, 'FONE'), ...all(structure, 'ROMN')].map(
      (other) => ({
        ...readName(other, context),
        type: textUnder(other, 'LANG')
          ? `in ${textUnder(other, 'LANG')}`
          : (textUnder(other, 'TYPE') ?? 'other spelling'),
      }),
    );
    return [name, ...others].filter(({ text }) => text !== '');
  });
}

function readName(structure: Structure, { tree, log }: FactContext): Name {
  const type = one(structure, 'TYPE');
  const phrase = type && textUnder(type, 'PHRASE');
  const code = type?.value.trim().toUpperCase() ?? '';
  const given = textUnder(structure, 'GIVN');
  const surname = textUnder(structure, 'SURN');
  const payload = structure.value;
  const text =
    payload.trim() === ''
      ? [textUnder(structure, 'NPFX'), given, surname, textUnder(structure, 'NSFX')].filter(Boolean).join(' ')
      : plainName(payload);
  // Parts that only say again what the name says have come in with it.
  for (const part of structure.children)
    if (/^(?:NPFX|GIVN|SPFX|SURN|NSFX)$/.test(part.tag) && contains(text, part.value)) part.used = true;
  return {
    line: structure.line,
    text,
    surname: plainName(/\/([^/]*)\//.exec(payload)?.[1] ?? surname ?? ''),
    type: phrase ?? types[code] ?? (code === '' ? undefined : type!.value.trim().toLowerCase()),
    nickname: textUnder(structure, 'NICK'),
    notes: notesUnder(structure, tree, log),
    citations: citationsUnder(structure, tree, log),
  };
}

function plainName(payload: string): string {
  return payload.replaceAll('/', ' ').replace(/\s+/g, ' ').trim();
}

function contains(text: string, part: string): boolean {
  return part.split(/[,\s]+/).every((word) => text.includes(word));
}
