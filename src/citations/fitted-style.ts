/**
 * Our note style cut down to what some citations can print. The processor walks through a whole style for each of
 * them, and most of it asks for variables they do not have; of one type of source a tenth is left.
 *
 * Cutting changes nothing in what is printed: what goes is an element whose variable none of the citations has, a
 * condition that is known for all of them, and a group that would print nothing without its variables.
 */
import type { StyleNode } from './style-xml.ts';

/** The style for citations of one type that have no other variables than these. */
export function fitted(style: StyleNode, type: string, variables: ReadonlySet<string>): StyleNode {
  const macros = new Map<string, StyleNode>();
  for (const child of style.children)
    if (typeof child !== 'string' && child.name === 'macro') macros.set(child.attrs['name']!, child);
  return new Fitting(type, variables, macros).style(style);
}

class Fitting {
  readonly #type: string;
  readonly #variables: ReadonlySet<string>;
  readonly #macros: ReadonlyMap<string, StyleNode>;
  readonly #fitted = new Map<string, StyleNode>();

  constructor(type: string, variables: ReadonlySet<string>, macros: ReadonlyMap<string, StyleNode>) {
    this.#type = type;
    this.#variables = variables;
    this.#macros = macros;
  }

  style(style: StyleNode): StyleNode {
    const children = style.children.map((child) => {
      if (typeof child === 'string' || child.name === 'info' || child.name === 'locale') return child;
      if (child.name === 'macro') return this.#macro(child.attrs['name']!);
      const inside = child.children.map((layout) =>
        typeof layout === 'string' ? layout : { ...layout, children: this.#all(layout.children) },
      );
      return { ...child, children: inside };
    });
    return { ...style, children };
  }

  #macro(name: string): StyleNode {
    let macro = this.#fitted.get(name);
    if (!macro) {
      const whole = this.#macros.get(name)!;
      this.#fitted.set(name, (macro = { ...whole, children: this.#all(whole.children) }));
    }
    return macro;
  }

  #all(nodes: StyleNode['children']): StyleNode['children'] {
    return nodes.flatMap((node) => (typeof node === 'string' ? [node] : this.#one(node)));
  }

  #one(node: StyleNode): StyleNode['children'] {
    const { name, attrs } = node;
    if (name === 'choose') return this.#choose(node);
    if (name === 'names') return this.#names(node) ? [node] : [];
    if (attrs['macro'] !== undefined) return this.#macro(attrs['macro']).children.length > 0 ? [node] : [];
    if (attrs['variable'] !== undefined) return this.#given(attrs['variable'], attrs['form']) ? [node] : [];
    if (name !== 'group') return [node];
    const children = this.#all(node.children);
    return children.some((child) => this.#asks(child)) || !this.#asks(node) ? [{ ...node, children }] : [];
  }

  #given(variable: string, form?: string): boolean {
    return this.#variables.has(variable) || (form === 'short' && this.#variables.has(`${variable}-short`));
  }

  /** Whether names, or those that may stand in for them, are there. */
  #names(node: StyleNode): boolean {
    return (
      (node.attrs['variable'] ?? '').split(' ').some((variable) => this.#variables.has(variable)) ||
      node.children.some(
        (child) =>
          typeof child !== 'string' &&
          child.name === 'substitute' &&
          child.children.some((other) => typeof other !== 'string' && this.#names(other)),
      )
    );
  }

  /** Whether anything in it is a variable, so that a group stands or falls with it. */
  #asks(node: StyleNode | string): boolean {
    if (typeof node === 'string') return false;
    if (node.attrs['variable'] !== undefined && node.name !== 'if' && node.name !== 'else-if') return true;
    if (node.attrs['macro'] !== undefined)
      return this.#macros.get(node.attrs['macro'])!.children.some((child) => this.#asks(child));
    return node.children.some((child) => this.#asks(child));
  }

  #choose(node: StyleNode): StyleNode['children'] {
    const branches: StyleNode[] = [];
    for (const branch of node.children) {
      if (typeof branch === 'string') continue;
      const holds = branch.name === 'else' ? true : this.#condition(branch);
      if (holds === false) continue;
      const children = this.#all(branch.children);
      if (holds === undefined) {
        branches.push({ ...branch, name: branches.length === 0 ? 'if' : 'else-if', children });
        continue;
      }
      if (branches.length === 0) return children;
      branches.push({ name: 'else', attrs: {}, children });
      break;
    }
    return branches.length === 0 ? [] : [{ ...node, children: branches }];
  }

  /** Whether a condition holds for all of the citations; nothing where it depends on which. */
  #condition({ attrs }: StyleNode): boolean | undefined {
    const { match = 'all', ...asked } = attrs;
    const answers = Object.entries(asked).flatMap(([what, words]) =>
      words.split(' ').map((word): boolean | undefined => {
        if (what === 'type') return word === this.#type;
        if (what === 'variable' || what === 'is-numeric')
          return this.#variables.has(word) ? undefined : false;
        return undefined;
      }),
    );
    if (match === 'all')
      return answers.includes(false) ? false : answers.includes(undefined) ? undefined : true;
    const any = answers.includes(true) ? true : answers.includes(undefined) ? undefined : false;
    return match === 'any' || any === undefined ? any : !any;
  }
}
