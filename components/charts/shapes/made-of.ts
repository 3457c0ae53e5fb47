/**
 * Which units of Natural Earth's first-order divisions (1:10m, 2012 to 2014) make up which county, province or state.
 *
 * The counties of Britain and of the north of Ireland are put together from the councils and districts of today, which
 * follow the older bounds closely in some places and loosely in others; those that do not follow them to within what
 * a small map shows are marked `rough`. Counties that no set of councils comes near (Cumberland, Inverness-shire) have no shape.
 * Which unit lies in which county is common knowledge.
 */

/** One shape: what it is called, what it is made of, and whether its bounds are rough. */
export interface Cut {
  /** Id of the built-in place; absent where the shape is found by its names. */
  id?: string;
  names: readonly string[];
  /** Names of units, or `#` and their code. */
  of: readonly string[];
  rough?: boolean;
}

const irish = (rows: Record<string, string>): Cut[] =>
  Object.entries(rows).map(([name, code]) => ({ id: `co-${name.toLowerCase()}`, names: [], of: [code] }));
const named = (...names: string[]): Cut[] => names.map((name) => ({ names: [name], of: [name] }));
const whole = (id: string, ...of: string[]): Cut => ({ id, names: [], of });
const roughly = (id: string, ...of: string[]): Cut => ({ id, names: [], of, rough: true });

/** The twenty-six counties of the Republic, cities and halves put back into their counties. */
export const ireland: readonly Cut[] = irish({
  Carlow: '#IE.CW',
  Cavan: '#IE.CN',
  Clare: '#IE.CE',
  Cork: '#IE.CK',
  Donegal: '#IE.DL',
  Dublin: '#IE.DN',
  Galway: '#IE.GY',
  Kerry: '#IE.KY',
  Kildare: '#IE.KE',
  Kilkenny: '#IE.KK',
  Laois: '#IE.LS',
  Leitrim: '#IE.LM',
  Limerick: '#IE.LK',
  Longford: '#IE.LD',
  Louth: '#IE.LH',
  Mayo: '#IE.MO',
  Meath: '#IE.MH',
  Monaghan: 'Monaghan',
  Offaly: '#IE.OY',
  Roscommon: '#IE.RN',
  Sligo: '#IE.SO',
  Tipperary: '#IE.TY',
  Waterford: '#IE.WD',
  Westmeath: '#IE.WH',
  Wexford: '#IE.WX',
  Wicklow: '#IE.WW',
});

/** The six counties of the north, by the districts of 1973 that lie in them wholly or mostly. */
const north: readonly Cut[] = [
  whole('co-fermanagh', 'Fermanagh'),
  roughly('co-tyrone', 'Omagh', 'Strabane', 'Cookstown', 'Dungannon'),
  roughly('co-londonderry', 'Derry', 'Limavady', 'Magherafelt', 'Coleraine'),
  roughly(
    'co-antrim',
    'Moyle',
    'Ballymoney',
    'Ballymena',
    'Larne',
    'Carrickfergus',
    'Newtownabbey',
    'Antrim',
    'Belfast',
    'Lisburn',
  ),
  roughly('co-armagh', 'Armagh', 'Craigavon'),
  roughly('co-down', 'Ards', 'North Down', 'Castlereagh', 'Down', 'Banbridge', 'Newry and Mourne'),
];

const english: readonly Cut[] = [
  whole('cornwall', 'Cornwall', 'Isles of Scilly'),
  whole('devon', 'Devon', 'Plymouth', 'Torbay'),
  roughly('dorset', 'Dorset', 'Poole', 'Bournemouth'),
  roughly('somerset', 'Somerset', 'North Somerset', 'Bath and North East Somerset'),
  whole('wiltshire', 'Wiltshire', 'Swindon'),
  roughly('gloucestershire', 'Gloucestershire', 'South Gloucestershire', 'Bristol'),
  roughly('hampshire', 'Hampshire', 'Portsmouth', 'Southampton'),
  whole('isle-of-wight', 'Isle of Wight'),
  roughly('sussex', 'East Sussex', 'West Sussex', 'Brighton and Hove'),
  roughly('kent', 'Kent', 'Medway', 'Bexley', 'Bromley', 'Greenwich', 'Lewisham'),
  roughly(
    'surrey',
    'Surrey',
    'Croydon',
    'Kingston upon Thames',
    'Lambeth',
    'Merton',
    'Southwark',
    'Sutton',
    'Wandsworth',
    'Richmond upon Thames',
  ),
  roughly(
    'middlesex',
    'Brent',
    'Ealing',
    'Enfield',
    'Barnet',
    'Camden',
    'Hackney',
    'Hammersmith and Fulham',
    'Haringey',
    'Harrow',
    'Hillingdon',
    'Hounslow',
    'Islington',
    'Kensington and Chelsea',
    'Tower Hamlets',
    'Westminster',
    'City',
  ),
  roughly(
    'essex',
    'Essex',
    'Thurrock',
    'Southend-on-Sea',
    'Barking and Dagenham',
    'Havering',
    'Newham',
    'Redbridge',
    'Waltham Forest',
  ),
  roughly('hertfordshire', 'Hertfordshire'),
  roughly('bedfordshire', 'Central Bedfordshire', 'Bedford', 'Luton'),
  roughly('buckinghamshire', 'Buckinghamshire', 'Milton Keynes'),
  roughly('oxfordshire', 'Oxfordshire'),
  roughly('suffolk', 'Suffolk'),
  roughly('norfolk', 'Norfolk'),
  roughly('northamptonshire', 'Northamptonshire'),
  roughly('leicestershire', 'Leicestershire', 'Leicester'),
  whole('rutland', 'Rutland'),
  roughly('lincolnshire', 'Lincolnshire', 'North Lincolnshire', 'North East Lincolnshire'),
  roughly('nottinghamshire', 'Nottinghamshire', 'Nottingham'),
  roughly('derbyshire', 'Derbyshire', 'Derby'),
  roughly('staffordshire', 'Staffordshire', 'Stoke-on-Trent', 'Wolverhampton', 'Walsall', 'Sandwell'),
  roughly('shropshire', 'Shropshire', 'Telford and Wrekin'),
  roughly('herefordshire', 'Herefordshire'),
  roughly('worcestershire', 'Worcestershire', 'Dudley'),
  roughly('warwickshire', 'Warwickshire', 'Coventry', 'Birmingham', 'Solihull'),
  roughly(
    'cheshire',
    'Cheshire East',
    'Cheshire West and Chester',
    'Halton',
    'Warrington',
    'Stockport',
    'Tameside',
    'Trafford',
  ),
  roughly(
    'yorkshire',
    'North Yorkshire',
    'York',
    'Redcar and Cleveland',
    'Middlesbrough',
    'East Riding of Yorkshire',
    'Kingston upon Hull',
    'Kirklees',
    'Calderdale',
    'Bradford',
    'Leeds',
    'Wakefield',
    'Rotherham',
    'Sheffield',
    'Barnsley',
    'Doncaster',
  ),
  roughly(
    'durham',
    'Durham',
    'Darlington',
    'Hartlepool',
    'Stockton-on-Tees',
    'Sunderland',
    'South Tyneside',
    'Gateshead',
  ),
  roughly('northumberland', 'Northumberland', 'Newcastle upon Tyne', 'North Tyneside'),
];

const welsh: readonly Cut[] = [
  whole('anglesey', 'Anglesey'),
  whole('pembrokeshire', 'Pembrokeshire'),
  whole('carmarthenshire', 'Carmarthenshire'),
  whole('cardiganshire', 'Ceredigion'),
  roughly(
    'glamorgan',
    'Swansea',
    'Neath Port Talbot',
    'Bridgend',
    'Vale of Glamorgan',
    'Cardiff',
    'Rhondda, Cynon, Taff',
    'Merthyr Tydfil',
    'Caerphilly',
  ),
  roughly('monmouthshire', 'Monmouthshire', 'Newport', 'Torfaen', 'Blaenau Gwent'),
  roughly('flintshire', 'Flintshire'),
];

const scottish: readonly Cut[] = [
  whole('orkney', 'Orkney'),
  whole('shetland', 'Shetland Islands'),
  roughly('aberdeenshire', 'Aberdeenshire', 'Aberdeen'),
  whole('angus', 'Angus', 'Dundee'),
  whole('fife', 'Fife'),
  whole('clackmannanshire', 'Clackmannanshire'),
  roughly('east-lothian', 'East Lothian'),
  roughly('midlothian', 'Midlothian', 'Edinburgh'),
  roughly('west-lothian', 'West Lothian'),
  roughly('lanarkshire', 'North Lanarkshire', 'South Lanarkshire', 'Glasgow'),
  whole('renfrewshire', 'Renfrewshire', 'East Renfrewshire', 'Inverclyde'),
  roughly('ayrshire', 'East Ayrshire', 'South Ayrshire', 'North Ayshire'),
  roughly('argyllshire', 'Argyll and Bute'),
  roughly('moray', 'Moray'),
];

export const britain: readonly Cut[] = [...north, ...english, ...welsh, ...scottish];

/** The Norwegian counties as they stood until 2018, with the names they had until 1919. */
export const norway: readonly Cut[] = [
  { names: ['Østfold', 'Smaalenenes', 'Smålenenes'], of: ['Østfold'] },
  { names: ['Akershus'], of: ['Akershus'] },
  { names: ['Oslo', 'Christiania', 'Kristiania'], of: ['Oslo'] },
  { names: ['Hedmark', 'Hedemarken', 'Hedemarkens'], of: ['Hedmark'] },
  { names: ['Oppland', 'Christians', 'Kristians'], of: ['Oppland'] },
  { names: ['Buskerud'], of: ['Buskerud'] },
  { names: ['Vestfold', 'Jarlsberg og Larvik'], of: ['Vestfold'] },
  { names: ['Telemark', 'Bratsberg'], of: ['Telemark'] },
  { names: ['Aust-Agder', 'Nedenes'], of: ['Aust-Agder'] },
  { names: ['Vest-Agder', 'Lister og Mandal', 'Lister og Mandals'], of: ['Vest-Agder'] },
  { names: ['Rogaland', 'Stavanger'], of: ['Rogaland'] },
  { names: ['Hordaland', 'Søndre Bergenhus'], of: ['Hordaland'] },
  { names: ['Sogn og Fjordane', 'Nordre Bergenhus'], of: ['Sogn og Fjordane'] },
  { names: ['Møre og Romsdal', 'Romsdal', 'Romsdals'], of: ['Møre og Romsdal'] },
  { names: ['Sør-Trøndelag', 'Søndre Trondhjems', 'Søndre Trondhjem'], of: ['Sør-Trøndelag'] },
  { names: ['Nord-Trøndelag', 'Nordre Trondhjems', 'Nordre Trondhjem'], of: ['Nord-Trøndelag'] },
  { names: ['Nordland', 'Nordlands'], of: ['Nordland'] },
  { names: ['Troms', 'Tromsø'], of: ['Troms'] },
  { names: ['Finnmark', 'Finmarken', 'Finmarkens'], of: ['Finnmark'] },
];

/** The Swedish counties of today. */
export const sweden: readonly Cut[] = [
  ...named('Gävleborg', 'Jönköping', 'Kalmar', 'Dalarna', 'Kronoberg', 'Östergötland', 'Södermanland'),
  { names: ['Örebro'], of: ['Orebro'] },
  ...named('Västmanland', 'Halland', 'Jämtland', 'Norrbotten', 'Västernorrland', 'Västerbotten', 'Gotland'),
  { names: ['Värmland'], of: ['#SE.VR'] },
  ...named('Stockholm', 'Uppsala', 'Blekinge', 'Västra Götaland', 'Skåne'),
];

export const canada: readonly Cut[] = [
  whole('manitoba', 'Manitoba'),
  whole('saskatchewan', 'Saskatchewan'),
  whole('alberta', 'Alberta'),
  whole('british-columbia', 'British Columbia'),
  whole('nunavut', 'Nunavut'),
  whole('northwest-territories', 'Northwest Territories'),
  whole('yukon', 'Yukon'),
  whole('ontario', 'Ontario'),
  whole('quebec', 'Québec'),
  whole('new-brunswick', 'New Brunswick'),
  whole('nova-scotia', 'Nova Scotia'),
  whole('newfoundland-and-labrador', 'Newfoundland and Labrador'),
  whole('prince-edward-island', 'Prince Edward Island'),
];

export const australia: readonly Cut[] = [
  whole('new-south-wales', 'New South Wales'),
  whole('australian-capital-territory', '#AU.CT'),
  whole('northern-territory', 'Northern Territory'),
  whole('queensland', 'Queensland'),
  whole('south-australia', 'South Australia'),
  whole('tasmania', 'Tasmania'),
  whole('victoria', 'Victoria'),
  whole('western-australia', 'Western Australia'),
];
