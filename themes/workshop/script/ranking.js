// Ranks the causes of a fault and says which check to do next: the same numbers as the build, from the same model.
(function (root) {
  "use strict";

  /**
   * @typedef {{id: string, prior: number}} Hypothesis
   * @typedef {{id: string, likelihoods: number[]}} Likelihoods one for each hypothesis, in the model's order
   * @typedef {{pattern: string, likelihoods: number[]}} JointRow '1' and '0' for each member of the group
   * @typedef {{id: string, rule: "strongest"|"shared"|"joint", members: string[], joint: JointRow[]}} Group
   * @typedef {{minutes: number, money: number}} Effort
   * @typedef {{id: string, effort: Effort}} Setup
   * @typedef {{id: string, effort: Effort, outcomes: Likelihoods[], setups: string[], tools: string[]}} Check
   * @typedef {{hypotheses: Hypothesis[], findings: Likelihoods[], groups: Group[], checks: Check[], setups: Setup[]}} Model
   * @typedef {{findings: Object<string, boolean|null>, outcomes: Object<string, string>}} Answers
   *   true present, false absent, anything else unknown; outcomes by check
   * @typedef {{source: string, logs: number[]}} Term
   */

  const LEAST = 0.005;
  const LEAST_MINUTES = 0.1;
  const EXACT_UP_TO = 18;
  const MOST_BEYOND = 3;
  const SETS_KEPT = 10;

  /** @param {number} x @returns {number} so that equal numbers stay equal whatever way they were computed */
  const round12 = (x) => Math.round(x * 1e12) / 1e12;

  /** @param {string} a @param {string} b */
  const byText = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

  /** @param {number[]} list */
  const sum = (list) => list.reduce((total, x) => total + x, 0);

  /**
   * @param {Model} packed each row of likelihoods as its usual value, then pairs of index and value: [0.05, 3, 0.9]
   * @returns {Model} with one likelihood for each hypothesis
   */
  function unpack(packed) {
    /** @template {{likelihoods: number[]}} T @param {T} item @returns {T} */
    const open = (item) => {
      const [usual, ...pairs] = item.likelihoods;
      const likelihoods = packed.hypotheses.map(() => usual);
      for (let i = 0; i < pairs.length; i += 2) likelihoods[pairs[i]] = pairs[i + 1];
      return { ...item, likelihoods };
    };
    return {
      ...packed,
      findings: packed.findings.map(open),
      groups: packed.groups.map((group) => ({ ...group, joint: group.joint.map(open) })),
      checks: packed.checks.map((check) => ({ ...check, outcomes: check.outcomes.map(open) })),
    };
  }

  /** @param {Likelihoods} finding @param {Answers} answers @returns {Term[]} none or one */
  function single(finding, answers) {
    const present = answers.findings[finding.id];
    if (typeof present !== "boolean") return [];
    return [{ source: finding.id, logs: finding.likelihoods.map((l) => Math.log(present ? l : 1 - l)) }];
  }

  /** @param {Term} term how far it can move two hypotheses against each other */
  const spread = (term) => round12(Math.max(...term.logs) - Math.min(...term.logs));

  /** @param {Group} group @param {Answers} answers @returns {Term} unknown members summed out */
  function joint(group, answers) {
    const fitting = group.joint.filter((row) =>
      group.members.every((member, i) => {
        const present = answers.findings[member];
        return typeof present !== "boolean" || row.pattern[i] === (present ? "1" : "0");
      }));
    const logs = fitting[0].likelihoods.map((_, h) => Math.log(sum(fitting.map((row) => row.likelihoods[h]))));
    return { source: group.id, logs };
  }

  /** @param {Group} group @param {Likelihoods[]} members @param {Answers} answers @returns {Term[]} */
  function grouped(group, members, answers) {
    const known = members.flatMap((member) => single(member, answers));
    if (known.length === 0) return [];
    if (group.rule === "joint") return [joint(group, answers)];
    if (group.rule === "strongest") return [known.reduce((best, next) => (spread(next) > spread(best) ? next : best))];
    return known.map((term) => ({ source: term.source, logs: term.logs.map((l) => l / known.length) }));
  }

  /** @param {Check} check @param {Answers} answers @returns {Term[]} none or one */
  function ofCheck(check, answers) {
    const seen = check.outcomes.find((outcome) => outcome.id === answers.outcomes[check.id]);
    return seen ? [{ source: check.id, logs: seen.likelihoods.map(Math.log) }] : [];
  }

  /** @param {Model} model @param {Answers} answers @returns {Term[]} independent of each other, in the model's order */
  function termsOf(model, answers) {
    const findings = new Map(model.findings.map((finding) => [finding.id, finding]));
    const inGroup = new Set(model.groups.flatMap((group) => group.members));
    return [
      ...model.findings.filter((f) => !inGroup.has(f.id)).flatMap((f) => single(f, answers)),
      ...model.groups.flatMap((g) => grouped(g, g.members.map((m) => findings.get(m)), answers)),
      ...model.checks.flatMap((c) => ofCheck(c, answers)),
    ];
  }

  /** @param {Model} model @param {Term[]} terms @returns {number[]} probabilities in the order of the hypotheses */
  function posterior(model, terms) {
    const sums = model.hypotheses.map(() => 0);
    for (const { logs } of terms) {
      for (let h = 0; h < sums.length; h++) sums[h] += logs[h];
    }
    const logs = model.hypotheses.map((h, i) => Math.log(h.prior) + sums[i]);
    const top = Math.max(...logs);
    const weights = logs.map((log) => Math.exp(log - top));
    const total = sum(weights);
    return weights.map((weight) => weight / total);
  }

  /**
   * @param {Model} model @param {Answers} answers
   * @returns {{id: string, probability: number, weights: {source: string, log10: number}[]}[]} most probable first;
   *   a weight is log10 of the likelihood ratio against the best other hypothesis; weights are worked out when they are asked for,
   *   since 300 causes have 18,000 by 60 findings and a page shows those of a few
   */
  function rank(model, answers) {
    const terms = termsOf(model, answers);
    const now = posterior(model, terms);
    const ids = model.hypotheses.map((h) => h.id);
    const order = now.map((_, h) => h).sort((a, b) => now[b] - now[a] || byText(ids[a], ids[b]));
    return order.map((h) => {
      const rival = order.length === 1 ? h : order[0] === h ? order[1] : order[0];
      return {
        id: ids[h],
        probability: now[h],
        get weights() {
          return terms.map((t) => ({ source: t.source, log10: (t.logs[h] - t.logs[rival]) / Math.LN10 }));
        },
      };
    });
  }

  /** @param {number[]} parts @returns {number} doubt in bits */
  function entropy(parts) {
    const total = sum(parts);
    return sum(parts.map((part) => (part > 0 ? -part / total * Math.log2(part / total) : 0)));
  }

  /** @param {Model} model @param {number[]} probabilities */
  function sorted(model, probabilities) {
    return probabilities.map((probability, h) => ({ id: model.hypotheses[h].id, probability }))
      .sort((a, b) => b.probability - a.probability || byText(a.id, b.id));
  }

  /** @param {Model} model @param {Check} check @param {number[]} now @param {number} minutes */
  function weigh(model, check, now, minutes) {
    let bits = entropy(now);
    const outcomes = check.outcomes.map((outcome) => {
      const parts = now.map((p, h) => p * outcome.likelihoods[h]);
      const probability = sum(parts);
      bits -= probability * entropy(parts);
      return { id: outcome.id, probability, after: sorted(model, parts.map((part) => part / probability)) };
    });
    bits = Math.max(0, bits);
    return { check: check.id, minutes, bits, bitsPerMinute: bits / Math.max(minutes, LEAST_MINUTES), outcomes };
  }

  /**
   * @param {Model} model @param {Answers} answers
   * @param {string[]} missingTools tools that are not at hand @param {string[]} setupsDone preparations already made
   * @returns checks that can still be done, the one that takes away most doubt per minute first
   */
  function nextChecks(model, answers, missingTools, setupsDone) {
    const now = posterior(model, termsOf(model, answers));
    const setups = new Map(model.setups.filter((s) => !setupsDone.includes(s.id)).map((s) => [s.id, s.effort.minutes]));
    return model.checks
      .filter((check) => typeof answers.outcomes[check.id] !== "string")
      .filter((check) => !check.tools.some((tool) => missingTools.includes(tool)))
      .map((check) => weigh(model, check, now, check.effort.minutes + sum(check.setups.map((s) => setups.get(s) || 0))))
      .sort((a, b) => round12(b.bitsPerMinute) - round12(a.bitsPerMinute) || byText(a.check, b.check));
  }

  /**
   * Several faults at once, each there or not on its own.
   * @param {Hypothesis[]} faults
   * @param {{id: string, leak: number, links: number[]}[]} findings
   * @param {Object<string, boolean|null>} present as in Answers
   * @returns {{causes: {id: string, probability: number}[], likeliest: {faults: string[], probability: number}[], mostAtOnce: number}}
   */
  function severalFaults(faults, findings, present) {
    const known = findings.filter((f) => typeof present[f.id] === "boolean");
    const mostAtOnce = faults.length <= EXACT_UP_TO ? faults.length : MOST_BEYOND;
    const priors = faults.map((f) => Math.min(f.prior, 1 - LEAST));
    const sums = faults.map(() => 0);
    /** @type {{faults: string[], probability: number}[]} */
    let likeliest = [];
    let total = 0;

    /** @param {number[]} chosen @param {number} weight */
    function count(chosen, weight) {
      total += weight;
      for (const fault of chosen) sums[fault] += weight;
      if (likeliest.length === SETS_KEPT && weight <= likeliest[SETS_KEPT - 1].probability) return;
      likeliest.push({ faults: chosen.map((f) => faults[f].id).sort(byText), probability: weight });
      likeliest.sort((a, b) => b.probability - a.probability || byText(a.faults.join(" "), b.faults.join(" ")));
      likeliest = likeliest.slice(0, SETS_KEPT);
    }

    /** @param {number[]} chosen @param {number} prior @param {number[]} absent chance that each finding is absent */
    function descend(chosen, prior, absent) {
      count(chosen, known.reduce((p, f, i) => p * (present[f.id] ? 1 - absent[i] : absent[i]), prior));
      if (chosen.length === mostAtOnce) return;
      for (let fault = chosen.length ? chosen[chosen.length - 1] + 1 : 0; fault < faults.length; fault++) {
        const after = known.map((f, i) => absent[i] * (1 - Math.min(f.links[fault], 1 - LEAST)));
        descend([...chosen, fault], prior * priors[fault] / (1 - priors[fault]), after);
      }
    }

    descend([], priors.reduce((p, q) => p * (1 - q), 1),
      known.map((f) => 1 - Math.min(Math.max(f.leak, LEAST), 1 - LEAST)));
    const causes = faults.map((f, i) => ({ id: f.id, probability: sums[i] / total }))
      .sort((a, b) => b.probability - a.probability || byText(a.id, b.id));
    return { causes, likeliest: likeliest.map((s) => ({ ...s, probability: s.probability / total })), mostAtOnce };
  }

  root.GuideGen = root.GuideGen || {};
  root.GuideGen.ranking = { unpack, rank, nextChecks, severalFaults };
})(typeof self === "object" ? self : globalThis);
