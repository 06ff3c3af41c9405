/**
 * Brings further scripts when they are first needed, in order and once, as script elements: that works from a file, too.
 * Every page has this file, so it stays small.
 */
(function (root) {
  "use strict";

  const GuideGen = root.GuideGen = root.GuideGen || {};
  /** The site's root, whatever page this is: this file lies one folder below it. */
  const base = new URL("..", /** @type {HTMLScriptElement} */ (document.currentScript).src).href;
  /** @type {Map<string, Promise<void>>} */
  const coming = new Map();

  /** Scripts of the theme bear a hash in their names; the compile writes the list of them in front of this file. @param {string} address */
  const named = address => address.replace(/^assets\/(.*)$/, (all, name) => GuideGen.data.assets[name] ? "assets/" + GuideGen.data.assets[name] : all);

  /**
   * Runs a script of the site. One that failed is asked for again the next time.
   * @param {string} address relative to the site's root
   * @returns {Promise<void>}
   */
  function load(address) {
    let promise = coming.get(address);
    if (!promise) {
      promise = new Promise((resolve, reject) => {
        const script = document.createElement("script");
        script.src = base + named(address);
        script.onload = () => resolve();
        script.onerror = () => { coming.delete(address); reject(new Error("could not load " + address)); };
        document.head.append(script);
      });
      coming.set(address, promise);
    }
    return promise;
  }

  /** One behind the other. @param {string[]} addresses @returns {Promise<void>} */
  const loadAll = addresses => addresses.reduce((before, address) => before.then(() => load(address)), Promise.resolve());

  const CODES = ["codes", "codes-line", "codes-trail", "codes-raw", "codes-read", "codes-suggest"].map(name => "assets/" + name + ".js");

  /** Made once, which takes as long as many uses. @type {Intl.PluralRules | undefined} */
  let rules;

  /** The form of a wording that stands beside a number, by the plural rules of the page's language. @param {Record<string, string>} forms @param {number} number */
  GuideGen.formOf = (forms, number) => forms[(rules ??= new Intl.PluralRules(document.documentElement.lang)).select(number)] ?? forms.other;

  GuideGen.base = base;
  GuideGen.load = load;
  /** What looking up codes needs. */
  GuideGen.loadCodes = () => loadAll([...CODES, "data/site.js", "data/codes.js", "data/standard-codes.js", "assets/look.js"]);
  /** What searching words needs; the index itself comes in pieces with the first search. */
  GuideGen.loadSearch = () => loadAll(["data/site.js", "assets/search-best.js", "assets/search-index.js", "assets/search-words.js", "assets/search.js"]).then(() =>
    GuideGen.search.start({
      base: base + "search/", head: GuideGen.data.site.searchHead, lunr: GuideGen.data.site.lunr,
      load: (/** @type {string} */ address) => load(address.slice(base.length)),
    }));
}(globalThis));
