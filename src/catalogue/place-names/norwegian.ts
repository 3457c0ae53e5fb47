import type { ElementSet } from './types.ts';

/**
 * Elements of Norwegian farm and parish names. Church books were written in Danish spelling, the spelling of farms was
 * renewed in 1838, 1886 and after 1917, and American clerks wrote by ear.
 */
// prettier-ignore
export const norwegianElements: ElementSet = {
  language: 'Norwegian',
  source:
    'O. Rygh, Norske Gaardnavne, Forord og Indledning (1898), for the elements; Danish and American spellings from memory',
  elements: [
    { means: 'farm', at: 'word', forms: ['gard', 'gaard', 'gaarden', 'garden', 'gaar', 'goard', 'gaardene'] },
    { means: 'bay', at: 'end', forms: ['vik', 'vig', 'viig', 'wik', 'wiig', 'wick', 'vigen', 'viken', 'wig', 'vick', 'viga', 'vika'] },
    { means: 'river', at: 'end', forms: ['aa', 'a', 'aaen', 'aae', 'ae', 'aen'] },
    { means: 'cleared land', at: 'end', forms: ['rud', 'rod', 'ryd', 'ruud', 'roed', 'rued', 'rudt'] },
    { means: 'stead', at: 'end', forms: ['stad', 'sta', 'stadt', 'stead', 'sted', 'stadir', 'staad', 'stade', 'sten', 'steen'] },
    { means: 'dwelling', at: 'end', forms: ['set', 'seth', 'sett', 'sat', 'saet', 'seter', 'saeter', 'sater', 'setter'] },
    { means: 'land', at: 'end', forms: ['land', 'lan', 'landt', 'lande', 'lann', 'lanne'] },
    { means: 'home', at: 'end', forms: ['heim', 'hem', 'um', 'em', 'im', 'jem', 'eim', 'om', 'am'] },
    { means: 'open field', at: 'end', forms: ['voll', 'vold', 'wold', 'vol', 'wall', 'wol', 'vollen', 'volden'] },
    { means: 'meadow', at: 'end', forms: ['vin', 'in', 'vinn', 'ine', 'inn', 'en', 'i'] },
    { means: 'hill, slope', at: 'end', forms: ['bakke', 'bakken', 'bak', 'backe', 'bache', 'bakka', 'backen'] },
    { means: 'hill', at: 'end', forms: ['haug', 'haugen', 'houg', 'hougen', 'hoveg', 'hauge', 'hogen', 'howg', 'houge'] },
    { means: 'valley', at: 'end', forms: ['dal', 'dahl', 'dalen', 'dall', 'dahlen', 'daal', 'dale'] },
    { means: 'strip of land', at: 'end', forms: ['teig', 'teigen', 'teg', 'teigh', 'tegen'] },
    { means: 'mountain', at: 'end', forms: ['fjell', 'field', 'fjeld', 'fjel', 'fell', 'feld', 'fjellet'] },
    { means: 'fjord', at: 'end', forms: ['fjord', 'fiord', 'ford', 'fjorden', 'fjor', 'fior'] },
    { means: 'isle', at: 'end', forms: ['oy', 'oe', 'o', 'oen', 'oya', 'oi'] },
    { means: 'headland', at: 'end', forms: ['nes', 'naes', 'ness', 'nas', 'nass', 'neset', 'nese'] },
    { means: 'field', at: 'end', forms: ['aker', 'ager', 'aaker', 'acker', 'agre', 'akre', 'akeren'] },
    { means: 'farm by the church', at: 'start', forms: ['husa', 'huse', 'husse', 'hus'] },
  ],
};
