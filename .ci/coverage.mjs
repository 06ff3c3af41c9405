// Puts together what several test projects ran (coverlet's JSON) and prints a Markdown table of the rooms under src.
import { readFileSync } from 'node:fs';

/** By room, by file: hits of lines and of branches. */
const rooms = new Map();

for (const name of process.argv.slice(2))
  for (const [assembly, files] of Object.entries(JSON.parse(readFileSync(name, 'utf8'))).filter(([assembly]) => /^guidegen/i.test(assembly)))
    for (const [path, classes] of Object.entries(files)) {
      const file = /[\\/]src[\\/][^\\/]+[\\/](.*)$/.exec(path);
      if (!file || /[\\/]obj[\\/]/.test(path)) continue;
      const room = rooms.get(assembly) ?? rooms.set(assembly, new Map()).get(assembly);
      const hits = room.get(file[1]) ?? room.set(file[1], { lines: new Map(), branches: new Map() }).get(file[1]);
      for (const [method, { Lines, Branches }] of Object.values(classes).flatMap((c) => Object.entries(c))) {
        for (const [line, count] of Object.entries(Lines)) add(hits.lines, line, count);
        for (const { Line, Offset, Path, Hits } of Branches) add(hits.branches, [method, Line, Offset, Path].join(), Hits);
      }
    }

function add(hits, key, count) {
  hits.set(key, (hits.get(key) ?? 0) + count);
}

function share(files, what) {
  const all = files.flatMap((hits) => [...hits[what].values()]);
  const ran = all.filter((count) => count > 0).length;
  return `${all.length} | ${all.length === 0 ? '' : ((100 * ran) / all.length).toFixed(1)}`;
}

console.log('| room | lines | ran, % | branches | ran, % | files with most lines that did not run |\n| --- | ---: | ---: | ---: | ---: | --- |');
for (const [assembly, files] of [...rooms].sort(([a], [b]) => (a < b ? -1 : 1))) {
  const missed = [...files].map(([name, { lines }]) => [name, [...lines.values()].filter((count) => count === 0).length]).filter(([, count]) => count > 0);
  const worst = missed.sort(([, a], [, b]) => b - a).slice(0, 5).map(([name, count]) => `${name} ${count}`);
  console.log(`| ${assembly.replace('.dll', '')} | ${share([...files.values()], 'lines')} | ${share([...files.values()], 'branches')} | ${worst.join(', ')} |`);
}
