const base = {
  testEnvironment: 'node',
  transform: { '^.+\\.tsx?$': ['@swc/jest', { swcrc: true }] },
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  moduleNameMapper: {
    // The libraries' sources, so that a rule and its test change together without a build.
    '^@strutbook/(domain|journal|api-client)/(.*)\\.js$': '<rootDir>/libs/$1/src/$2.ts',
    '^(\\.{1,2}/.*)\\.js$': '$1',
  },
  modulePathIgnorePatterns: [
    '<rootDir>/(apps|libs)/[^/]+/dist/',
    '<rootDir>/.data/',
    '<rootDir>/.test-output/',
  ],
};

const project = (displayName, ...testMatch) => ({ ...base, displayName, testMatch });

export default {
  projects: [
    project(
      'unit',
      '<rootDir>/libs/**/*.spec.ts',
      '<rootDir>/apps/**/*.spec.ts',
      '<rootDir>/apps/**/*.spec.tsx',
    ),
    project('published', '<rootDir>/tests/published/**/*.spec.ts'),
    project('model', '<rootDir>/tests/model/**/*.spec.ts'),
    project('api', '<rootDir>/tests/api/**/*.spec.ts'),
    project('browser', '<rootDir>/tests/browser/**/*.spec.ts'),
  ],
};
