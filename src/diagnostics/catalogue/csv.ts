// What can be wrong with a CSV file: its separator, its header, its quotes, its rows. Reported while a roster or a
// record file is read; what the cells mean is checked later.

import type { Entries } from '../entry.ts';

export const csvEntries = {
  'csv/separator': {
    severity: 'error',
    summary: 'another separator than the comma',
    explanation:
      'Cells are separated by commas. Spreadsheets set to a language with a decimal comma save CSV with semicolons instead, and a copied table has tabs. Save it with commas and decimal points.',
    bad: 'id;name;mass\nmira;Mira K.;68 kg',
    good: 'id,name,mass\nmira,Mira K.,68 kg',
    message: ({ found }: { found: string }) =>
      `the cells of this file are separated by ${found}, and a comma is wanted`,
    label: () => 'not a comma',
    help: () => 'save the table as CSV with commas between the cells and points in the numbers',
  },
  'csv/decimal-comma': {
    severity: 'error',
    summary: 'a decimal comma in a number',
    explanation:
      'Numbers are written with a decimal point. A comma ends a cell, so that `92,5` without quotes is two cells and everything behind it moves along by one.',
    bad: 'mira,92,5 kg',
    good: 'mira,92.5 kg',
    message: ({ found, wanted }: { found: string; wanted: string }) =>
      `"${found}" has a decimal comma: write ${wanted}`,
    label: () => 'a decimal comma',
  },
  'csv/missing-column': {
    severity: 'error',
    summary: 'a column that is needed and not there',
    explanation: 'The first line of a CSV file names its columns, and some are needed. Their order does not matter.',
    bad: 'name,squad\nMira K.,seniors',
    good: 'id,name,squad\nmira,Mira K.,seniors',
    message: ({ column, columns }: { column: string; columns: string }) =>
      `the column "${column}" is missing; the columns here are ${columns}`,
  },
  'csv/unknown-column': {
    severity: 'error',
    summary: 'a column nobody reads',
    explanation:
      'A record file has fixed columns, and nothing in it is silently left aside. Rename the column, or delete it; remarks go into `note`.',
    bad: 'date,athlete,kind,contacts,minutes,effort,pain,note,weather',
    good: 'date,athlete,kind,contacts,minutes,effort,pain,note',
    message: ({ column, columns }: { column: string; columns: string }) =>
      `there is no column "${column}" in this kind of file: it has ${columns}`,
  },
  'csv/duplicate-column': {
    severity: 'error',
    summary: 'a column twice',
    explanation: 'Two columns have the same name, so that it is not clear which of them counts. Delete or rename one.',
    bad: 'id,mass,mass\nmira,68 kg,70 kg',
    good: 'id,mass\nmira,70 kg',
    message: ({ column }: { column: string }) => `the column "${column}" is there twice`,
  },
  'csv/unnamed-column': {
    severity: 'error',
    summary: 'a column without a name',
    explanation:
      'A cell of the first line is empty, so that the column below it has no name. Mostly a comma too many at the end of the line.',
    bad: 'id,name,,mass\nmira,Mira K.,,68 kg',
    good: 'id,name,mass\nmira,Mira K.,68 kg',
    message: ({ position }: { position: number }) => `column ${String(position)} has no name`,
    help: () => 'name the column, or delete it in every row',
  },
  'csv/column-clash': {
    severity: 'error',
    summary: 'a column that is both a value and a group',
    explanation:
      'A dot in a column name goes one level down, as `now.contacts-a-session` does. A name can be a value or hold others, not both.',
    bad: 'id,now,now.contacts-a-session\nmira,80,80',
    good: 'id,now.sessions-a-week,now.contacts-a-session\nmira,2,80',
    message: ({ column, other }: { column: string; other: string }) =>
      `the column "${column}" cannot stand beside "${other}"`,
  },
  'csv/cell-count': {
    severity: 'error',
    summary: 'a row with too many or too few cells',
    explanation:
      'Each row has as many cells as the first line has names. A cell too many is mostly a comma inside a text: put the text in double quotes.',
    bad: 'id,name,squad\nmira,Keller, Mira,seniors',
    good: 'id,name,squad\nmira,"Keller, Mira",seniors',
    message: ({ found, wanted }: { found: number; wanted: number }) =>
      `this row has ${String(found)} cells, and the first line names ${String(wanted)}`,
    help: () =>
      'a text with a comma in it goes in double quotes, a number has a decimal point, an empty cell keeps its comma',
  },
  'csv/unclosed-quote': {
    severity: 'error',
    summary: 'a double quote that is never closed',
    explanation:
      'A cell that begins with a double quote runs to the next one, over line ends too. Here there is none, so the rest of the file would be one cell.',
    bad: 'mira,"Mira K.,seniors',
    good: 'mira,"Mira K.",seniors',
    message: () => 'the double quote that begins this cell is never closed',
    label: () => 'opened here',
  },
  'csv/stray-quote': {
    severity: 'error',
    summary: 'a double quote inside a cell',
    explanation:
      'A double quote stands around a whole cell. One inside a text is written twice, and the text put in quotes.',
    bad: 'mira,12" box only',
    good: 'mira,"12"" box only"',
    message: () => 'there is a double quote inside this cell',
    label: () => 'this quote',
    help: () => 'put the whole cell in double quotes and write each quote inside it twice',
  },
  'csv/line-break': {
    severity: 'error',
    summary: 'a line break inside a cell',
    explanation:
      'A quoted cell can run over several lines. In a note that is fine; in a name, a date or a number it is mostly a quote in the wrong place.',
    bad: 'id,squad\nmira,"sen\niors"',
    good: 'id,squad\nmira,seniors',
    message: ({ column }: { column: string }) => `the cell under "${column}" has a line break in it`,
    help: () => 'write the cell on one line, or look for a double quote too many',
  },
  'csv/missing-cell': {
    severity: 'error',
    summary: 'an empty cell where a value is needed',
    explanation: 'This column needs a value in every row: without it nobody knows whom or what the row is about.',
    bad: 'id,name\n,Mira K.',
    good: 'id,name\nmira,Mira K.',
    message: ({ column }: { column: string }) => `this row has nothing under "${column}"`,
  },
  'csv/duplicate-id': {
    severity: 'error',
    summary: 'an id twice in a roster',
    explanation: 'Each athlete has an id of their own, because every other line of the plan finds them by it.',
    bad: 'id,name\nmira,Mira K.\nmira,Mira L.',
    good: 'id,name\nmira-k,Mira K.\nmira-l,Mira L.',
    message: ({ id }: { id: string }) => `the id "${id}" is there twice`,
    label: () => 'again here',
  },
} as const satisfies Entries;
