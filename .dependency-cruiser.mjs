// The walls, one plain sentence each. checks/walls proves that a forbidden import is caught.
const inside = (path) => ({ path });

// Which part of the trade may read which other; core/words may be read by all of it.
const coreEdges = {
  price: ["hall"],
  class: ["hall", "price", "outlook"],
  outlook: ["price"],
  papers: ["hall"],
  week: ["hall", "price", "outlook"],
  cash: ["price"],
};
const cores = [
  "words",
  "hall",
  "price",
  "class",
  "outlook",
  "papers",
  "table",
  "week",
  "year",
  "cash",
  "roll",
  "notice",
  "books",
];

const coreRules = cores.map((name) => {
  const allowed = [name, "words", ...(coreEdges[name] ?? [])].join("|");
  return {
    name: `core-${name}-reads-only-what-is-listed`,
    comment: `core/${name} reads the kernels, core/words and: ${(coreEdges[name] ?? ["nothing else"]).join(", ")}.`,
    severity: "error",
    from: { path: `^core/${name}/`, pathNot: "\\.test\\.ts$" },
    to: { path: "^core/", pathNot: `^core/(${allowed})/` },
  };
});

const packages = "(kernels|core|app|adapters)/[^/]+";

export default {
  forbidden: [
    ...coreRules,
    {
      name: "kernels-read-nothing-of-ours",
      comment: "A kernel knows no word of the trade: it reads other kernels and libraries only.",
      severity: "error",
      from: { path: "^kernels/", pathNot: "\\.test\\.ts$" },
      to: { path: "^(core|app|adapters|apps|demo|testing|bench|checks)/" },
    },
    {
      name: "core-looks-only-inwards",
      comment: "The trade reads no use case, no adapter and no screen.",
      severity: "error",
      from: { path: "^core/", pathNot: "\\.test\\.ts$" },
      to: { path: "^(app|adapters|apps|demo|testing|bench|checks)/" },
    },
    {
      name: "app-looks-only-inwards",
      comment:
        "A use case reads the trade, the demo's documents and the ports; adapters come to it, not it to them.",
      severity: "error",
      from: { path: "^app/", pathNot: "\\.test\\.ts$" },
      to: { path: "^(adapters|apps|testing|bench|checks)/" },
    },
    {
      name: "adapters-know-only-ports-and-the-trade",
      comment: "An adapter implements a port; it reads no use case, no screen and no other adapter's inside.",
      severity: "error",
      from: { path: "^adapters/", pathNot: "\\.test\\.ts$" },
      to: { path: "^(app/(actions|views)|apps|kernels|testing|bench|checks)/" },
    },
    {
      name: "web-touches-no-adapter",
      comment:
        "The screens run in a browser: they never read an adapter or the server, but adapters/import and adapters/calendar, which read and write files in a browser as well.",
      severity: "error",
      from: { path: "^apps/web/" },
      to: {
        path: "^(adapters|apps/(server|cli)|testing|bench|checks)/",
        pathNot: "^adapters/(import|calendar)/index\\.ts$",
      },
    },
    {
      name: "pure-code-touches-no-machine",
      comment:
        "Kernels, core, app, adapters/import and adapters/calendar read no Node module: files, network and processes belong to the other adapters and apps.",
      severity: "error",
      from: { path: "^(kernels|core|app|adapters/(import|calendar))/", pathNot: "\\.test\\.ts$" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "pure-code-loads-no-server-library",
      comment: "A database, a web server or a screen library inside the trade would drag the world in.",
      severity: "error",
      from: { path: "^(kernels|core|app)/", pathNot: "\\.test\\.ts$" },
      to: {
        path: "node_modules/(better-sqlite3|kysely|pdfkit|fastify|@fastify|react|react-dom|react-aria-components|@tanstack)/",
      },
    },
    {
      name: "through-the-door",
      comment: "A package is entered through its index.ts only.",
      severity: "error",
      from: { path: `^(${packages})/` },
      to: { path: `^${packages}/`, pathNot: ["^$1/", `^${packages}/index\\.ts$`] },
    },
    {
      name: "apps-and-tests-come-through-the-door",
      comment: "Screens, commands, checks and benches enter a package through its index.ts only.",
      severity: "error",
      from: { path: "^(apps|checks|bench|testing|demo)/" },
      to: { path: `^${packages}/`, pathNot: `^${packages}/index\\.ts$` },
    },
    {
      name: "no-circles",
      comment: "Two files that need each other are one concept or three.",
      severity: "error",
      from: inside("^(kernels|core|app|adapters|apps)/"),
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "everything-resolves",
      comment:
        "An import that leads nowhere hides a wall; the bundler alone knows the address of the solver's file.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true, pathNot: "^(virtual:|@fontsource|highs/runtime\\?url$)" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(dist|data)/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "types", "node", "default"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json", ".css"],
    },
  },
};
