import { chapmanCodes } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * The historic counties of England, Wales and Scotland, as records before 1974 name them, with the ridings of
 * Yorkshire, the Isle of Wight and London. ISO 3166-2 codes today's councils, whose bounds differ, so the counties
 * carry Chapman codes only. Monmouthshire, which some acts counted with England, stands in Wales.
 *
 * The variants hold the abbreviations and older names that records use; they and the points are from memory.
 */
type CountyRow = readonly [
  chapman: string,
  id: string,
  name: string,
  lat: number,
  lon: number,
  variants: readonly string[],
];

const source = `${chapmanCodes}; variants and points from memory`;

// prettier-ignore
const english: readonly CountyRow[] = [
  ['BDF', 'bedfordshire', 'Bedfordshire', 52.1, -0.5, ['Beds']],
  ['BRK', 'berkshire', 'Berkshire', 51.5, -1.1, ['Berks']],
  ['BKM', 'buckinghamshire', 'Buckinghamshire', 51.8, -0.8, ['Bucks']],
  ['CAM', 'cambridgeshire', 'Cambridgeshire', 52.3, 0.1, ['Cambs']],
  ['CHS', 'cheshire', 'Cheshire', 53.2, -2.5, ['Ches', 'County of Chester']],
  ['CON', 'cornwall', 'Cornwall', 50.4, -4.8, ['Kernow', 'Cornw']],
  ['CUL', 'cumberland', 'Cumberland', 54.7, -3.1, ['Cumb']],
  ['DBY', 'derbyshire', 'Derbyshire', 53.1, -1.6, ['Derbys']],
  ['DEV', 'devon', 'Devon', 50.7, -3.8, ['Devonshire']],
  ['DOR', 'dorset', 'Dorset', 50.8, -2.3, ['Dorsetshire']],
  ['DUR', 'durham', 'County Durham', 54.7, -1.8, ['Durham', 'County Palatine of Durham']],
  ['ESS', 'essex', 'Essex', 51.8, 0.6, []],
  ['GLS', 'gloucestershire', 'Gloucestershire', 51.8, -2.2, ['Glos']],
  ['HAM', 'hampshire', 'Hampshire', 51.1, -1.3, ['Hants', 'Southamptonshire', 'County of Southampton']],
  ['HEF', 'herefordshire', 'Herefordshire', 52.1, -2.7, ['Herefs']],
  ['HRT', 'hertfordshire', 'Hertfordshire', 51.8, -0.2, ['Herts']],
  ['HUN', 'huntingdonshire', 'Huntingdonshire', 52.4, -0.2, ['Hunts']],
  ['KEN', 'kent', 'Kent', 51.2, 0.7, []],
  ['LAN', 'lancashire', 'Lancashire', 53.9, -2.6, ['Lancs', 'County of Lancaster']],
  ['LEI', 'leicestershire', 'Leicestershire', 52.7, -1.1, ['Leics']],
  ['LIN', 'lincolnshire', 'Lincolnshire', 53.1, -0.2, ['Lincs']],
  ['MDX', 'middlesex', 'Middlesex', 51.5, -0.3, ['Middx']],
  ['NFK', 'norfolk', 'Norfolk', 52.7, 1.0, ['Norf']],
  ['NTH', 'northamptonshire', 'Northamptonshire', 52.3, -0.8, ['Northants']],
  ['NBL', 'northumberland', 'Northumberland', 55.2, -2.0, ['Northumb']],
  ['NTT', 'nottinghamshire', 'Nottinghamshire', 53.1, -1.0, ['Notts']],
  ['OXF', 'oxfordshire', 'Oxfordshire', 51.8, -1.3, ['Oxon']],
  ['RUT', 'rutland', 'Rutland', 52.7, -0.6, ['Rutlandshire']],
  ['SAL', 'shropshire', 'Shropshire', 52.6, -2.7, ['Salop']],
  ['SOM', 'somerset', 'Somerset', 51.1, -2.9, ['Somersetshire', 'Som']],
  ['STS', 'staffordshire', 'Staffordshire', 52.8, -2.0, ['Staffs']],
  ['SFK', 'suffolk', 'Suffolk', 52.2, 1.0, ['Suff']],
  ['SRY', 'surrey', 'Surrey', 51.2, -0.4, []],
  ['SSX', 'sussex', 'Sussex', 50.9, -0.1, []],
  ['WAR', 'warwickshire', 'Warwickshire', 52.3, -1.6, ['Warks']],
  ['WES', 'westmorland', 'Westmorland', 54.5, -2.6, ['Westmoreland']],
  ['WIL', 'wiltshire', 'Wiltshire', 51.3, -1.9, ['Wilts']],
  ['WOR', 'worcestershire', 'Worcestershire', 52.2, -2.2, ['Worcs']],
  ['YKS', 'yorkshire', 'Yorkshire', 53.9, -1.5, ['Yorks', 'County of York']],
];

// prettier-ignore
const welsh: readonly CountyRow[] = [
  ['AGY', 'anglesey', 'Anglesey', 53.3, -4.4, ['Ynys Môn', 'Sir Fôn', 'Anglesea']],
  ['BRE', 'brecknockshire', 'Brecknockshire', 52.0, -3.4, ['Breconshire', 'Brecon', 'Sir Frycheiniog']],
  ['CAE', 'caernarfonshire', 'Caernarfonshire', 53.0, -4.2, ['Carnarvonshire', 'Caernarvonshire', 'Carnarvon', 'Sir Gaernarfon']],
  ['CGN', 'cardiganshire', 'Cardiganshire', 52.3, -4.0, ['Ceredigion', 'Cardigan', 'Sir Aberteifi']],
  ['CMN', 'carmarthenshire', 'Carmarthenshire', 51.9, -4.2, ['Caermarthenshire', 'Carmarthen', 'Sir Gaerfyrddin', 'Sir Gâr']],
  ['DEN', 'denbighshire', 'Denbighshire', 53.1, -3.3, ['Denbigh', 'Sir Ddinbych']],
  ['FLN', 'flintshire', 'Flintshire', 53.2, -3.2, ['Flint', 'Sir y Fflint']],
  ['GLA', 'glamorgan', 'Glamorgan', 51.6, -3.5, ['Glamorganshire', 'Morgannwg', 'Sir Forgannwg', 'Glam']],
  ['MER', 'merionethshire', 'Merionethshire', 52.8, -3.8, ['Merioneth', 'Meirionnydd', 'Sir Feirionnydd']],
  ['MON', 'monmouthshire', 'Monmouthshire', 51.8, -3.0, ['Monmouth', 'Sir Fynwy', 'Mon']],
  ['MGY', 'montgomeryshire', 'Montgomeryshire', 52.6, -3.4, ['Montgomery', 'Sir Drefaldwyn', 'Maldwyn']],
  ['PEM', 'pembrokeshire', 'Pembrokeshire', 51.9, -4.9, ['Pembroke', 'Sir Benfro']],
  ['RAD', 'radnorshire', 'Radnorshire', 52.3, -3.3, ['Radnor', 'Sir Faesyfed']],
];

// prettier-ignore
const scottish: readonly CountyRow[] = [
  ['ABD', 'aberdeenshire', 'Aberdeenshire', 57.2, -2.6, ['Aberdeen']],
  ['ANS', 'angus', 'Angus', 56.7, -2.9, ['Forfarshire', 'Forfar']],
  ['ARL', 'argyllshire', 'Argyllshire', 56.3, -5.2, ['Argyll', 'Argyle', 'Argyleshire']],
  ['AYR', 'ayrshire', 'Ayrshire', 55.5, -4.5, ['Ayr']],
  ['BAN', 'banffshire', 'Banffshire', 57.5, -2.9, ['Banff']],
  ['BEW', 'berwickshire', 'Berwickshire', 55.8, -2.4, ['Berwick']],
  ['BUT', 'buteshire', 'Buteshire', 55.6, -5.2, ['Bute', 'Arran']],
  ['CAI', 'caithness', 'Caithness', 58.4, -3.4, ['Caithness-shire']],
  ['CLK', 'clackmannanshire', 'Clackmannanshire', 56.2, -3.8, ['Clackmannan']],
  ['DFS', 'dumfriesshire', 'Dumfriesshire', 55.2, -3.5, ['Dumfries']],
  ['DNB', 'dunbartonshire', 'Dunbartonshire', 56.1, -4.5, ['Dumbartonshire', 'Dumbarton']],
  ['ELN', 'east-lothian', 'East Lothian', 55.9, -2.7, ['Haddingtonshire', 'Haddington']],
  ['FIF', 'fife', 'Fife', 56.3, -3.1, ['Fifeshire', 'Kingdom of Fife']],
  ['INV', 'inverness-shire', 'Inverness-shire', 57.1, -4.9, ['Inverness']],
  ['KCD', 'kincardineshire', 'Kincardineshire', 56.9, -2.4, ['Kincardine', 'The Mearns']],
  ['KRS', 'kinross-shire', 'Kinross-shire', 56.2, -3.4, ['Kinross']],
  ['KKD', 'kirkcudbrightshire', 'Kirkcudbrightshire', 55.0, -4.0, ['Kirkcudbright', 'Stewartry of Kirkcudbright']],
  ['LKS', 'lanarkshire', 'Lanarkshire', 55.7, -3.8, ['Lanark', 'Clydesdale']],
  ['MLN', 'midlothian', 'Midlothian', 55.8, -3.2, ['Edinburghshire', 'Mid-Lothian']],
  ['MOR', 'moray', 'Moray', 57.5, -3.4, ['Morayshire', 'Elginshire', 'Elgin']],
  ['NAI', 'nairnshire', 'Nairnshire', 57.5, -3.8, ['Nairn']],
  ['OKI', 'orkney', 'Orkney', 59.0, -3.1, ['Orkney Islands', 'Orkneys']],
  ['PEE', 'peeblesshire', 'Peeblesshire', 55.6, -3.3, ['Peebles', 'Tweeddale']],
  ['PER', 'perthshire', 'Perthshire', 56.6, -3.8, ['Perth']],
  ['RFW', 'renfrewshire', 'Renfrewshire', 55.8, -4.5, ['Renfrew']],
  ['ROC', 'ross-and-cromarty', 'Ross and Cromarty', 57.6, -4.9, ['Ross-shire', 'Ross', 'Cromartyshire', 'Cromarty']],
  ['ROX', 'roxburghshire', 'Roxburghshire', 55.4, -2.7, ['Roxburgh', 'Teviotdale']],
  ['SEL', 'selkirkshire', 'Selkirkshire', 55.5, -2.9, ['Selkirk', 'Ettrick Forest']],
  ['SHI', 'shetland', 'Shetland', 60.3, -1.2, ['Zetland', 'Shetland Islands', 'Hjaltland']],
  ['STI', 'stirlingshire', 'Stirlingshire', 56.1, -4.2, ['Stirling']],
  ['SUT', 'sutherland', 'Sutherland', 58.2, -4.5, ['Sutherlandshire']],
  ['WLN', 'west-lothian', 'West Lothian', 55.9, -3.6, ['Linlithgowshire', 'Linlithgow']],
  ['WIG', 'wigtownshire', 'Wigtownshire', 54.9, -4.7, ['Wigtown']],
];

const counties = (rows: readonly CountyRow[], country: string): BuiltInPlace[] =>
  rows.map(([chapman, id, name, lat, lon, variants]) =>
    place({ id, name, kind: 'county', within: [country], variants, lat, lon, chapman }, source),
  );

/** Parts of the counties that have a code of their own. */
const parts: readonly BuiltInPlace[] = [
  place(
    {
      id: 'east-riding-of-yorkshire',
      name: 'East Riding of Yorkshire',
      kind: 'riding',
      within: ['yorkshire'],
      variants: ['East Riding', 'Yorkshire, East Riding'],
      lat: 53.9,
      lon: -0.5,
      chapman: 'ERY',
    },
    source,
  ),
  place(
    {
      id: 'north-riding-of-yorkshire',
      name: 'North Riding of Yorkshire',
      kind: 'riding',
      within: ['yorkshire'],
      variants: ['North Riding', 'Yorkshire, North Riding'],
      lat: 54.3,
      lon: -1.4,
      chapman: 'NRY',
    },
    source,
  ),
  place(
    {
      id: 'west-riding-of-yorkshire',
      name: 'West Riding of Yorkshire',
      kind: 'riding',
      within: ['yorkshire'],
      variants: ['West Riding', 'Yorkshire, West Riding'],
      lat: 53.8,
      lon: -1.8,
      chapman: 'WRY',
    },
    source,
  ),
  place(
    {
      id: 'isle-of-wight',
      name: 'Isle of Wight',
      kind: 'island',
      within: ['hampshire'],
      variants: ['Wight', 'I.W.'],
      lat: 50.7,
      lon: -1.3,
      chapman: 'IOW',
    },
    source,
  ),
  place(
    {
      id: 'london',
      name: 'London',
      kind: 'city',
      within: ['england'],
      variants: ['City of London', 'County of London', 'Londres'],
      overlaps: ['middlesex', 'surrey', 'kent'],
      lat: 51.5,
      lon: -0.1,
      chapman: 'LND',
    },
    source,
  ),
];

export const britishCounties: readonly BuiltInPlace[] = [
  ...counties(english, 'england'),
  ...counties(welsh, 'wales'),
  ...counties(scottish, 'scotland'),
  ...parts,
];
