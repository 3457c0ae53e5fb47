/** JSON Schemas of every kind of file, made from the same schemas that judge content, for editors. */
import { z } from 'zod';
import { caseFile } from '../model/case.ts';
import { personEntry, personFile } from '../model/person.ts';
import { placeEntry } from '../model/place.ts';
import { recordFile } from '../model/record.ts';
import { repliesFile, reviewerEntry, reviewFile } from '../model/review.ts';
import { search } from '../model/search.ts';
import { series } from '../model/series.ts';
import { siteFile } from '../model/site.ts';

interface FileKind {
  title: string;
  /** Which files of a content folder it describes. */
  files: string;
  schema: z.ZodType;
}

const fileKinds: Readonly<Record<string, FileKind>> = {
  site: { title: 'The site', files: 'site.yaml', schema: siteFile },
  case: { title: 'Front matter of a case', files: 'cases/*.{md,mdx}', schema: caseFile },
  record: { title: 'Front matter of a record', files: 'records/*.md', schema: recordFile },
  person: { title: 'Front matter of a person', files: 'people/*.md', schema: personFile },
  people: { title: 'A list of people', files: 'people/*.yaml', schema: z.array(personEntry) },
  places: { title: 'A list of places', files: 'places/*.yaml', schema: z.array(placeEntry) },
  series: { title: 'A list of record series', files: 'series/*.yaml', schema: z.array(series) },
  searches: { title: 'A list of searches', files: 'searches/*.yaml', schema: z.array(search) },
  // A review begins with its day, as the review sheet names it; replies.yaml is another kind of file.
  review: { title: 'A review', files: 'reviews/*/[0-9]*.yaml', schema: reviewFile },
  replies: { title: 'Replies to reviews', files: 'reviews/*/replies.yaml', schema: repliesFile },
  reviewers: { title: 'Known reviewers', files: 'reviewers.yaml', schema: z.array(reviewerEntry) },
};

/** The text of each schema file by its name, the same on every run. */
export function jsonSchemas(): Map<string, string> {
  return new Map(Object.entries(fileKinds).map(([name, kind]) => [`${name}.json`, schemaText(kind)]));
}

/** Which schema describes which files of a content folder, as the YAML support of editors wants it. */
export function schemaGlobs(schemaFolder: string, contentFolder: string): Record<string, string[]> {
  return Object.fromEntries(
    Object.entries(fileKinds)
      .filter(([, kind]) => kind.files.endsWith('.yaml'))
      .map(([name, kind]) => [`${schemaFolder}/${name}.json`, [`${contentFolder}/${kind.files}`]]),
  );
}

function schemaText({ title, files, schema }: FileKind): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', reused: 'ref' });
  return `${JSON.stringify({ $schema, title, description: `${title} (${files}).`, ...rest }, null, 2)}\n`;
}
