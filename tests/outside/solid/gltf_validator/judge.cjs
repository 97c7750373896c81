// Prints what the validator says of each file named: "errors warnings infos hints", then the first message, if any.
'use strict';
const fs = require('fs');
const path = require('path');
const validator = require(path.join(__dirname, 'gltf_validator.dart.js'));

(async () => {
  for (const file of process.argv.slice(2)) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)), { maxIssues: 0 });
    const { numErrors, numWarnings, numInfos, numHints, messages } = report.issues;
    const first = messages.length > 0 ? ` ${messages[0].code}: ${messages[0].message} ${messages[0].pointer}` : '';
    console.log(`${numErrors} ${numWarnings} ${numInfos} ${numHints}${first}`);
  }
})().catch((error) => {
  console.error(String(error));
  process.exit(1);
});
