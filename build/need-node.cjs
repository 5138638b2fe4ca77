// Says in one sentence that Node is too old, and ends. Written in the oldest syntax, and required before anything
// else is loaded, so that an old Node prints the sentence and not a syntax error.
'use strict';

var parts = process.versions.node.split('.');
var major = Number(parts[0]);
var minor = Number(parts[1]);
// From these on a module may be required, as several of the tools do.
var newEnough = major > 22 || (major === 22 && minor >= 12) || (major === 20 && minor >= 19);

if (!newEnough) {
  process.stderr.write(
    'Larkrow needs Node 20.19 or later (of 22: 22.12 or later), and this is Node ' +
      process.versions.node +
      ': install a current one from https://nodejs.org and run the command again.\n',
  );
  process.exit(1);
}
