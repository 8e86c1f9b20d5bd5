// Who may import whom. The table is the design's: a room may use the rooms named for it, and whatever
// those may use in turn. Other rooms are entered by their door only (index.ts).
const mayUse = {
  units: [],
  fields: ['units'],
  figure: ['units'],
  geometry: ['units'],
  body: ['figure', 'fields'],
  skirt: ['body', 'geometry'],
  ribbon: ['skirt'],
  packing: ['geometry'],
  cloth: ['skirt', 'ribbon', 'packing'],
  seams: ['skirt', 'ribbon'],
  supplies: ['ribbon', 'cloth', 'seams'],
  sewing: ['seams', 'supplies'],
  request: ['body', 'skirt', 'ribbon', 'cloth', 'supplies', 'sewing'],
  plan: ['request'],
  workshop: ['plan'],
  words: ['workshop'],
  paper: ['words'],
};

const closure = (room, seen = new Set()) => {
  for (const next of mayUse[room])
    if (!seen.has(next)) {
      seen.add(next);
      closure(next, seen);
    }
  return [...seen];
};

const rooms = Object.keys(mayUse);
const isTest = '\\.test\\.ts$|/testing/';

const oneDirection = rooms.map((room) => {
  const allowed = [room, ...closure(room)];
  return {
    name: `one-direction:${room}`,
    comment: `${room} may use ${allowed.slice(1).join(', ') || 'nothing'}`,
    severity: 'error',
    from: { path: `^engine/src/${room}/`, pathNot: isTest },
    to: { path: '^engine/src/', pathNot: `^engine/src/(${allowed.join('|')})/` },
  };
});

const doors = rooms.map((room) => ({
  name: `by-the-door:${room}`,
  comment: 'other rooms are entered by their index.ts',
  severity: 'error',
  from: { path: '^engine/src/', pathNot: `^engine/src/${room}/|${isTest}` },
  to: { path: `^engine/src/${room}/`, pathNot: `^engine/src/${room}/index\\.ts$` },
}));

module.exports = {
  forbidden: [
    ...oneDirection,
    ...doors,
    {
      name: 'no-room-of-its-own',
      comment: 'a new room is entered in the table above first',
      severity: 'error',
      from: {},
      to: { path: '^engine/src/[^/]+/', pathNot: `^engine/src/(${rooms.join('|')}|testing)/` },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'engine-has-no-io',
      comment: 'the engine holds no I/O, no clock, no DOM',
      severity: 'error',
      from: { path: '^engine/src/', pathNot: isTest },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'engine-knows-no-outside',
      severity: 'error',
      from: { path: '^engine/' },
      to: { path: '^(cli|server|web|bench|scripts)/' },
    },
    {
      name: 'engine-by-its-name',
      comment: 'what is outside enters the engine by its package, never by a path',
      severity: 'error',
      from: { path: '^(cli|server|web)/src', pathNot: isTest },
      to: { path: '^engine/src/.+/' },
    },
    {
      name: 'outside-apart',
      comment: 'command line, server and web app know nothing of one another',
      severity: 'error',
      from: { path: '^(cli|server|web)/src' },
      to: { path: '^(cli|server|web)/src', pathNot: '^$1/src' },
    },
    {
      name: 'store-by-its-door',
      comment: 'views change records through the desk; only it knows the store',
      severity: 'error',
      from: { path: '^web/src/(bits|parts|places|shell)/', pathNot: isTest },
      to: { path: '^web/src/store/', pathNot: '^web/src/store/(index|records)\\.ts$' },
    },
    {
      name: 'nothing-uses-tests',
      severity: 'error',
      from: { pathNot: isTest },
      to: { path: isTest },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      conditionNames: ['source', 'import', 'types', 'node', 'default'],
      exportsFields: ['exports'],
    },
  },
};
