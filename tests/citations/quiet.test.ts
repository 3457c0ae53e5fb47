import { afterEach, expect, test, vi } from 'vitest';
import { noteStyleProblem } from '../../src/citations/with-style.ts';
import { styleOf } from './styles.ts';

afterEach(() => vi.restoreAllMocks());

// Standard output belongs to the report, which may be one JSON document.
test('an attribute the processor does not know is not printed', () => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  noteStyleProblem(styleOf('<text variable="title" prefixx="a"/>'));
  expect(log).not.toHaveBeenCalled();
});
