import { describe, expect, test } from 'vitest';
import { formatCitations } from '../../src/citations/format.ts';
import { recordFile } from '../../src/model/record.ts';

/*
 * Which elements a citation of archival material has and in which order, in published guidance. The guidance is used
 * for its facts; the records cited here are invented, in series that exist.
 */
const set = (cite: object, fields: object = {}) => {
  const record = {
    ...recordFile.parse({ title: 'A record', form: 'original', cite, ...fields }),
    id: 'x',
    body: '',
  };
  const { notes, sources } = formatCitations([record], { language: 'en' });
  return { note: notes.get('x')!.full, entry: sources[0]!.html };
};

/** The elements in the order in which a text has them; every one must be there. */
const order = (text: string, elements: Readonly<Record<string, string>>) => {
  for (const [name, words] of Object.entries(elements))
    expect({ name, found: text.toLowerCase().includes(words.toLowerCase()) }).toEqual({ name, found: true });
  return Object.keys(elements).toSorted(
    (a, b) =>
      text.toLowerCase().indexOf(elements[a]!.toLowerCase()) -
      text.toLowerCase().indexOf(elements[b]!.toLowerCase()),
  );
};

/*
 * Source: National Archives and Records Administration, General Information Leaflet 17, “Citing Records in the
 * National Archives of the United States”: a note goes from the smallest unit to the largest: record, file unit, series,
 * subgroup, record group, repository (from memory). A microfilm publication is named by title, number and roll.
 */
describe('National Archives of the United States, leaflet 17', () => {
  const elements = {
    record: 'Declaration of Morris Whelan',
    date: '11 April 1871',
    'file unit': 'file 412',
    series: 'Naturalization petition files, 1860–1906',
    'record group': 'Records of District Courts, record group 21',
    repository: 'National Archives at Chicago',
  };
  const cite = {
    type: 'manuscript',
    title: elements.record,
    issued: '1871-04-11',
    archive_collection: `${elements['file unit']}, ${elements.series}`,
    'call-number': elements['record group'],
    archive: elements.repository,
  };

  test('a note goes from the record outward to the repository', () => {
    expect(order(set(cite).note, elements)).toEqual(Object.keys(elements));
  });

  test('a source list begins with the repository', () => {
    expect(order(set(cite).entry, elements)[0]).toBe('repository');
  });

  test('a microfilm publication comes after the record and before the repository, and the film is said to be seen', () => {
    const film = {
      record: 'Manifest of the Harvest Home',
      date: '2 May 1864',
      page: 'p. 3',
      publication: 'microfilm publication M237, roll 240',
      repository: 'National Archives',
      seen: 'seen on film',
    };
    const { note } = set(
      {
        type: 'manuscript',
        title: film.record,
        'event-date': '1864-05-02',
        page: 3,
        archive_location: film.publication,
        archive: film.repository,
        'archive-place': 'Washington',
      },
      { seen: 'film' },
    );
    expect(order(note, film)).toEqual(Object.keys(film));
  });
});

/*
 * Source: The National Archives (United Kingdom), guidance on citing records: the name of the archive and the document
 * reference, which is department, series and piece parted by spaces and oblique strokes, and the folio or page where
 * there is one; a title or description and the date go before (from memory).
 */
describe('The National Archives of the United Kingdom', () => {
  test('the reference keeps its form, and stands with the archive', () => {
    const { note, entry } = set({
      type: 'manuscript',
      title: 'Household of Thomas Power, Kenwyn',
      genre: 'census return',
      issued: '1851-03-30',
      page: 'f. 212v',
      'call-number': 'HO 107/1912/3',
      archive: 'The National Archives',
      'archive-place': 'Kew',
    });
    expect(note).toBe(
      'Household of Thomas Power, Kenwyn, census return, 30 March 1851, f. 212v; HO 107/1912/3, The National Archives, Kew',
    );
    expect(entry).toContain('The National Archives, Kew. HO 107/1912/3.');
  });
});

/*
 * Source: ISO 690:2021, Information and documentation: Guidelines for bibliographic references and citations. Order of
 * elements: creator, title, medium, edition, production (place, publisher), date, series, numbers within the item,
 * location: for archival material the repository and its reference come last in a reference, and for what is online
 * its address with the day on which it was seen (order of the classes from memory).
 */
describe('ISO 690:2021', () => {
  test('a book: creator, title, edition, place and publisher, date, place within', () => {
    const elements = {
      creator: 'Henrik Aho',
      title: 'A history of the Copper Range',
      edition: '2nd ed.',
      place: 'Hancock, Michigan',
      publisher: 'Range Press',
      date: '1894',
      within: 'pp. 211–213',
    };
    const cite = {
      type: 'book',
      author: [{ given: 'Henrik', family: 'Aho' }],
      title: elements.title,
      edition: 2,
      'publisher-place': elements.place,
      publisher: elements.publisher,
      issued: 1894,
      page: '211-213',
    };
    expect(order(set(cite).note, elements)).toEqual(Object.keys(elements));
    expect(order(set(cite).entry, { ...elements, creator: 'Aho, Henrik' })).toEqual(Object.keys(elements));
  });

  test('a part of a work: its own creator and title, then the work and who edited it, then the pages', () => {
    const elements = {
      creator: 'Ellen Tregear',
      title: 'Miners from Waterford',
      host: 'Essays on the copper country',
      editor: 'Henrik Aho',
      publisher: 'Range Press',
      date: '1901',
      within: 'pp. 40–58',
    };
    const { note } = set({
      type: 'chapter',
      author: [{ given: 'Ellen', family: 'Tregear' }],
      title: elements.title,
      'container-title': elements.host,
      editor: [{ given: 'Henrik', family: 'Aho' }],
      publisher: elements.publisher,
      issued: 1901,
      page: '40-58',
    });
    expect(order(note, elements)).toEqual(Object.keys(elements));
  });

  test('an online resource: the record first, then the address, then the day it was seen', () => {
    const elements = {
      title: 'Baptism of Johanna Kirwan',
      register: 'Parish of Kill',
      date: '2 March 1840',
      collection: 'Parish registers, images',
      address: 'https://registers.example/kill/17',
      seen: 'accessed 17 May 2024',
      form: 'seen as an image',
    };
    const { note } = set(
      {
        type: 'manuscript',
        authority: elements.register,
        title: elements.title,
        'event-date': '1840-03-02',
        source: elements.collection,
        URL: elements.address,
        accessed: '2024-05-17',
      },
      { seen: 'image' },
    );
    const found = order(note, elements);
    expect(found.indexOf('title')).toBeLessThan(found.indexOf('collection'));
    expect(found.slice(-4)).toEqual(['collection', 'address', 'seen', 'form']);
  });

  test('a newspaper: title of the notice, the paper, the day, the page', () => {
    const elements = {
      title: 'An old resident gone',
      host: 'Copper Range Echo',
      place: 'Hancock, Michigan',
      date: '5 June 1903',
      within: 'p. 4',
    };
    const { note } = set({
      type: 'article-newspaper',
      title: elements.title,
      'container-title': elements.host,
      'publisher-place': elements.place,
      issued: '1903-06-05',
      page: 4,
    });
    expect(order(note, elements)).toEqual(Object.keys(elements));
  });
});

/*
 * Common practice in the trade, and of archival guidance in general: what a copy copies is told after the copy itself,
 * and a form in which a source was seen is never left to be guessed.
 */
test('a derivative names its exemplar last', () => {
  const elements = {
    record: 'Index of baptisms',
    held: 'County Library',
    seen: 'seen only in transcript',
    exemplar: 'baptismal register of Kill (not seen)',
  };
  const { note } = set(
    { type: 'document', title: elements.record, archive: elements.held },
    { form: 'derivative', seen: 'transcript', derivedFrom: [{ unseen: 'baptismal register of Kill' }] },
  );
  expect(order(note, elements)).toEqual(Object.keys(elements));
});
