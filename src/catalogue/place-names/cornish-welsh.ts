import type { ElementSet } from './types.ts';

/**
 * Elements of Cornish and Welsh place names, with the changed first letters (mutations) that the same word has after
 * another, and the spellings of English clerks.
 */
// prettier-ignore
export const cornishWelshElements: ElementSet = {
  language: 'Cornish and Welsh',
  source:
    'T. F. G. Dexter, Cornish Names (1926), and T. Morgan, Handbook of the Origin of Place-Names in Wales and Monmouthshire (1887), for the elements; clerks’ spellings from memory',
  elements: [
    { means: 'homestead', at: 'start', forms: ['tre', 'trev', 'tref', 'treva', 'tree', 'trae'] },
    { means: 'church, enclosure', at: 'start', forms: ['llan', 'lan', 'lann', 'lhan', 'clan', 'thlan', 'llam', 'flan'] },
    { means: 'head, end', at: 'start', forms: ['pen', 'penn', 'ben', 'pin'] },
    { means: 'pool', at: 'start', forms: ['pwll', 'pol', 'pool', 'poll', 'pul', 'pwl', 'pull'] },
    { means: 'hill', at: 'start', forms: ['bryn', 'brin', 'brynn', 'fryn', 'brynne', 'brinn'] },
    { means: 'house', at: 'start', forms: ['chy', 'che', 'ty', 'chi', 'tshey'] },
    { means: 'rock', at: 'start', forms: ['carrek', 'carrick', 'carreg', 'garreg', 'careg', 'carrack'] },
    { means: 'dwelling', at: 'start', forms: ['bos', 'bod', 'boj', 'bot', 'fod'] },
    { means: 'fort', at: 'start', forms: ['caer', 'ker', 'car', 'gaer', 'kaer', 'cear', 'care'] },
    { means: 'river mouth', at: 'start', forms: ['aber', 'abber', 'abar', 'abor'] },
    { means: 'wood', at: 'start', forms: ['coed', 'goed', 'coid', 'cos', 'coyd', 'coede', 'koed'] },
    { means: 'big', at: 'end', forms: ['mawr', 'fawr', 'vawr', 'maur', 'vaur', 'vor', 'veor', 'meur', 'faur'] },
    { means: 'little', at: 'end', forms: ['bach', 'fach', 'vach', 'bychan', 'fechan', 'vechan', 'vean', 'vian', 'bihan', 'bighan'] },
    { means: 'white', at: 'end', forms: ['gwyn', 'wyn', 'gwen', 'wen', 'wyne', 'gwidden', 'widden', 'winn'] },
    { means: 'black', at: 'end', forms: ['du', 'ddu', 'dhu', 'thu'] },
    { means: 'red', at: 'end', forms: ['coch', 'goch', 'gogh', 'rudh', 'goughe'] },
  ],
};
