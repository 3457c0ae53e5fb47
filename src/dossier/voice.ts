import { interfaceTag, wordingIn, type InterfaceTag } from '../interface/index.ts';
import type { SiteVoice } from '../markdown/types.ts';
import type { Site } from '../model/site.ts';

/** How the site speaks inside an author’s text of some language. */
export function voiceIn(site: Pick<Site, 'language' | 'interface'>, language = site.language): SiteVoice {
  const tag: InterfaceTag = interfaceTag(site);
  return {
    tag,
    words: wordingIn(tag).layout.prose,
    ownLang: language === tag ? undefined : tag,
    citationLang: /^en\b/i.test(language) ? undefined : 'en',
  };
}
