/** What the HTML standard says of a page, as html-validate reads it. */
import { HtmlValidate, StaticConfigLoader, type ConfigData } from 'html-validate';

const config: ConfigData = {
  root: true,
  extends: ['html-validate:recommended'],
  rules: {
    // White space at the end of a line is seen by nobody.
    'no-trailing-whitespace': 'off',
    // The title of a case is the author’s question, as long as it has to be.
    'long-title': 'off',
    // A frame in which a wide table scrolls is named for those who reach it with the keyboard. It is no section of the text.
    'prefer-native-element': ['error', { exclude: ['region'] }],
    // Ids of a page’s own sections begin with _ so that none can be that of a piece of evidence. The standard allows it:
    // https://html.spec.whatwg.org/multipage/dom.html#the-id-attribute
    'valid-id': ['error', { relaxed: true }],
  },
};
const validator = new HtmlValidate(new StaticConfigLoader(config));

/** Where a page is not as the standard has it. */
export function faults(page: string, html: string): string[] {
  const { results } = validator.validateStringSync(html, page);
  return results.flatMap(({ messages }) =>
    messages.map(
      ({ line, column, ruleId, message, selector }) =>
        `${page}:${line}:${column} ${ruleId}: ${message} ${selector ?? ''}`,
    ),
  );
}
