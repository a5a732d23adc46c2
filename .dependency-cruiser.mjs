// Who may import whom. Every rule is an error: the boundary is a check, not a paragraph.
const packages = 'node_modules';
const core = '^node:|^[a-z_]+$';

const forbidden = [
  {
    name: 'no-circular',
    comment: 'Files that import each other in a ring can only be understood together.',
    from: {},
    to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
  },
  {
    name: 'pure-core',
    comment: 'The core imports nothing but itself: values in, values out.',
    from: { path: '^libs/(domain|journal)/src/', pathNot: '\\.spec\\.ts$' },
    to: { pathNot: '^libs/$1/src/' },
  },
  {
    name: 'client-stands-alone',
    comment: 'The API client knows the generated types and openapi-fetch, no more.',
    from: { path: '^libs/api-client/', pathNot: '\\.spec\\.ts$' },
    to: { pathNot: `^libs/api-client/|${packages}/openapi-fetch` },
  },
  {
    name: 'platform-is-the-ground-floor',
    comment: 'Plumbing knows neither the records nor the features.',
    from: { path: '^apps/api/src/platform/' },
    to: { path: '^apps/api/src/(records|features)/' },
  },
  {
    name: 'records-know-no-feature',
    comment: 'The system of record is below the jobs that use it.',
    from: { path: '^apps/api/src/records/' },
    to: { path: '^apps/api/src/features/' },
  },
  {
    name: 'api-features-are-strangers',
    comment: 'What two features need is a rule (libs/domain), a record (records) or plumbing (platform).',
    from: { path: '^apps/api/src/features/([^/]+)/' },
    to: { path: '^apps/api/src/features/', pathNot: '^apps/api/src/features/$1/' },
  },
  {
    name: 'api-knows-no-client',
    comment: 'The server does not depend on what calls it.',
    from: { path: '^apps/api/' },
    to: { path: '^(apps/web|apps/launcher|libs/api-client|seed|tests)/' },
  },
  {
    name: 'web-knows-no-server',
    comment: 'The client knows the contract, not the server.',
    from: { path: '^apps/web/' },
    to: { path: `^(apps/api|apps/launcher|libs/journal|seed|tests)/|${packages}/(@prisma|@nestjs|pg)/` },
  },
  {
    name: 'web-features-are-strangers',
    comment: 'What two screens need is a part of the interface (ui), a format, or the device.',
    from: { path: '^apps/web/src/features/([^/]+)/' },
    to: { path: '^apps/web/src/features/', pathNot: '^apps/web/src/features/$1/' },
  },
  {
    name: 'web-parts-know-no-feature',
    comment: 'Building parts are below the screens that use them.',
    from: { path: '^apps/web/src/(ui|format|device)/' },
    to: { path: '^apps/web/src/(features|app)/' },
  },
  {
    name: 'web-features-know-no-shell',
    comment: 'The shell joins the features; they do not know it.',
    from: { path: '^apps/web/src/features/' },
    to: { path: '^apps/web/src/app/' },
  },
  {
    name: 'verifier-trusts-nobody',
    comment: 'The offline verifier shares no code with what it verifies.',
    from: { path: '^apps/verifier/' },
    to: { pathNot: `^apps/verifier/|${core}` },
  },
  {
    name: 'launcher-loads-no-product-code',
    comment: 'The launcher runs without a build; it starts the product as a process.',
    from: { path: '^apps/launcher/' },
    to: { path: '^(apps/(api|web|verifier)|libs|seed|tests)/' },
  },
  {
    name: 'nobody-imports-tests-or-seed',
    comment: 'Tests and the demo stand outside.',
    from: { pathNot: '^(tests|seed)/' },
    to: { path: '^(tests|seed)/' },
  },
  {
    name: 'resolvable',
    comment: 'An import that leads nowhere.',
    from: {},
    to: { couldNotResolve: true },
  },
];

export default {
  forbidden: forbidden.map((rule) => ({ severity: 'error', ...rule })),
  options: {
    doNotFollow: { path: `${packages}|(^|/)dist/` },
    exclude: { path: '(^|/)(generated|coverage)/|^apps/[^/]+/dist/|\\.gen\\.d\\.ts$' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
    },
  },
};
