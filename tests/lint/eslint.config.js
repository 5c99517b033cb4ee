import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';
import { stages } from './stages.js';

/** The live words speak the language chosen; a language's own folder does not. */
const oneLanguage = {
  regex: 'words/(en|de|fr)/',
  message: "Take an area's words from src/words/AREA.ts: they speak the language that is chosen.",
};

/** One rule a stage: it may import itself and earlier stages, never a later one. */
const stageRules = stages.map((stage, i) => ({
  files: [`src/${stage}/**/*.{ts,tsx}`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          oneLanguage,
          ...stages.slice(i + 1).map((later) => ({
            regex: `^(\\.\\./)+${later}(/|$)`,
            message: `${stage}/ comes before ${later}/ in the pipeline and may not import it.`,
          })),
        ],
      },
    ],
  },
}));

const outsideStages = {
  files: ['src/cli.ts', 'src/cli/**/*.ts', 'tests/**/*.ts'],
  rules: { 'no-restricted-imports': ['error', { patterns: [oneLanguage] }] },
};

/** Only engine/ names the heavy engines, so their memory and loading stay behind one door. */
const engineDoor = {
  files: ['src/**/*.{ts,tsx}'],
  ignores: ['src/engine/**'],
  rules: {
    'no-restricted-syntax': [
      'error',
      {
        selector: 'ImportDeclaration[source.value=/opencv|onnxruntime|tesseract/]',
        message: 'Only src/engine/ touches OpenCV, onnxruntime and tesseract.',
      },
    ],
  },
};

export default tseslint.config(
  { ignores: ['node_modules', 'dist', 'out', 'public'] },
  ...tseslint.configs.recommended,
  {
    plugins: { 'react-hooks': reactHooks },
    rules: {
      'react-hooks/rules-of-hooks': 'error',
      'react-hooks/exhaustive-deps': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'max-depth': ['error', 5],
      eqeqeq: 'error',
    },
  },
  ...stageRules,
  outsideStages,
  engineDoor,
);
