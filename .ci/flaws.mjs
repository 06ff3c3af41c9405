// Asks the registries for known flaws in what this repository builds on. Fails where there are some; a registry that does not
// answer or keeps no list of flaws is named, since nothing found there means nothing.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';

const flaws = [];
const unasked = [];

function output(program, args, cwd = '.') {
  const ran = spawnSync(program, args, { cwd, encoding: 'utf8', maxBuffer: 64 << 20 });
  return ran.error ? '' : ran.stdout;
}

/** @returns {any} Null for what is no JSON. */
function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

async function keepsFlaws(source) {
  try {
    const index = await (await fetch(source)).json();
    return index.resources.some((resource) => resource['@type'].startsWith('VulnerabilityInfo'));
  } catch {
    return false;
  }
}

async function nuget() {
  const told = parsed(output('dotnet', ['list', 'GuideGen.sln', 'package', '--vulnerable', '--include-transitive', '--format', 'json']));
  if (!told || !Array.isArray(told.projects)) return unasked.push('NuGet: dotnet list gave no answer');
  const asked = await Promise.all(told.sources.map(keepsFlaws));
  if (!asked.some(Boolean)) unasked.push('NuGet: no source keeps a list of flaws');
  for (const { frameworks = [] } of told.projects)
    for (const { topLevelPackages = [], transitivePackages = [] } of frameworks)
      for (const { id, resolvedVersion, vulnerabilities } of [...topLevelPackages, ...transitivePackages])
        for (const { severity, advisoryurl } of vulnerabilities) flaws.push(`${id} ${resolvedVersion}: ${severity}, ${advisoryurl}`);
}

function npm(folder) {
  const told = parsed(output('npm', ['audit', '--package-lock-only', '--json'], folder));
  if (!told?.metadata) return unasked.push(`npm, ${folder}: ${told?.message ?? 'no answer'}`);
  for (const { name, severity, range } of Object.values(told.vulnerabilities)) flaws.push(`${name} ${range}: ${severity}`);
}

await nuget();
const rooms = ['src', 'tests'].filter(existsSync).flatMap((top) => readdirSync(top).map((room) => `${top}/${room}/npm`));
for (const folder of rooms.filter((room) => existsSync(`${room}/package-lock.json`))) npm(folder);
for (const what of unasked) console.log(`not asked for flaws: ${what}`);
for (const flaw of new Set(flaws)) console.log(`flaw: ${flaw}`);
console.log(`${new Set(flaws).size} known flaws`);
process.exitCode = flaws.length > 0 ? 1 : 0;
