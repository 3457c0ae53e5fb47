import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { pages, site } from './support/site.ts';
import { faults } from './support/validator.ts';

test('every page is HTML as the standard has it', () => {
  expect(pages.flatMap((page) => faults(page, readFileSync(join(site, page), 'utf8')))).toEqual([]);
});

test('a page that is not is told', () => {
  const html =
    '<!doctype html>\n<html lang="en"><head><title>x</title></head><body><ul><p>x</p></ul><img src="a.png"></body></html>\n';
  expect(faults('x.html', html).map((fault) => fault.split(' ')[1])).toEqual(
    expect.arrayContaining(['element-permitted-content:', 'wcag/h37:']),
  );
});
