/** Words the notes add to a citation, by language; English where a language has none of its own. */
import type { SourceRecord } from '../model/record.ts';

interface Words {
  seen: Readonly<Record<NonNullable<SourceRecord['seen']>, string>>;
  copying: string;
  perhapsCopying: string;
  drawingOn: string;
  perhapsDrawingOn: string;
  notSeen: string;
  and: string;
}

const english: Words = {
  seen: {
    original: 'seen in the original',
    image: 'seen as an image',
    film: 'seen on film',
    transcript: 'seen only in transcript',
    report: 'known only from a report',
  },
  copying: 'copying',
  perhapsCopying: 'perhaps copying',
  drawingOn: 'drawing on',
  perhapsDrawingOn: 'perhaps drawing on',
  notSeen: '(not seen)',
  and: 'and',
};

const byLanguage: Readonly<Record<string, Words>> = { en: english };

/** The words for a language tag such as `en` or `nb-NO`. */
export function wordsOf(language: string): Words {
  return byLanguage[language.toLowerCase().split('-')[0]!] ?? english;
}
