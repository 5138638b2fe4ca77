// Says in one sentence that Node is too old, and ends. Written in the oldest syntax, and required before anything
// else is loaded, so that an old Node prints the sentence and not a syntax error.
'use strict';

var parts = process.versions.node.split('.');
var major = Number(parts[0]);
var newEnough = major > 20 || (major === 20 && Number(parts[1]) >= 19);

if (!newEnough) {
  process.stderr.write(
    'Larkrow needs Node 20.19 or later, and this is Node ' +
      process.versions.node +
      ': install a current one from https://nodejs.org and run the command again.\n',
  );
  process.exit(1);
}
