/** The sight-line drawing in words: all it shows, for those who read rather than look. */
import type { Body, Fix, Miss } from './bodies.ts';
import type { Namer } from '../../src/dossier/words.ts';
import { joined, type Phrase } from '../../src/interface/phrase.ts';
import type { ItemName } from './sheet.ts';
import { reasonWords } from './sight-lettering.ts';

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
  const t = names.wording.proof.sightLines;
  const named = (id: string): Phrase => [names.item(id), item(id).title ? ` (${item(id).title})` : ''];
  const [mark, ...above] = fix.levels;
  const missing = fix.misses.length + fix.bodies.filter((body) => body.miss).length;
  return {
    title: t.title(names.placeName(mark!.place)),
    summary: [
      t.meets(mark!.independent, names.placeAndKind(mark!.place)),
      ...(above.length > 0
        ? [
            t.reach(
              above.map(({ independent, place }) => ({
                n: independent,
                placeAndKind: names.placeAndKind(place),
              })),
            ),
          ]
        : []),
      ...(missing > 0 ? [t.passBy(missing)] : []),
    ].join(' '),
    lines: fix.bodies.map((body) => ({ letter: body.letter, words: bodyWords(body, fix, names, named) })),
    misses: fix.misses.map((miss) => [...named(miss.item), ...missWords(miss, fix, names), '.']),
    outside: outsideWords(fix, names, named),
  };
}

function bodyWords(body: Body, fix: Fix, names: Namer, named: (id: string) => Phrase): Phrase {
  const t = names.wording.proof.sightLines;
  const placeAt = (level: number) => names.placeName(fix.levels[level]!.place);
  const words: Phrase[] = [
    body.reach === 0 ? t.reachesMark(named(body.item)) : t.reachesOnly(named(body.item), placeAt(body.reach)),
  ];
  if (body.miss) words.push(t.but(missWords(body.miss, fix, names)));
  for (const relation of ['dependent', 'undetermined'] as const) {
    const items = body.joined.filter((j) => j.relation === relation);
    if (items.length === 0) continue;
    const all = items.map((j) => named(j.item));
    words.push(relation === 'dependent' ? t.shareLine(all) : t.alongside(all));
    for (const j of items)
      if (j.insteadAt.length > 0) words.push(t.countedInstead(names.item(j.item), j.insteadAt.map(placeAt)));
  }
  return [...joined(words, '; ', '; '), '.'];
}

/** What is not counted, gathered by reason; three or more of one reason are named by their ids alone. */
function outsideWords(fix: Fix, names: Namer, named: (id: string) => Phrase): Phrase[] {
  const t = names.wording.proof.sightLines;
  const byReason = new Map<string, string[]>();
  for (const { item, reasons } of fix.outside) {
    const why = reasonWords(reasons, t);
    byReason.set(why, [...(byReason.get(why) ?? []), item]);
  }
  return [...byReason].map(([why, items]) => [
    ...t.items(items.map((item) => (items.length < 3 ? named(item) : [names.item(item)]))),
    `: ${why}.`,
  ]);
}

function missWords(miss: Miss, fix: Fix, names: Namer): Phrase {
  const t = names.wording.proof.sightLines;
  const place = names.placeName(fix.levels[0]!.place);
  return [
    ...(miss.place === null ? t.speaksAgainst(place) : t.passesTo(place, names.place(miss.place))),
    t.answered(miss.answered),
    miss.also.length > 0 ? `; ${reasonWords(miss.also, t)}` : '',
    miss.joinedTo ? t.notIndependentOf(miss.joinedTo.letter) : '',
  ];
}
