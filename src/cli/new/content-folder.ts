/** `new folder`: the files of a new content folder, by path. */
import { yamlText } from './yaml-text.ts';

export function folderFiles(title: string, language = 'en'): Record<string, string> {
  return {
    'site.yaml': `# The site as a whole.
title: ${yamlText(title)}
description: Where our people came from, and how we know.
language: ${language}           # of your writing: en, nb, de …
# contact: your-name@example.org
invented: false        # true for a made-up family: every page then says so
audience: public       # public: nobody living is shown. family: everybody is, and search engines are asked to stay away
livingYears: 110       # people born less long ago than this are presumed living
ageTolerance: 2        # years by which stated ages may wobble and still agree
`,
    'places/places.yaml': `# Your places: one entry each, inside larger ones. Countries, the counties of Ireland and Great Britain, and the
# states and provinces of the United States, Canada and Australia are built in (co-waterford, michigan …): see the
# page of built-in ids on the site. An entry looks like this:
#
# - id: hancock
#   name: Hancock
#   kind: city
#   within: [houghton-county]
# - id: houghton-county
#   name: Houghton County
#   kind: county
#   within: [michigan]
`,
    'records/README.txt': `One Markdown file for each record you examined. Make one with:  npm run new -- record ID --content THIS-FOLDER\n`,
    'people/README.txt': `One Markdown file for each person. Make one with:  npm run new -- person ID --content THIS-FOLDER\n`,
    'cases/README.txt': `One file for each research question. Make one with:  npm run new -- case ID --subject PERSON --content THIS-FOLDER\n`,
    'searches/README.txt': `Lists of searches, those that found nothing too. Make one with:  npm run new -- search ID --for PERSON --series SERIES --content THIS-FOLDER\n`,
    'names/README.txt': `Counts of names in the places your people lived in, as .csv files beginning with:  name,count,total,place,source\n`,
    'media/README.txt': `Scans and photographs. A record names them under media, by their file name here.\n`,
  };
}
