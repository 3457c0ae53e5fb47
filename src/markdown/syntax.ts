/**
 * The Markdown of the content: CommonMark with tables, strikethrough, footnotes, citations and evidence references;
 * in `.mdx` also tags and braces, which are read into the tree and never run. Bare web addresses are left as they
 * are: looking for them costs more than all the rest.
 */
import type { Node as MdastNode, Root } from 'mdast';
import {
  fromMarkdown,
  type CompileContext,
  type Extension as MdastExtension,
  type Token,
} from 'mdast-util-from-markdown';
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote';
import { gfmStrikethroughFromMarkdown } from 'mdast-util-gfm-strikethrough';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { mdxExpressionFromMarkdown } from 'mdast-util-mdx-expression';
import { mdxJsxFromMarkdown } from 'mdast-util-mdx-jsx';
import { gfmFootnote } from 'micromark-extension-gfm-footnote';
import { gfmStrikethrough } from 'micromark-extension-gfm-strikethrough';
import { gfmTable } from 'micromark-extension-gfm-table';
import { mdxExpression } from 'micromark-extension-mdx-expression';
import { mdxJsx } from 'micromark-extension-mdx-jsx';
import { mdxMd } from 'micromark-extension-mdx-md';
import { decodeString } from 'micromark-util-decode-string';
import type { Code, Effects, Extension, State, TokenizeContext } from 'micromark-util-types';
import { readReference, type CitedItem } from './citation-syntax.ts';

/** A citation in the tree. Offsets are offsets in the body. */
export interface CitationNode extends MdastNode {
  type: 'citation';
  items: CitedItem[];
}

/** An evidence reference in the tree. Offsets are offsets in the body. */
export interface EvidenceNode extends MdastNode {
  type: 'evidenceReference';
  items: { id: string; at: number }[];
}

declare module 'mdast' {
  interface PhrasingContentMap {
    citation: CitationNode;
    evidenceReference: EvidenceNode;
  }
  interface RootContentMap {
    citation: CitationNode;
    evidenceReference: EvidenceNode;
  }
}

declare module 'micromark-util-types' {
  interface TokenTypeMap {
    bracketReference: 'bracketReference';
    bracketReferenceText: 'bracketReferenceText';
  }
  interface Token {
    /** The text between the brackets, and where in the body each character of it stands. */
    bracketed?: { text: string; offsets: number[] };
  }
}

/** Brackets longer than this are prose, not a citation. */
const longest = 2000;

const references: Extension = { text: { 91: { name: 'bracketReference', tokenize: tokenizeReference } } };

function tokenizeReference(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
  const now = () => this.now().offset;
  const offsets = [now()];
  let text = '';
  let escaped = false;

  return (code) => {
    effects.enter('bracketReference').bracketed = { text: '', offsets };
    effects.enter('bracketReferenceText');
    effects.consume(code);
    return first;
  };

  function first(code: Code): State | undefined {
    return code === 94 /* ^ */ || code === 93 /* ] */ ? nok(code) : inside(code);
  }

  function inside(code: Code): State | undefined {
    if (code === null || text.length > longest) return nok(code);
    if (code === 93 /* ] */ && !escaped) return close(code);
    if (code === 96 /* ` */ || (code === 91 /* [ */ && !escaped)) return nok(code);
    escaped = code === 92 /* \ */ && !escaped;
    offsets.push(now());
    text += code < -2 ? '\n' : code < 0 ? ' ' : String.fromCharCode(code);
    if (code < -2) {
      effects.exit('bracketReferenceText');
      effects.enter('lineEnding');
      effects.consume(code);
      effects.exit('lineEnding');
      return startOfLine;
    }
    effects.consume(code);
    return inside;
  }

  function startOfLine(code: Code): State | undefined {
    if (code === null || code < -2) return nok(code);
    effects.enter('bracketReferenceText');
    return inside(code);
  }

  function close(code: Code): State | undefined {
    if (readReference(text) === undefined) return nok(code);
    effects.consume(code);
    effects.exit('bracketReferenceText');
    effects.exit('bracketReference').bracketed!.text = text;
    return after;
  }

  /** `[@x](…)` is a link. */
  function after(code: Code): State | undefined {
    return code === 40 /* ( */ ? nok(code) : ok(code);
  }
}

const referencesFromMarkdown: MdastExtension = {
  enter: {
    bracketReference(this: CompileContext, token: Token) {
      const { text, offsets } = token.bracketed!;
      const reference = readReference(text)!;
      const node =
        reference.kind === 'evidence'
          ? {
              type: 'evidenceReference',
              items: reference.items.map(({ id, at }) => ({ id, at: offsets[at]! })),
            }
          : {
              type: 'citation',
              items: reference.items.map((item) => ({
                after: item.after,
                id: item.id,
                at: offsets[item.at]!,
                before: decodeString(item.before),
                locator: decodeString(item.locator),
              })),
            };
      this.enter(node as CitationNode | EvidenceNode, token);
    },
  },
  exit: {
    bracketReference(this: CompileContext, token: Token) {
      this.exit(token);
    },
  },
};

const plain = {
  extensions: [gfmTable(), gfmStrikethrough({ singleTilde: false }), gfmFootnote(), references],
  mdastExtensions: [
    gfmTableFromMarkdown(),
    gfmStrikethroughFromMarkdown(),
    gfmFootnoteFromMarkdown(),
    referencesFromMarkdown,
  ],
};

/** Without a parser of the programming language: braces are matched and refused, nothing more. */
const withTags = {
  extensions: [...plain.extensions, mdxMd(), mdxJsx(), mdxExpression()],
  mdastExtensions: [...plain.mdastExtensions, mdxJsxFromMarkdown(), mdxExpressionFromMarkdown()],
};

/** The tree of a body. With `mdx`, throws a `VFileMessage` with a place for tags or braces that do not close. */
export function parseMarkdown(body: string, mdx: boolean): Root {
  return fromMarkdown(body, mdx ? withTags : plain);
}
