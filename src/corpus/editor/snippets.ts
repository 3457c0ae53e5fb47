/**
 * Completion in Markdown files. The YAML support of VS Code does not look into front matter, but snippets of a workspace
 * work in every file: each id is one, found by typing its beginning, and so is each block an author often needs.
 */
import { editorKinds, type EditorIds } from './ids.ts';

interface Snippet {
  scope: string;
  prefix: string[];
  body: string | string[];
  description: string;
}

const everywhere = 'markdown,mdx,yaml';

/** The text of a `.code-snippets` file: the blocks, then the ids. */
export function snippetsText(ids: EditorIds): string {
  const snippets: Record<string, Snippet> = {};
  for (const [name, { prefix, body, description }] of Object.entries(blocks))
    snippets[name] = { scope: 'markdown,mdx', prefix: [prefix], body, description };
  for (const kind of editorKinds)
    for (const { id, name } of ids[kind]) {
      // A place is looked for by the name that records give it, too.
      const words = kind === 'mention' ? [] : [name.split(',')[0]!];
      snippets[`${kind} ${id}`] = {
        scope: everywhere,
        prefix: [...new Set([id, ...words])],
        body: kind === 'search' ? `search:${id}` : id,
        description: `${kind}: ${name}`,
      };
    }
  return `${JSON.stringify(snippets, null, 1)}\n`;
}

const blocks: Readonly<Record<string, { prefix: string; body: string[]; description: string }>> = {
  'a mention': {
    prefix: 'mention',
    body: [
      '- id: m${1:1}',
      '  name: ${2:as written}',
      '  role: ${3:role}',
      '  birthplace: ${4:as written}$0',
    ],
    description: 'Somebody a record names',
  },
  'an informant': {
    prefix: 'informant',
    body: ['${1:self}: { person: ${2:person-id}, knowledge: ${3|secondary,primary,undetermined|} }$0'],
    description: 'Who supplied the information, and how they knew it',
  },
  'an item of evidence': {
    prefix: 'evidence',
    body: [
      '- id: e${1:1}',
      '  from: ${2:record#m1}',
      '  states: ${3|birthplace,lastResidence,residence,event,nearest,joining|}',
      '  place: ${4:place-id}',
      '  kind: ${5|direct,indirect,negative|}$0',
    ],
    description: 'A statement brought to bear on the case',
  },
  'a hypothesis': {
    prefix: 'hypothesis',
    body: [
      'hypothesis:',
      '  place: ${1:place-id}',
      '  cites: [${2:e1}]',
      '  because: >-',
      '    ${3:Why you think so.}$0',
    ],
    description: 'The working idea of a case still open',
  },
  'a conclusion': {
    prefix: 'conclusion',
    body: [
      'conclusion:',
      '  place: ${1:place-id}',
      '  claim: ${2|probable,established|}',
      '  cites: [${3:e1, e2}]',
      '  because: >-',
      '    ${4:One or two sentences.}$0',
    ],
    description: 'What two independent items hold up',
  },
  'an argument for independence': {
    prefix: 'independence',
    body: [
      'independence:',
      '  - between: [${1:e1, e2}]',
      '    because: >-',
      '      ${2:How each came by it.}$0',
    ],
    description: 'Why two items do not rest on one source',
  },
  'an answer to a conflict': {
    prefix: 'conflicts',
    body: [
      'conflicts:',
      '  - evidence: ${1:e1}',
      '    resolution: >-',
      '      ${2:Why it is wrong, as its own record shows.}$0',
    ],
    description: 'How an item that disagrees is explained',
  },
};
