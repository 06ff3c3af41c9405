/** What weighing the causes comes to, drawn as parts of the page: causes with their reasons, how to drive, and the next checks. */
(function (root) {
  "use strict";

  /**
   * @typedef {{ id: string, probability: number, weights: { source: string, log10: number }[] }} Cause
   * @typedef {{ check: string, minutes: number, bits: number, outcomes: { id: string, probability: number, after: { id: string, probability: number }[] }[] }} Next
   */

  const GuideGen = root.GuideGen;
  const { element, classed, link, button, fill } = GuideGen.parts;

  /** Causes below this share are counted, not listed, unless they belong to the first few. */
  const LISTED = 0.02;
  const FIRST = 3;
  const MOST = 7;
  const AFTER = 3;
  const OTHER_CHECKS = 4;
  /** A check that takes away less doubt than this (bits) tells nothing worth the walk to the vehicle. */
  const WORTH = 0.01;
  const ELSE = "something-else";

  const words = () => GuideGen.data.site.words;
  const data = () => GuideGen.weighData;
  /** @param {string} id of a fault */
  const nameOf = id => id === ELSE ? words().weigh.somethingElse : data().faults[id].name;
  /** @param {string} id of a fault */
  const linkTo = id => id === ELSE ? element("span", nameOf(id)) : link(data().faults[id].href, nameOf(id));

  /** @param {number} share */
  function often(share) {
    const { wording, count, of } = GuideGen.weighWords.frequency(share);
    return fill(words().weigh.often[wording], count, of);
  }

  /** @param {string} source a code, a symptom or a check */
  const sourceName = source => data().symptoms[source]?.name ?? data().checks[source]?.name ?? source;

  /** @param {Cause["weights"]} weights @param {string} rival */
  function reasons(weights, rival) {
    const sorted = weights.slice().sort((a, b) => Math.abs(b.log10) - Math.abs(a.log10));
    return element("ul", ...sorted.map(({ source, log10 }) => {
      const { strength, isFor, times } = GuideGen.weighWords.weight(log10);
      const said = words().weigh.speaks[strength === "hardly" ? "hardly" : strength + (isFor ? "For" : "Against")];
      return element("li", element("strong", sourceName(source)), " ", said, strength === "hardly" ? "" : " " + fill(words().weigh[isFor ? "likelier" : "unlikelier"], times, rival));
    }));
  }

  /** @param {Cause} cause @param {Cause[]} causes */
  function causeItem(cause, causes) {
    const rival = nameOf((cause === causes[0] ? causes[1] : causes[0]).id);
    const item = classed("li", "weighed", element("h3", linkTo(cause.id)), classed("p", "often", often(cause.probability)));
    item.style.setProperty("--share", String(Math.round(cause.probability * 1000) / 10) + "%");
    if (cause.id !== ELSE) item.append(classed("p", "facts", element("span", words().weigh.drive[data().faults[cause.id].drive])));
    else item.append(classed("p", "quiet", words().weigh.elseNote));
    const { weights } = cause;
    if (weights.length > 0) item.append(element("details", element("summary", words().weigh.why), reasons(weights, rival)));
    return item;
  }

  /** @param {Cause[]} causes likeliest first */
  function causeList(causes) {
    const listed = causes.filter((c, i) => c.id === ELSE || (i < MOST && (i < FIRST || c.probability >= LISTED)));
    const rest = causes.filter(c => !listed.includes(c) && c.probability > 0).length;
    return [
      classed("ol", "weighed-list", ...listed.map(c => causeItem(c, causes))),
      ...(rest > 0 ? [classed("p", "quiet", fill(GuideGen.formOf(words().weigh.rest, rest), rest))] : []),
    ];
  }

  /** @param {{ name: string, drive: string } | null} worst */
  function plate(worst) {
    if (!worst) return [];
    const { drive } = worst;
    return [classed("p", "plate plate-" + drive, classed("span", "plate-label", words().weigh.mayIDrive), " ", element("strong", words().weigh.drive[drive]), " ",
      classed("span", "plate-why", fill(words().weigh.driveBecause, worst.name)))];
  }

  /** @param {string} slug of a hazard */
  function caution(slug) {
    const hazard = data().hazards[slug];
    const head = classed("p", "caution-head", classed("strong", "signal", words().weigh.signal[hazard.signal]), " ", link("safety.html#" + slug, hazard.name));
    const box = classed("div", "caution caution-" + hazard.signal, head, element("ul", ...hazard.cautions.map((/** @type {string} */ line) => element("li", line))));
    if (hazard.handOver) box.append(element("p", element("strong", words().weigh.handOver), " " + hazard.handOver));
    return box;
  }

  /** @param {string | null} id of the gravest plausible cause */
  function beware(id) {
    const hazards = id === null ? [] : data().faults[id].hazards;
    if (hazards.length === 0) return [];
    return [element("details", element("summary", fill(words().weigh.beware, nameOf(id ?? ""))), ...hazards.map(caution))];
  }

  /** @param {{ faults: string[], times: number | null } | null} found */
  function pair(found) {
    if (!found) return [];
    const names = found.faults.flatMap((id, i) => [...(i > 0 ? [i === found.faults.length - 1 ? words().weigh.and : ", "] : []), linkTo(id)]);
    const times = found.times === null ? words().weigh.farBetter : fill(words().weigh.timesBetter, found.times >= 10 ? Math.round(found.times) : found.times.toFixed(1));
    return [classed("div", "note", element("h3", words().weigh.together), element("p", ...names, ". ", times))];
  }

  /** @param {Next} next @param {(outcome: string) => void} seen */
  function outcomes(next, seen) {
    return classed("ul", "outcomes", ...next.outcomes.map(outcome => {
      const after = outcome.after.slice(0, AFTER).map(c => element("li", linkTo(c.id), " ", classed("span", "quiet", often(c.probability))));
      return element("li",
        element("p", element("strong", data().checks[next.check].outcomes[outcome.id]), " ", classed("span", "quiet", often(outcome.probability))),
        classed("p", "quiet", words().weigh.thenList), element("ol", ...after),
        button(words().weigh.saw, () => seen(outcome.id)));
    }));
  }

  /** @param {Next[]} next best first @param {(check: string, outcome: string) => void} seen */
  function checks(next, seen) {
    const [best, ...others] = next.filter(n => n.bits >= WORTH);
    if (!best) return [element("p", words().weigh.noCheck)];
    const check = data().checks[best.check];
    const more = others.slice(0, OTHER_CHECKS).map(n =>
      element("li", link(data().checks[n.check].href, data().checks[n.check].name), " ", classed("span", "quiet", fill(words().weigh.minutes, Math.round(n.minutes)))));
    return [
      element("h3", link(check.href, check.name)),
      classed("p", "facts", element("span", fill(words().weigh.minutes, Math.round(best.minutes)))),
      element("p", check.summary),
      ...check.hazards.map(caution),
      element("p", words().weigh.howToEnd),
      outcomes(best, outcome => seen(best.check, outcome)),
      ...(more.length > 0 ? [element("h3", words().weigh.others), element("ul", ...more)] : []),
    ];
  }

  /** @param {Object<string, string>} done outcomes by check @param {(check: string) => void} undo */
  function doneChecks(done, undo) {
    const items = Object.entries(done).map(([check, outcome]) => element("li",
      link(data().checks[check].href, data().checks[check].name), ": ", element("strong", data().checks[check].outcomes[outcome]), " ", button(words().weigh.undo, () => undo(check))));
    return items.length === 0 ? [] : [element("h3", words().weigh.done), classed("ul", "done", ...items)];
  }

  /** What is known, as the printed sheet lists it. @param {import('./weigh-address.js').State} state */
  function known(state) {
    const { there, notThere } = words().weigh;
    return Object.entries(state.findings).map(([id, present]) => element("li", sourceName(id) + ": " + (present ? there : notThere)));
  }

  /** What to mind on paper: the signal words and names, since the cautions themselves stand on the check's page. @param {string[]} hazards */
  const minded = hazards => hazards.map(slug => `${words().weigh.signal[data().hazards[slug].signal]}: ${data().hazards[slug].name}`).join(". ");

  /** @param {Next[]} next the sheet has a line for each, to fill in beside the vehicle */
  const toDo = next => next.filter(n => n.bits >= WORTH).slice(0, OTHER_CHECKS + 1).map(n => {
    const check = data().checks[n.check];
    return element("tr", element("td", element("strong", check.name), element("br"), minded(check.hazards)), element("td", fill(words().weigh.minutes, Math.round(n.minutes))), element("td"));
  });

  GuideGen.weighResult = { causeList, plate, beware, pair, checks, doneChecks, known, toDo, often, nameOf };
}(globalThis));
