import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import regexp from 'eslint-plugin-regexp';
import ts from 'typescript-eslint';

/** Data flows one way: files → corpus → dossier → pages, findings, exports. No room reaches back. */
const rooms = [
  {
    files: ['src/model/**'],
    mayNot: [
      'interface',
      'corpus',
      'catalogue',
      'reasoning',
      'citations',
      'markdown',
      'dossier',
      'imports',
      'exports',
      'pages',
      'cli',
    ],
    node: false,
  },
  {
    files: ['src/catalogue/**'],
    mayNot: [
      'interface',
      'corpus',
      'reasoning',
      'citations',
      'markdown',
      'dossier',
      'imports',
      'exports',
      'pages',
      'cli',
    ],
    node: false,
  },
  {
    files: ['src/interface/**'],
    mayNot: ['corpus', 'reasoning', 'citations', 'markdown', 'dossier', 'imports', 'exports', 'pages', 'cli'],
    node: false,
  },
  {
    files: ['src/reasoning/**'],
    mayNot: ['interface', 'corpus', 'citations', 'markdown', 'dossier', 'imports', 'exports', 'pages', 'cli'],
    node: false,
  },
  {
    files: ['src/citations/**', 'src/markdown/**'],
    mayNot: ['corpus', 'reasoning', 'dossier', 'imports', 'exports', 'pages', 'cli'],
    node: true,
  },
  {
    files: ['src/corpus/**'],
    mayNot: [
      'interface',
      'reasoning',
      'citations',
      'markdown',
      'dossier',
      'imports',
      'exports',
      'pages',
      'cli',
    ],
    node: true,
  },
  { files: ['src/dossier/**'], mayNot: ['imports', 'pages', 'cli'], node: true },
  { files: ['src/exports/**'], mayNot: ['corpus', 'reasoning', 'imports', 'pages', 'cli'], node: true },
  {
    files: ['src/pages/**', 'components/**'],
    mayNot: ['corpus', 'reasoning', 'imports', 'cli'],
    node: true,
    typesToo: false,
  },
  { files: ['src/cli/**'], mayNot: ['pages'], node: true },
];

const boundaries = rooms.map(({ files, mayNot, node, typesToo = true }) => ({
  files,
  rules: {
    '@typescript-eslint/no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex: `^(?:\\.\\./)+(?:src/)?(?:${mayNot.join('|')})/`,
            message: 'Data flows one way through the house; this room may not import that one.',
            allowTypeImports: !typesToo,
          },
          ...(node
            ? []
            : [{ regex: '^(?:node:|astro)', message: 'This room is pure: no I/O, no clock, no framework.' }]),
        ],
      },
    ],
    ...(node
      ? {}
      : {
          'no-restricted-globals': ['error', 'process', 'setTimeout', 'performance'],
          'no-restricted-syntax': [
            'error',
            {
              selector: "MemberExpression[object.name='Math'][property.name='random']",
              message: 'No randomness here.',
            },
            {
              selector: "CallExpression[callee.object.name='Date'][callee.property.name='now']",
              message: 'No clock here.',
            },
            { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'No clock here.' },
            {
              selector: "CallExpression[callee.property.name='localeCompare']",
              message: 'Compare code units: the order must be the same on every machine.',
            },
          ],
        }),
  },
}));

export default ts.config(
  { ignores: ['dist/**', 'node_modules/**', '.astro/**'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...astro.configs['flat/recommended'],
  {
    // A pattern that blows up on the wrong text would let an author’s slip, or malice, hold a check up for ever.
    // Left out: ages and cells of at most forty letters, numbers of our own making, addresses of our own pages.
    files: ['src/**', 'components/**'],
    ignores: [
      'src/model/age.ts',
      'src/imports/people-values.ts',
      'src/interface/*/{everywhere,identity}.ts',
      'src/exports/site/links.ts',
    ],
    plugins: { regexp },
    rules: {
      'regexp/no-super-linear-backtracking': ['error', { report: 'potential' }],
      'regexp/no-super-linear-move': ['error', { report: 'potential', ignoreSticky: false }],
    },
  },
  {
    languageOptions: {
      globals: { process: 'readonly', console: 'readonly', URL: 'readonly', Buffer: 'readonly' },
    },
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
      eqeqeq: 'error',
      'no-control-regex': 'off',
    },
  },
  { files: ['**/*.ts', '**/*.astro'], rules: { 'no-undef': 'off' } },
  ...boundaries,
);
