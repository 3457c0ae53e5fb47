import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const components = resolve(import.meta.dirname, '../../components');
const sheets = readdirSync(components, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.css'),
);

// Browser tests look at the layout and the structure of a page in one scheme only, on the strength of this.
test('dark pages differ from light ones in the values of colours alone, set in one place', () => {
  const found = sheets.flatMap((file) => {
    const css = readFileSync(join(components, file), 'utf8');
    return [...css.matchAll(/@media[^{]*prefers-color-scheme[^{]*\{\s*([^{]*)\{([^}]*)\}\s*(\S)/g)].map(
      ([, selector = '', body = '', after = '']) => ({ file, selector: selector.trim(), body, after }),
    );
  });
  expect(sheets.length).toBeGreaterThan(10);
  expect(found.map(({ file, selector, after }) => [file, selector, after])).toEqual([
    ['layout/tokens.css', ':root', '}'],
  ]);
  const declared = found[0]!.body.split(';').map((line) => line.trim());
  for (const line of declared.filter(Boolean)) expect(line).toMatch(/^--[a-z0-9-]+: #[0-9a-f]{3,8}$/);
  // Nowhere else is the scheme asked for.
  const asking = sheets.filter((file) =>
    /light-dark\(|prefers-color-scheme/.test(readFileSync(join(components, file), 'utf8')),
  );
  expect(asking).toEqual(['layout/tokens.css']);
});
