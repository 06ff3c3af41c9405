// node lunr-build.js <lunr.js> <documents.json> <index.json>: builds and serialises the index, prints seconds on the clock and of the processor.
const fs = require('fs');
const lunr = require(process.argv[2]);
const { fields, documents } = JSON.parse(fs.readFileSync(process.argv[3], 'utf8'));
const start = process.hrtime.bigint();
const before = process.cpuUsage();
const index = lunr(function () {
  this.ref('ref');
  fields.forEach(function (field) { this.field(field.name, { boost: field.boost }); }, this);
  documents.forEach(function (document) { this.add(document); }, this);
});
const json = JSON.stringify(index);
const used = process.cpuUsage(before);
console.log(Number(process.hrtime.bigint() - start) / 1e9, (used.user + used.system) / 1e6);
fs.writeFileSync(process.argv[4], json);
