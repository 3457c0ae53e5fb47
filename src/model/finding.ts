/** How grave a finding is. Only an error stops a build. */
export type Severity = 'error' | 'warning' | 'hint';

/** Where in an author's file something stands. Line and column count from 1, columns in characters. */
export interface Position {
  file: string;
  line: number;
  column: number;
}

/** Something `check` has to say. */
export interface Finding extends Position {
  severity: Severity;
  rule: string;
  /** What is wrong, in a sentence. */
  message: string;
  /** What to do about it. */
  help: string;
}

/** The path of a value inside a front matter or YAML file: `['evidence', 2, 'place']`. */
export type ValuePath = readonly (string | number)[];
