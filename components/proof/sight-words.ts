/** The sight-line drawing in words: all it shows, for those who read rather than look. */
import type { Body, Fix, Miss } from './bodies.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Phrase } from '../../src/interface/phrase.ts';
import type { ItemName } from './sheet.ts';
import { reasonWords } from './sight-lettering.ts';
import { numberWord } from '../../src/dossier/words.ts';

export interface SightWords {
  /** What the drawing is, in one line. */
  title: string;
  /** What it shows, in a few sentences. */
  summary: string;
  lines: { letter: string; words: Phrase }[];
  misses: Phrase[];
  outside: Phrase[];
}

/** The words of a fix. `item` gives each item’s title. */
export function sightWords(fix: Fix, names: Namer, item: (id: string) => ItemName): SightWords {
  const named = (id: string): Phrase => [names.item(id), item(id).title ? ` (${item(id).title})` : ''];
  const [mark, ...above] = fix.levels;
  const place = names.placeName(mark!.place);
  const missing = fix.misses.length + fix.bodies.filter((body) => body.miss).length;
  const steps = above.map(
    (level) =>
      `${numberWord(level.independent)} ${level.independent === 1 ? 'reaches' : 'reach'} ${names.placeAndKind(level.place)}`,
  );
  return {
    title: `Sight lines to ${place}`,
    summary: [
      `${capital(lineCount(mark!.independent))} ${mark!.independent === 1 ? 'meets' : 'meet'} the mark, ${names.placeAndKind(mark!.place)}.`,
      steps.length > 0 ? `${capital(steps.join('; '))}.` : '',
      missing === 0 ? '' : `${capital(lineCount(missing))} ${missing === 1 ? 'passes' : 'pass'} the mark by.`,
    ]
      .filter(Boolean)
      .join(' '),
    lines: fix.bodies.map((body) => ({ letter: body.letter, words: bodyWords(body, fix, names, named) })),
    misses: fix.misses.map((miss) => [...named(miss.item), ...missWords(miss, fix, names), '.']),
    outside: outsideWords(fix, names, named),
  };
}

function bodyWords(body: Body, fix: Fix, names: Namer, named: (id: string) => Phrase): Phrase {
  const words: Phrase[] = [
    [
      ...named(body.item),
      body.reach === 0 ? ' reaches the mark' : ` reaches ${names.placeName(fix.levels[body.reach]!.place)}`,
    ],
  ];
  if (body.miss)
    words.push([
      `but${missWords(body.miss, fix, names)[0] as string}`,
      ...missWords(body.miss, fix, names).slice(1),
    ]);
  for (const relation of ['dependent', 'undetermined'] as const) {
    const items = body.joined.filter((j) => j.relation === relation);
    if (items.length === 0) continue;
    const many = items.length > 1;
    const does =
      relation === 'dependent'
        ? many
          ? ' share its line'
          : ' shares its line'
        : many
          ? ' run alongside and are not counted beside it'
          : ' runs alongside and is not counted beside it';
    words.push([...joined(items.map((j) => named(j.item))), does]);
    for (const j of items)
      if (j.insteadAt.length > 0)
        words.push([
          names.item(j.item),
          ' is counted in its place at ',
          ...joined(j.insteadAt.map((level) => [names.placeName(fix.levels[level]!.place)])),
        ]);
  }
  return [...joined(words, '; ', '; '), '.'];
}

/** What is not counted, gathered by reason; three or more of one reason are named by their ids alone. */
function outsideWords(fix: Fix, names: Namer, named: (id: string) => Phrase): Phrase[] {
  const byReason = new Map<string, string[]>();
  for (const { item, reasons } of fix.outside)
    byReason.set(reasonWords(reasons), [...(byReason.get(reasonWords(reasons)) ?? []), item]);
  return [...byReason].map(([why, items]) => [
    ...joined(items.map((item) => (items.length < 3 ? named(item) : [names.item(item)]))),
    `: ${why}.`,
  ]);
}

function missWords(miss: Miss, fix: Fix, names: Namer): Phrase {
  const place = names.placeName(fix.levels[0]!.place);
  const to: Phrase =
    miss.place === null
      ? [` speaks against ${place}`]
      : [` passes ${place} by and ends at `, names.place(miss.place)];
  const also = miss.also.length > 0 ? `; ${reasonWords(miss.also)}` : '';
  const beside = miss.joinedTo ? `; not independent of line ${miss.joinedTo.letter}` : '';
  return [...to, miss.answered ? ', answered' : ', not answered', also + beside];
}

function lineCount(n: number): string {
  return `${numberWord(n)} line${n === 1 ? '' : 's'} of sight`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
