/** The arrows between folders. Why they are so is told in DEVELOPERS.md, "The map". */
const see = 'See DEVELOPERS.md, "The map".';
module.exports = {
  forbidden: [
    {
      name: 'shared-knows-only-the-craft',
      comment: `shared/ may import only shared/ and its few pure libraries: no screen, no file, no Electron, no Node. ${see}`,
      severity: 'error',
      from: { path: '^shared/' },
      to: { pathNot: ['^shared/', '^node_modules/(zod|culori|@types/culori|@noble/hashes)/'] },
    },
    {
      name: 'renderer-sees-only-shared',
      comment: `renderer/ asks its host through shared/bridge.ts and imports nothing of app/. ${see}`,
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: ['^app/', '^tests/', '^build/', '^node_modules/electron'] },
    },
    {
      name: 'renderer-has-no-node',
      comment: `The page has no Node. ${see}`,
      severity: 'error',
      from: { path: '^renderer/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'app-sees-only-shared',
      comment: `app/ knows no screen. ${see}`,
      severity: 'error',
      from: { path: '^app/' },
      to: { path: ['^renderer/', '^tests/', '^build/'] },
    },
    {
      name: 'services-know-no-host',
      comment: `app/services is plain Node: hosts import it, never the other way. ${see}`,
      severity: 'error',
      from: { path: '^app/services/' },
      to: { path: ['^app/(electron|browser-host|cli)/', '^node_modules/electron'] },
    },
    {
      name: 'hosts-stand-apart',
      comment: `The two hosts and the command line do not import one another. ${see}`,
      severity: 'error',
      from: { path: '^app/(electron|browser-host|cli)/' },
      to: { path: '^app/(electron|browser-host|cli)/', pathNot: '^app/$1/' },
    },
    {
      name: 'no-circles',
      severity: 'error',
      from: {},
      to: { circular: true, dependencyTypesNot: ['type-only'] },
    },
    { name: 'no-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^dist/' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
