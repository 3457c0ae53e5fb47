/** The worked examples, read once from their YAML files when the site is made. */
import { readExamples, type Example, type Sentence } from '../../src/catalogue/examples/read.ts';

const files = import.meta.glob<string>('../../src/catalogue/examples/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const book = readExamples(
  Object.fromEntries(
    Object.entries(files).map(([path, text]) => [path.slice(path.lastIndexOf('/') + 1), text]),
  ),
);

export const sentences: readonly Sentence[] = book.sentences;
export const examples: readonly Example[] = book.examples;

/** The examples that show a sentence, in their own order. */
export const examplesOf = (key: string): Example[] =>
  examples.filter((example) => example.shows.includes(key));

/** Plain text with `code` in it, in pieces. */
export function pieces(text: string): { text: string; code: boolean }[] {
  return text.split('`').map((piece, i) => ({ text: piece, code: i % 2 === 1 }));
}

/** The steps of an example: numbered where the author numbered them. */
export function stepsOf({ why }: Example): { numbered: boolean; steps: string[] } {
  const steps = why.trim().split('\n');
  const numbered = steps.every((step) => /^\d+\. /.test(step));
  return { numbered, steps: numbered ? steps.map((step) => step.replace(/^\d+\. /, '')) : steps };
}
