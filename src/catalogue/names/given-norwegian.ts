import { given } from './build.ts';
import { everyday, fromMemory } from './sources.ts';
import type { GivenName } from './types.ts';

/** Given names of Norway that have no usual English fellow, and what emigrants made of them. */
// prettier-ignore
export const norwegian: readonly GivenName[] = [
  given('Ole', 'M', { latin: 'Olaus', spelled: 'Ola Olaf Olav Oluf Olle Olai', used: 'Oliver Oley' }, everyday),
  given('Knut', 'M', { latin: 'Canutus', spelled: 'Knud Knudt Cnut Knute', used: 'Newton Kenneth Canute' }, fromMemory),
  given('Erik', 'M', { latin: 'Ericus', spelled: 'Eric Erick Erich Eirik Erek', used: 'Edward' }, everyday),
  given('Halvor', 'M', { spelled: 'Halvard Hallvard Haavard Havor Halver Holver', used: 'Henry Oliver' }, fromMemory),
  given('Gunnar', 'M', { spelled: 'Gunder Gunnor Gunnerius', used: 'George' }, fromMemory),
  given('Torstein', 'M', { spelled: 'Thorsten Tosten Torsten Thorstein Tostein Tosteen Thostein', used: 'Thomas' }, fromMemory),
  given('Tore', 'M', { spelled: 'Thore Tor Thor Tord Tarald', used: 'Thomas Theodore' }, fromMemory),
  given('Tollef', 'M', { spelled: 'Tollev Torleif Tolleif Tolef Thorleif Tallak', used: 'Thomas Tom' }, fromMemory),
  given('Sjur', 'M', { spelled: 'Sigurd Siver Sivert Sjurd Syver Sever Siur Siverth', used: 'Samuel Stephen Sam' }, fromMemory),
  given('Botolf', 'M', { spelled: 'Botolv Bottolf Bottolv Bothof Botulf Botolph', latin: 'Botolphus', used: 'Ben Benjamin Burt' }, fromMemory),
  given('Iver', 'M', { spelled: 'Ivar Iffver Ifver Iwer Ivor', used: 'Evan' }, everyday),
  given('Haakon', 'M', { spelled: 'Håkon Hakon Haagen Hågen Haaken', used: 'Hogan Henry' }, everyday),
  given('Endre', 'M', { spelled: 'Endrid Eindride Indre', used: 'Andrew Henry' }, fromMemory),
  given('Even', 'M', { spelled: 'Eivind Evind Oyvind Øyvind Evend', used: 'Edwin Evan' }, fromMemory),
  given('Gudbrand', 'M', { spelled: 'Guldbrand Gulbrand Gudbran', used: 'Gilbert' }, fromMemory),
  given('Ellef', 'M', { spelled: 'Ellev Eilev Eilif Elef Eiliv', used: 'Alf' }, fromMemory),
  given('Aslak', 'M', { spelled: 'Aslack Atlak', used: 'Isaac' }, fromMemory),
  given('Anfinn', 'M', { spelled: 'Anfind Arnfinn', used: 'Andrew' }, fromMemory),
  given('Rasmus', 'M', { latin: 'Erasmus', spelled: 'Erasmus', used: 'Ross Robert' }, fromMemory),
  given('Kristian', 'M', { latin: 'Christianus', spelled: 'Christian Kristen Christen Kresten', german: 'Christian', used: 'Christopher Chris' }, everyday),
  given('Ingebrigt', 'M', { spelled: 'Ingebret Engebret Ingebricht Engbret Embrik', used: 'Albert' }, fromMemory),
  given('Arne', 'M', { spelled: 'Arnt Aren', used: 'Arnold Andrew' }, fromMemory),
  given('Asbjorn', 'M', { spelled: 'Asbjørn Osborn Esben Espen', used: 'Osborne' }, fromMemory),
  given('Svein', 'M', { spelled: 'Sven Svend Swen', used: 'Swain' }, everyday),
  given('Tjostolv', 'M', { spelled: 'Kjostolv Tjøstel Kjøstel' , used: 'Christopher' }, fromMemory),
  given('Synneva', 'F', { spelled: 'Synnøve Synneve Synnove Sunniva Synnev Sunneva Sonnev', latin: 'Sunniva', used: 'Susan Sophia Jennie Sunny' }, fromMemory),
  given('Ingeborg', 'F', { spelled: 'Ingebor Engeborg Ingeborre Ingborg', pet: 'Inga Inge Borghild', used: 'Emma Isabel Belle' }, fromMemory),
  given('Gunhild', 'F', { spelled: 'Gunnhild Gunild Gundhild', pet: 'Gunda', used: 'Julia Jennie' }, fromMemory),
  given('Guri', 'F', { spelled: 'Guro Gudrid Goro Gurine', used: 'Julia Carrie' }, fromMemory),
  given('Gjertrud', 'F', { spelled: 'Gertrud Gertrude Giertrud Gjartrud', german: 'Gertrud', pet: 'Gertie Trude', used: 'Carrie' }, fromMemory),
  given('Kari', 'F', { spelled: 'Karie Kaari', used: 'Carrie Caroline Catherine' }, fromMemory),
  given('Ragnhild', 'F', { spelled: 'Rangnild Ragnild Rannei Ragnil Ragna', used: 'Rachel Rena' }, fromMemory),
  given('Brita', 'F', { spelled: 'Britha Brite Brithe Berit Berith Birgit Beret Britta Birgitte', used: 'Betsy Bertha Bridget Betsey' }, fromMemory),
  given('Marta', 'F', { spelled: 'Marthe Martha Marte Maritha', used: 'Martha' }, everyday),
  given('Sigrid', 'F', { spelled: 'Siri Sigri Siegrid Zigrid Sigrie', used: 'Sarah Sadie' }, fromMemory),
  given('Aase', 'F', { spelled: 'Åse Aasa Åsa Ase', used: 'Osie' }, fromMemory),
  given('Turid', 'F', { spelled: 'Thuri Turi Torid Tori Thurid', used: 'Julia' }, fromMemory),
  given('Randi', 'F', { spelled: 'Rande Randid Ragndi Randie', used: 'Rachel' }, fromMemory),
];

/** Given names of Germany of the same kind. */
// prettier-ignore
export const german: readonly GivenName[] = [
  given('Gottfried', 'M', { latin: 'Godefridus', spelled: 'Gotfried Gottfrid', used: 'Godfrey' }, everyday),
  given('Wolfgang', 'M', { latin: 'Wolfgangus' }, everyday),
  given('Ulrich', 'M', { latin: 'Udalricus Ulricus', pet: 'Ulli' }, everyday),
  given('Dietrich', 'M', { latin: 'Theodoricus', spelled: 'Diedrich Dieterich', pet: 'Dirk Dieter', used: 'Richard Theodore' }, fromMemory),
];
