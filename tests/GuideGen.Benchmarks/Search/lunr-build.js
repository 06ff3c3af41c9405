// node lunr-build.js <lunr.js> <documents.json> <index.json>: builds and serialises the index, prints the seconds it took.
const fs = require('fs');
const lunr = require(process.argv[2]);
const { fields, documents } = JSON.parse(fs.readFileSync(process.argv[3], 'utf8'));
const start = process.hrtime.bigint();
const index = lunr(function () {
  this.ref('ref');
  fields.forEach(function (field) { this.field(field.name, { boost: field.boost }); }, this);
  documents.forEach(function (document) { this.add(document); }, this);
});
const json = JSON.stringify(index);
console.log(Number(process.hrtime.bigint() - start) / 1e9);
fs.writeFileSync(process.argv[4], json);
