/**
 * The components that may stand in an `.mdx` case, with their attributes. Attributes are literal text; nothing is
 * ever computed from them.
 */

/** What an attribute's text is: the id of a record or person, or plain text. */
export type AttributeKind = 'record' | 'person' | 'text';

export interface ComponentShape {
  /** What it shows, for the documentation and for messages. */
  shows: string;
  attributes: Readonly<Record<string, { kind: AttributeKind; required: boolean }>>;
  /** Whether Markdown may stand between its tags. */
  holdsText: boolean;
}

/** Every component by name. */
export const components: ReadonlyMap<string, ComponentShape> = new Map<string, ComponentShape>([
  [
    'Scan',
    {
      shows: 'the scan of a record',
      attributes: { record: { kind: 'record', required: true } },
      holdsText: false,
    },
  ],
  [
    'Household',
    {
      shows: 'the people of one household, as a record lists them',
      attributes: {
        record: { kind: 'record', required: true },
        household: { kind: 'text', required: false },
      },
      holdsText: false,
    },
  ],
  [
    'SightLines',
    { shows: 'the drawing of the lines of evidence of this case', attributes: {}, holdsText: false },
  ],
  [
    'Timeline',
    {
      shows: 'the dated mentions of a person',
      attributes: { person: { kind: 'person', required: true } },
      holdsText: false,
    },
  ],
  ['Aside', { shows: 'a remark set apart from the text', attributes: {}, holdsText: true }],
]);
