// Walks a tree page to every leaf by pressing the answers that are in sight, and says what went wrong.
async () => {
  const items = [...document.querySelectorAll(".steps > .step")];
  const waysOf = id => [...document.getElementById(id).querySelectorAll(".ways a")];
  const start = items[0].id;
  const paths = new Map([[start, []]]);
  for (const open = [start]; open.length > 0;) {
    const id = open.shift();
    waysOf(id).forEach((a, i) => {
      const to = a.getAttribute("href").slice(1);
      if (!paths.has(to)) { paths.set(to, [...paths.get(id), i]); open.push(to); }
    });
  }
  const walks = document.body.classList.contains("walking");
  const wrong = [];
  const seen = () => items.filter(item => item.checkVisibility()).map(item => item.id);
  const settle = () => new Promise(done => setTimeout(done, 0));
  let leaves = 0;
  for (const item of items) {
    if (waysOf(item.id).length > 0) continue;
    leaves++;
    const path = paths.get(item.id);
    if (!path) { wrong.push("nothing leads to " + item.id); continue; }
    document.getElementById("_walk-again").click();
    let at = start;
    for (const way of path) {
      if (seen().join() !== at) { wrong.push("at " + at + " one sees " + seen().join()); break; }
      const a = waysOf(at)[way];
      const sure = document.getElementById(at).querySelector(".walk-sure input");
      if (sure && !a.hasAttribute("data-unsure")) {
        a.click();
        if (seen().join() !== at) { wrong.push("went on from " + at + " without a promise"); break; }
        if (!sure.checked) sure.click();
      }
      a.click();
      at = a.getAttribute("href").slice(1);
      await settle();
    }
    if (seen().join() !== item.id) wrong.push("meant " + item.id + ", came to " + seen().join());
    if (!document.getElementById(item.id).checkVisibility()) wrong.push(item.id + " is not to be seen");
    if (!document.getElementById(item.id).querySelector("h2")) wrong.push(item.id + " says nothing");
  }
  return [String(walks), String(leaves), ...wrong];
}
