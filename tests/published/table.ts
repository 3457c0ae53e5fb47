import { readFileSync } from 'node:fs';

/** The rows of a tab-separated table beside the tests; lines beginning with # say where it comes from. */
export function publishedTable(name: string): string[][] {
  return readFileSync(new URL(`./${name}`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split('\t'));
}
